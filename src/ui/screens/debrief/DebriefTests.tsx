/** Every line, figure and limit of every test that counts, with what was said and what is true. */

import { memo } from 'react';
import type { Debrief, DebriefTest } from '../../../attempt/marks/debrief.ts';
import type { Run } from '../../../attempt/record/run.ts';
import { adviceText, figureInWords, limitSum, limitText, lineInWords } from '../../../words/actions.ts';
import { answerText, SURE_WORDS } from '../../../words/answers.ts';
import { sourceText } from '../../../words/sources.ts';
import { OWN_WORDS } from '../../../words/subjects.ts';
import { testTitle } from '../../../words/testTitles.ts';
import { figureText } from '../../format/figures.ts';
import type { TruthLine } from '../../parts/TruthLines.tsx';
import { isAsSaid, judgedPair, limitPair, TruthLines } from '../../parts/TruthLines.tsx';
import { whyText } from '../../parts/whyText.ts';
import { recordOf, recordText } from '../measure/records.ts';
import { Fold } from './Fold.tsx';

export const DebriefTests = memo(function DebriefTests({ told }: { readonly told: Debrief }) {
  return (
    <Fold id="lines-heading" title="Test by test">
      {told.advice.map((one) => (
        <p key={one.id}>
          <strong>To write down and advise.</strong> {adviceText(one.test, one)}{' '}
          <span className="note">{sourceText(one.source)}</span>
        </p>
      ))}
      {told.tests.map((test) => {
        const lines = linesOf(told.run, test);
        const differing = lines.filter((line) => !isAsSaid(line)).length;
        return (
          <details key={test.test} className="debrief-test">
            <summary>
              {testTitle(test.test)}: {test.done ? summary(differing, lines.length) : 'not done'}
              {test.given ? '; its lines were given' : ''}
              {test.sure === null ? '' : `; ${SURE_WORDS[test.sure]}`}
              {test.counts ? '' : '; not marked: a faultless trainee has stopped before it'}
            </summary>
            <TruthLines lines={lines} />
          </details>
        );
      })}
    </Fold>
  );
});

const summary = (differing: number, all: number): string =>
  differing === 0 ? `all ${all} lines as you said` : `${differing} of ${all} lines other than you said`;

function linesOf(run: Run, test: DebriefTest): readonly TruthLine[] {
  return [
    ...test.lines.map((line): TruthLine => {
      const { text, why, otherwise } = lineInWords(test.test, line);
      return {
        id: line.id,
        text: `${OWN_WORDS[line.subject]} ${text}`,
        pairs: [
          {
            of: 'predicted',
            ...(test.given
              ? { you: 'given', agrees: true }
              : line.leftAlone
                ? { you: 'left alone', agrees: true }
                : { you: line.predicted === null ? 'nothing' : answerText(line.predicted) }),
            truth: answerText(line.right),
          },
          ...(line.judgement === null ? [] : [judgedPair(line.judged, line.judgement)]),
        ],
        why: whyText(why, line.toldBy.map(testTitle)),
        otherwise,
        source: sourceText(line.source),
      };
    }),
    ...test.figures.map((figure): TruthLine => {
      const { text, unit, said, value, isRight, why, source } = figureInWords(test.test, figure);
      return {
        id: `figure ${figure.id}`,
        text,
        pairs: [
          {
            of: 'predicted',
            you: test.given ? 'given' : said === null ? 'nothing' : figureText(said, unit),
            truth: figureText(value, unit),
            agrees: test.given || isRight,
          },
        ],
        why,
        source: sourceText(source),
      };
    }),
    ...test.limits.map(({ limit, reading, right, judged }): TruthLine => {
      const record = recordOf(run, reading);
      return {
        id: `limit ${limit.id} ${reading}`,
        text: `${limitText(test.test, limit)}: ${record === undefined ? 'not written down' : recordText(record)}`,
        pairs: [limitPair(judged, right)],
        why: limitSum(test.test, limit),
        source: sourceText(limit.source),
      };
    }),
  ];
}
