/**
 * A worked attempt cut into steps to be looked at one by one: for each test its lines, what was done up to each
 * reading, and the judgement; at the end the conclusion. Data only; how a step looks is Worked.tsx's business.
 */

import { workingAttempt } from '../../../attempt/marks/worked.ts';
import type { Answer, EntryOf, Judged, LimitJudged } from '../../../attempt/record/attempt.ts';
import type { Line } from '../../../attempt/record/lines.ts';
import { testFigures, testLines } from '../../../attempt/record/lines.ts';
import type { Reading } from '../../../bench/reading.ts';
import type { Scenario } from '../../../scenario/scenario.ts';
import { actionNamed } from '../../../verification/actions.ts';
import { onPapers } from '../../../verification/onPapers.ts';
import type { Figure, Stage } from '../../../verification/testAction.ts';
import type { InWords } from '../../../words/actions.ts';
import { figureInWords, limitSum, limitText, lineInWords, testPurpose } from '../../../words/actions.ts';
import { testTitle } from '../../../words/testTitles.ts';
import type { Bench, Happened } from '../../flow/bench.ts';
import { takingUp, upTo } from '../../flow/bench.ts';
import { perceived } from '../../flow/whatIsKnown.ts';

interface InTest {
  /** Title of the test, and what it is about. */
  readonly title: string;
  readonly stage: Stage;
  /** From 1. */
  readonly number: number;
}

export type WorkedStep = {
  /** As it stood then. */
  readonly bench: Bench;
} & (
  | (InTest & {
      readonly kind: 'lines';
      readonly purpose: string;
      readonly lines: readonly (InWords<Line> & { readonly answer: Answer })[];
      readonly figures: readonly InWords<Figure>[];
    })
  | (InTest & {
      readonly kind: 'done';
      readonly operations: readonly Happened[];
      readonly noticed: ReturnType<typeof perceived>;
      readonly readings: readonly {
        readonly reading: Reading;
        readonly typed: EntryOf<'observation'> | undefined;
      }[];
    })
  | (InTest & {
      readonly kind: 'judged';
      readonly lines: readonly {
        readonly text: string;
        readonly subject: Line['subject'];
        readonly judged: Judged;
      }[];
      readonly limits: readonly {
        readonly text: string;
        readonly sum: string;
        readonly typed: EntryOf<'observation'> | undefined;
        readonly judged: LimitJudged;
      }[];
    })
  | { readonly kind: 'concluded'; readonly conclusion: EntryOf<'conclusion'> }
);

/** In pieces, since the whole job is done for it. `file`: the scenario file's own object. */
export function* workingSteps(scenario: Scenario, file: unknown): Generator<null, readonly WorkedStep[]> {
  const attempt = yield* workingAttempt(scenario, file);
  const bench = yield* takingUp(scenario, attempt);
  const { entries } = attempt;
  const starts = entries.flatMap((entry, i) => (entry.kind === 'prediction' ? [i] : []));
  const steps: WorkedStep[] = [];
  for (const [i, start] of starts.entries()) {
    yield null;
    steps.push(...stepsOfTest(bench, start, starts[i + 1] ?? entries.length, i + 1));
  }
  const conclusion = entries.find((entry) => entry.kind === 'conclusion');
  return conclusion?.kind === 'conclusion' ? [...steps, { kind: 'concluded', conclusion, bench }] : steps;
}

function stepsOfTest(bench: Bench, from: number, to: number, number: number): readonly WorkedStep[] {
  const { run, happened } = bench;
  const prediction = run.attempt.entries[from];
  const action = prediction?.kind === 'prediction' ? actionNamed(prediction.test) : undefined;
  if (prediction?.kind !== 'prediction' || action === undefined) return [];
  const place = { title: testTitle(action.id), stage: action.stage, number };
  const lines = testLines(run.scenario, action).map((line) => lineInWords(action.id, line));
  const own = happened.filter(({ entry }) => entry > from && entry < to);
  const written = run.attempt.entries
    .slice(from, to)
    .filter((entry): entry is EntryOf<'observation'> => entry.kind === 'observation');
  const began = happened.filter(({ entry }) => entry < from).length;
  const judgement = run.attempt.entries.slice(from, to).find((entry) => entry.kind === 'judgement');
  return [
    {
      ...place,
      kind: 'lines',
      bench: upTo(bench, began),
      purpose: testPurpose(action.id),
      lines: lines.map((line) => ({ ...line, answer: line.right })),
      figures: testFigures(run.scenario, action).map((figure) => figureInWords(action.id, figure)),
    },
    ...upToReadings(own).map((operations): WorkedStep => {
      const first = happened.indexOf(operations[0] as Happened);
      const until = first + operations.length;
      return {
        ...place,
        kind: 'done',
        bench: upTo(bench, until),
        operations,
        noticed: perceived(happened.slice(0, until), first),
        readings: operations.flatMap(({ entry }) =>
          run.readings.flatMap((taken, index) =>
            taken.entry === entry
              ? [{ reading: taken.reading, typed: written.find((typed) => typed.reading === index) }]
              : [],
          ),
        ),
      };
    }),
    ...(judgement?.kind === 'judgement'
      ? [
          {
            ...place,
            kind: 'judged' as const,
            bench: upTo(bench, began + own.length),
            lines: judgement.lines.flatMap(({ id, judged }) => {
              const line = lines.find((one) => one.id === id);
              return line === undefined ? [] : [{ text: line.text, subject: line.subject, judged }];
            }),
            limits: judgement.limits.flatMap(({ id, reading, judged }) => {
              const limit = onPapers(action, run.papers).limits.find((one) => one.id === id);
              const typed = written.find((one) => one.reading === reading);
              return limit === undefined
                ? []
                : [{ text: limitText(action.id, limit), sum: limitSum(action.id, limit), typed, judged }];
            }),
          },
        ]
      : []),
  ];
}

/** Operations in rows that each end where something was read; what comes after the last reading is a row too. */
function upToReadings(own: readonly Happened[]): readonly (readonly Happened[])[] {
  const rows: Happened[][] = [];
  let row: Happened[] = [];
  for (const one of own) {
    row.push(one);
    if (one.outcome.readings.length === 0) continue;
    rows.push(row);
    row = [];
  }
  return row.length === 0 ? rows : [...rows, row];
}
