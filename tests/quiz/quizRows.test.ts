/**
 * A quiz that goes to another program: the package of QTI 3.0 read back by an XML reader that knows nothing of how it was
 * written, its structure held to the specification's (elements and attributes of IMS QTI 3.0, Assessment Section and Item
 * model; from memory where marked), and the table read back as a spreadsheet would.
 */
import { XMLParser, XMLValidator } from 'fast-xml-parser';
import { describe, expect, test } from 'vitest';
import type { SetQuiz } from '../../src/quiz/setQuiz.ts';
import { questionsOf } from '../../src/quiz/setQuiz.ts';
import { quizCsv, quizQti } from '../../src/words/quizRows.ts';

const QUIZ: SetQuiz = { format: 1, title: 'Loops & <legs>', count: 60, seed: 9, minutes: 30, sure: false };
const ASKED = questionsOf(QUIZ);
const FILES = quizQti(QUIZ);

const parser = new XMLParser({
  ignoreAttributes: false,
  attributeNamePrefix: '@',
  parseTagValue: false,
  isArray: (name) =>
    [
      'qti-simple-choice',
      'qti-value',
      'resource',
      'dependency',
      'qti-assessment-item-ref',
      'qti-base-value',
    ].includes(name),
});
// biome-ignore lint/suspicious/noExplicitAny: what a foreign reader makes of it
const read = (name: string): any => parser.parse(FILES[name] ?? '');
const itemAt = (i: number) => read(`items/item-${i + 1}.xml`)['qti-assessment-item'];

test('every way of answering is among them', () => {
  expect(new Set(ASKED.map(({ way }) => way)).size).toBe(7);
});

test('every file is well-formed', () => {
  for (const [name, text] of Object.entries(FILES)) expect(XMLValidator.validate(text), name).toBe(true);
});

test('the manifest names every file once, and the test every item in its order', () => {
  const { manifest } = read('imsmanifest.xml');
  expect(manifest['@xmlns']).toBe('http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1');
  const hrefs = manifest.resources.resource.map((one: { '@href': string }) => one['@href']);
  expect([...hrefs, 'imsmanifest.xml'].sort()).toEqual(Object.keys(FILES).sort());
  const whole = read('test.xml')['qti-assessment-test'];
  expect(whole['@title']).toBe('Loops & <legs>');
  expect(whole['qti-time-limits']['@max-time']).toBe('1800');
  const refs = whole['qti-test-part']['qti-assessment-section']['qti-assessment-item-ref'];
  expect(refs.map((one: { '@href': string }) => one['@href'])).toEqual(
    ASKED.map((_, i) => `items/item-${i + 1}.xml`),
  );
});

describe('an item', () => {
  test('has one declared response, an interaction for it, and a right answer among what may be chosen', () => {
    for (const [i, question] of ASKED.entries()) {
      const item = itemAt(i);
      expect(item['@xmlns'], question.id).toBe('http://www.imsglobal.org/xsd/imsqtiasi_v3p0');
      const declared = item['qti-response-declaration'];
      const right: readonly string[] = declared['qti-correct-response']['qti-value'];
      const body = item['qti-item-body'];
      if (question.way === 'figure') {
        expect(declared['@base-type']).toBe('float');
        expect(Number(right[0])).toBe(question.answer);
        const equal =
          item['qti-response-processing']['qti-response-condition']['qti-response-if']['qti-equal'];
        expect(equal['@tolerance']).toBe(`${question.tolerance} ${question.tolerance}`);
        continue;
      }
      const interaction = body[question.way === 'order' ? 'qti-order-interaction' : 'qti-choice-interaction'];
      expect(interaction['@response-identifier'], question.id).toBe(declared['@identifier']);
      const ids = interaction['qti-simple-choice'].map(
        (one: { '@identifier': string }) => one['@identifier'],
      );
      expect(new Set(ids).size).toBe(ids.length);
      for (const id of right) expect(ids, question.id).toContain(id);
      expect(declared['@cardinality']).toBe(
        { order: 'ordered', leads: 'multiple' }[question.way as string] ?? 'single',
      );
      // The place of the right one is that of the question.
      if (question.way === 'choice')
        expect(right).toEqual([
          `option-${1 + question.choices.findIndex(({ id }) => id === question.answer)}`,
        ]);
    }
  });
});

test('the table has a row a question, and no field that a spreadsheet would work out', () => {
  const lines = quizCsv(QUIZ).trimEnd().split('\r\n');
  expect(lines).toHaveLength(ASKED.length + 1);
  for (const line of lines) {
    const fields = [...line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^",]*))/g)].map(
      ([, quoted, plain]) => quoted?.replaceAll('""', '"') ?? plain ?? '',
    );
    expect(fields).toHaveLength(10);
    for (const text of fields) expect(text).not.toMatch(/^[=+@-]/);
  }
});
