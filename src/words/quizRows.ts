/**
 * A quiz out of this trainer: its key as a table (CSV, RFC 4180), and its questions as a package of IMS QTI 3.0. What is
 * touched here on a drawing or a trace is chosen from a list there, since that format knows no such drawing.
 */
import { terminalsOf } from '../bench/terminals.ts';
import type { CursorAsked, FigureAsked, OnDrawing, Question } from '../quiz/question.ts';
import type { SetQuiz } from '../quiz/setQuiz.ts';
import { questionsOf } from '../quiz/setQuiz.ts';
import { askedSite } from '../quiz/site.ts';
import { AIM_WORDS } from './aims.ts';
import {
  choiceText,
  partText,
  questionSource,
  rightAnswerText,
  stemText,
  threeAnswers,
  workedOut,
} from './questions.ts';
import { terminalName } from './trade.ts';

interface Option {
  readonly id: string;
  readonly text: string;
}

const PLACES: Readonly<Record<OnDrawing['part'], string>> = {
  origin: 'origin',
  unit: 'supply',
  outlet: 'outlet',
};

/** What can be touched on one part of the drawing. */
export const terminalsOn = ({ site, part }: OnDrawing): readonly Option[] =>
  terminalsOf(askedSite(site).papers.site)
    .filter((terminal) => terminal.startsWith(`${PLACES[part]}.`))
    .map((id) => ({ id, text: terminalName(id) }));

const stepsOf = ({ trace }: CursorAsked): readonly Option[] =>
  trace.levels.slice(1).map(({ at, value }, i) => ({
    id: String(at),
    text: `${at} s: from ${trace.levels[i]?.value ?? 0} V to ${value} V`,
  }));

/** What may be chosen; none where a figure is asked. */
function optionsOf(question: Question): readonly Option[] {
  switch (question.way) {
    case 'figure':
      return [];
    case 'choice':
      return question.choices.map((choice) => ({ id: choice.id, text: choiceText(question, choice) }));
    case 'three-answers':
      return threeAnswers.map(([id, text]) => ({ id, text }));
    case 'order':
      return question.parts.map((id) => ({ id, text: partText(question, id) }));
    case 'leads':
    case 'touch':
      return terminalsOn(question.drawing);
    case 'cursor':
      return stepsOf(question);
  }
}

/** What may be ticked or put in order on paper; none where a figure is written or something is marked on a drawing. */
export const optionsText = (question: Question): readonly string[] =>
  question.way === 'leads' || question.way === 'touch' || question.way === 'cursor'
    ? []
    : optionsOf(question).map(({ text }) => text);

/** Ids of what is right, each list one right answer. */
function rightIds(question: Exclude<Question, FigureAsked>): readonly (readonly string[])[] {
  switch (question.way) {
    case 'choice':
    case 'three-answers':
    case 'touch':
      return [[question.answer]];
    case 'order':
      return [question.answer];
    case 'leads':
      return question.answers;
    case 'cursor':
      return [[String(question.answer)]];
  }
}

/** A field; one that a spreadsheet would take for a formula begins with an apostrophe. */
const field = (text: string): string => {
  const plain = /^[=+\-@\t\r]/.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(plain) ? `"${plain.replaceAll('"', '""')}"` : plain;
};
const row = (fields: readonly string[]): string => fields.map(field).join(',');

/** The key: one row a question. */
export const quizCsv = (quiz: SetQuiz): string =>
  `${[
    row([
      'number',
      'id',
      'topic',
      'way',
      'question',
      'choices',
      'answer',
      'tolerance',
      'worked out',
      'source',
    ]),
    ...questionsOf(quiz).map((question, i) =>
      row([
        String(i + 1),
        question.id,
        AIM_WORDS[question.topic].question,
        question.way,
        stemText(question),
        optionsOf(question)
          .map(({ text }) => text)
          .join(' | '),
        rightAnswerText(question),
        question.way === 'figure' ? String(question.tolerance) : '',
        workedOut(question).join(' '),
        questionSource(question),
      ]),
    ),
  ].join('\r\n')}\r\n`;

