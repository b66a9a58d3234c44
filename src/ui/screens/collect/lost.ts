/** Where marks were lost, part by part: each with what was said, what is true, what was read and the source. */
import type { Debrief, DebriefTest } from '../../../attempt/marks/debrief.ts';
import { readRightly, typedOf } from '../../../attempt/record/typed.ts';
import type { PartName } from '../../../scenario/schema.ts';
import { limitSum, limitText, lineInWords } from '../../../words/actions.ts';
import { answerText, JUDGED_WORDS, LIMIT_WORDS } from '../../../words/answers.ts';
import { readingTitle } from '../../../words/readings.ts';
import { sourceText } from '../../../words/sources.ts';
import { OWN_WORDS } from '../../../words/subjects.ts';
import { testTitle } from '../../../words/testTitles.ts';
import { shownText } from '../../format/figures.ts';
import { recordOf, recordText } from '../measure/records.ts';

export interface Lost {
  readonly key: string;
  readonly part: PartName;
  readonly test: string;
  readonly line: string;
  readonly said: string;
  readonly truth: string;
  readonly source: string | null;
  /** What was written down in that test. */
  readonly read: readonly string[];
}

/** Of the parts that are made of single answers; the others have their sum alone. */
export function lostIn(told: Debrief): readonly Lost[] {
  return told.tests
    .filter(({ counts }) => counts)
    .flatMap((test) => [...predicted(told, test), ...misread(told, test), ...judged(told, test)]);
}

function writtenIn({ run }: Debrief, test: string): readonly string[] {
  return [...typedOf(run)].flatMap(([index, typed]) => {
    const taken = run.readings[index];
    return typed.test !== test || taken === undefined
      ? []
      : [`${readingTitle(taken.reading)}: ${recordText(typed)}`];
  });
}

function predicted(told: Debrief, { test, lines, given }: DebriefTest): readonly Lost[] {
  if (given) return [];
  return lines
    .filter(({ predicted, right, leftAlone }) => !leftAlone && predicted !== null && predicted !== right)
    .map((line) => {
      const { text } = lineInWords(test, line);
      return {
        key: `prediction ${test} ${line.id}`,
        part: 'prediction',
        test,
        line: `${OWN_WORDS[line.subject]} ${text}`,
        said: line.predicted === null ? 'nothing' : answerText(line.predicted),
        truth: answerText(line.right),
        source: sourceText(line.source),
        read: writtenIn(told, test),
      };
    });
}

function misread({ run }: Debrief, { test }: DebriefTest): readonly Lost[] {
  return [...typedOf(run)].flatMap(([index, typed]): readonly Lost[] => {
    const taken = run.readings[index];
    if (typed.test !== test || taken === undefined || readRightly(typed, taken)) return [];
    return [
      {
        key: `observation ${index}`,
        part: 'observation',
        test,
        line: readingTitle(taken.reading),
        said: recordText(typed),
        truth: `the display showed ${shownText(taken.reading)}`,
        source: null,
        read: [],
      },
    ];
  });
}

function judged(told: Debrief, { test, lines, limits }: DebriefTest): readonly Lost[] {
  return [
    ...lines
      .filter(({ judged, judgement }) => judgement !== null && judged !== judgement)
      .map((line): Lost => {
        const { text } = lineInWords(test, line);
        return {
          key: `judgement ${test} ${line.id}`,
          part: 'judgement',
          test,
          line: `${OWN_WORDS[line.subject]} ${text}`,
          said: line.judged === null ? 'nothing' : JUDGED_WORDS[line.judged],
          truth: line.judgement === null ? '' : JUDGED_WORDS[line.judgement],
          source: sourceText(line.source),
          read: writtenIn(told, test),
        };
      }),
    ...limits
      .filter(({ judged, right }) => judged !== right)
      .map(({ limit, reading, judged, right }): Lost => {
        const record = recordOf(told.run, reading);
        return {
          key: `judgement ${test} ${limit.id} ${reading}`,
          part: 'judgement',
          test,
          line: limitText(test, limit),
          said: judged === null ? 'nothing' : LIMIT_WORDS[judged],
          truth: `${LIMIT_WORDS[right]} (${limitSum(test, limit)})`,
          source: sourceText(limit.source),
          read: record === undefined ? ['not written down'] : [recordText(record)],
        };
      }),
  ];
}

export const lostTitle = ({ test }: Lost): string => testTitle(test);
