/** Where marks were lost, part by part: each with what was said, what is true, what was read and the source. */
import type { Debrief, DebriefTest } from '../../../attempt/marks/debrief.ts';
import { occasionsOf, readingsToType } from '../../../attempt/marks/occasions.ts';
import { asksLeftOut } from '../../../attempt/marks/verdict.ts';
import { IN_WORDS } from '../../../attempt/record/attempt.ts';
import { isTrueReason, trueReasons } from '../../../attempt/record/leftOut.ts';
import { readRightly, recordedFully, typedBefore, typedOf } from '../../../attempt/record/typed.ts';
import { countingEntries } from '../../../attempt/record/untimely.ts';
import type { PartName } from '../../../scenario/tasks.ts';
import { limitSum, limitText, lineInWords } from '../../../words/actions.ts';
import { answerText, JUDGED_WORDS, LIMIT_WORDS } from '../../../words/answers.ts';
import { readingTitle } from '../../../words/readings.ts';
import { sourceText } from '../../../words/sources.ts';
import { OWN_WORDS } from '../../../words/subjects.ts';
import { testTitle } from '../../../words/testTitles.ts';
import { LEFT_OUT_WORDS, leftOutText } from '../../../words/verdicts.ts';
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
    .flatMap((test) => [
      ...predicted(told, test),
      ...written(told, test),
      ...judged(told, test),
      ...leftOut(told, test),
    ]);
}

/** All that was typed in a test. */
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

/** Readings that were typed otherwise than shown, or without all that belongs to them, or not at all. */
function written({ run }: Debrief, { test }: DebriefTest): readonly Lost[] {
  return occasionsOf(run, test).flatMap((occasion) => {
    const typed = typedBefore(run, occasion.span.told);
    return readingsToType(run, occasion, typed).flatMap(({ index }): readonly Lost[] => {
      const [record, taken] = [typed.get(index), run.readings[index]];
      if (taken === undefined) return [];
      const common = {
        test,
        line: readingTitle(taken.reading),
        said: record === undefined ? 'nothing' : recordText(record),
        truth: `the display showed ${shownText(taken.reading)}`,
        source: null,
        read: [],
      };
      const isRead = record !== undefined && readRightly(record, taken);
      const isWhole = record !== undefined && recordedFully(record, taken);
      return [
        ...(isRead ? [] : [{ ...common, key: `observation ${index}`, part: 'observation' } as const]),
        ...(isWhole ? [] : [{ ...common, key: `record ${index}`, part: 'record' } as const]),
      ];
    });
  });
}

/** A test that is due and was not done, without a true reason for it. */
function leftOut({ run }: Debrief, { test, done }: DebriefTest): readonly Lost[] {
  if (done) return [];
  const given = countingEntries(run, 'record', test).at(-1);
  if (given === undefined ? !asksLeftOut(run.scenario) : isTrueReason(run, given)) return [];
  return [
    {
      key: `record ${test}`,
      part: 'record',
      test,
      line: 'left out',
      said: given === undefined ? 'no reason' : leftOutText(given),
      truth: trueReasons(run, test)
        .map((reason) => (reason === IN_WORDS ? '' : LEFT_OUT_WORDS[reason]))
        .join(', or '),
      source: null,
      read: [],
    },
  ];
}

function judged(told: Debrief, { test, done, lines, limits }: DebriefTest): readonly Lost[] {
  const open = lines.filter(({ judged, judgement }) => judgement !== null && judged !== judgement).length;
  // Of a test that was not done it is one thing that is wanting, however many lines it has.
  if (!done)
    return open === 0
      ? []
      : [
          {
            key: `judgement ${test}`,
            part: 'judgement',
            test,
            line: `not done, so ${open} ${open === 1 ? 'line was' : 'lines were'} not judged`,
            said: 'nothing',
            truth: 'due here: a faultless trainee does it',
            source: null,
            read: [],
          },
        ];
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