const ESCAPED: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
};
const xml = (text: string): string => text.replaceAll(/[&<>"]/g, (sign) => ESCAPED[sign] ?? sign);

const HEAD = '<?xml version="1.0" encoding="UTF-8"?>';
/** Source of names and structure: IMS QTI 3.0 (1EdTech, 2022), Assessment, Section and Item information model. */
const ASI = 'http://www.imsglobal.org/xsd/imsqtiasi_v3p0';
const CP = 'http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1';

/** Identifiers there begin with a letter and hold no dot; ours are numbered. */
const itemId = (i: number): string => `item-${i + 1}`;
const optionId = (i: number): string => `option-${i + 1}`;

const value = (base: string, text: string): string =>
  `<qti-base-value base-type="${base}">${text}</qti-base-value>`;

/** Scores 1 where any of the conditions holds. */
const scored = (condition: string): string =>
  `  <qti-response-processing>
    <qti-response-condition>
      <qti-response-if>
        ${condition}
        <qti-set-outcome-value identifier="SCORE">${value('float', '1')}</qti-set-outcome-value>
      </qti-response-if>
    </qti-response-condition>
  </qti-response-processing>`;

const variable = '<qti-variable identifier="RESPONSE"/>';

interface Parts {
  readonly cardinality: 'single' | 'multiple' | 'ordered';
  readonly base: 'float' | 'identifier';
  readonly right: readonly string[];
  readonly body: string;
  readonly condition: string;
}

function figureParts(question: Question & FigureAsked): Parts {
  const { answer, tolerance, unit } = question;
  return {
    cardinality: 'single',
    base: 'float',
    right: [String(answer)],
    body: `<p>${xml(stemText(question))}</p>
    <p><qti-text-entry-interaction response-identifier="RESPONSE" expected-length="8"/> ${unit}</p>`,
    condition: `<qti-equal tolerance-mode="absolute" tolerance="${tolerance} ${tolerance}">${variable}${value('float', String(answer))}</qti-equal>`,
  };
}

function optionParts(question: Exclude<Question, FigureAsked>): Parts {
  const options = optionsOf(question);
  const named = (id: string): string => optionId(options.findIndex((one) => one.id === id));
  const [first = [], ...more] = rightIds(question).map((ids) => ids.map(named));
  const cardinality = question.way === 'order' ? 'ordered' : question.way === 'leads' ? 'multiple' : 'single';
  const interaction = question.way === 'order' ? 'qti-order-interaction' : 'qti-choice-interaction';
  const most = question.way === 'order' ? '' : ` max-choices="${first.length}" min-choices="${first.length}"`;
  const matches = [first, ...more].map((ids) => {
    const values = ids.map((id) => value('identifier', id)).join('');
    return `<qti-match>${variable}${ids.length === 1 ? values : `<qti-${cardinality}>${values}</qti-${cardinality}>`}</qti-match>`;
  });
  return {
    cardinality,
    base: 'identifier',
    right: first,
    body: `<${interaction} response-identifier="RESPONSE" shuffle="false"${most}>
      <qti-prompt>${xml(stemText(question))}</qti-prompt>
${options.map(({ text }, i) => `      <qti-simple-choice identifier="${optionId(i)}">${xml(text)}</qti-simple-choice>`).join('\n')}
    </${interaction}>`,
    condition: matches.length === 1 ? (matches[0] ?? '') : `<qti-or>${matches.join('')}</qti-or>`,
  };
}

function itemXml(question: Question, i: number): string {
  const { cardinality, base, right, body, condition } =
    question.way === 'figure' ? figureParts(question) : optionParts(question);
  return `${HEAD}
<qti-assessment-item xmlns="${ASI}" identifier="${itemId(i)}" title="${xml(AIM_WORDS[question.topic].question)}" adaptive="false" time-dependent="false" xml:lang="en-GB">
  <qti-response-declaration identifier="RESPONSE" cardinality="${cardinality}" base-type="${base}">
    <qti-correct-response>${right.map((id) => `<qti-value>${id}</qti-value>`).join('')}</qti-correct-response>
  </qti-response-declaration>
  <qti-outcome-declaration identifier="SCORE" cardinality="single" base-type="float">
    <qti-default-value><qti-value>0</qti-value></qti-default-value>
  </qti-outcome-declaration>
  <qti-item-body>
    ${body}
  </qti-item-body>
${scored(condition)}
</qti-assessment-item>
`;
}

const testXml = (title: string, count: number, minutes: number | null): string => `${HEAD}
<qti-assessment-test xmlns="${ASI}" identifier="quiz" title="${xml(title)}">
${minutes === null ? '' : `  <qti-time-limits max-time="${60 * minutes}"/>\n`}  <qti-test-part identifier="part-1" navigation-mode="nonlinear" submission-mode="simultaneous">
    <qti-assessment-section identifier="section-1" title="${xml(title)}" visible="true">
${Array.from({ length: count }, (_, i) => `      <qti-assessment-item-ref identifier="${itemId(i)}" href="items/${itemId(i)}.xml"/>`).join('\n')}
    </qti-assessment-section>
  </qti-test-part>
</qti-assessment-test>
`;

const manifestXml = (count: number): string => `${HEAD}
<manifest xmlns="${CP}" identifier="quiz-package">
  <metadata>
    <schema>QTI Package</schema>
    <schemaversion>3.0.0</schemaversion>
  </metadata>
  <organizations/>
  <resources>
    <resource identifier="quiz" type="imsqti_test_xmlv3p0" href="test.xml">
      <file href="test.xml"/>
${Array.from({ length: count }, (_, i) => `      <dependency identifierref="${itemId(i)}"/>`).join('\n')}
    </resource>
${Array.from(
  { length: count },
  (_, i) => `    <resource identifier="${itemId(i)}" type="imsqti_item_xmlv3p0" href="items/${itemId(i)}.xml">
      <file href="items/${itemId(i)}.xml"/>
    </resource>`,
).join('\n')}
  </resources>
</manifest>
`;

/** Every file of the package, by its name. */
export function quizQti(quiz: SetQuiz): Readonly<Record<string, string>> {
  const asked = questionsOf(quiz);
  return {
    'imsmanifest.xml': manifestXml(asked.length),
    'test.xml': testXml(quiz.title.trim() || 'Questions', asked.length, quiz.minutes),
    ...Object.fromEntries(asked.map((question, i) => [`items/${itemId(i)}.xml`, itemXml(question, i)])),
  };
}
