/** What test action `supply-return` ought to show. */
import type { Seconds } from '../../laws/quantities.ts';
import { asked } from '../actions/pilotLines.ts';
import { inState, judgeAll, outletSupplied, showsVoltage } from '../judging.ts';
import type { Observed, Sample } from '../observed.ts';
import { mayWait } from '../offer.ts';
import { pilotStandard, published, SHEET } from '../sources.ts';
import type { TestLines } from '../testAction.ts';

/** When the supply last came back before this sample, s; null where that was not seen. */
function cameBack(o: Observed, sample: Sample): Seconds | null {
  const before = o.samples.slice(0, o.samples.indexOf(sample) + 1);
  const last = before.findLast(({ operation }) => operation.op === 'reset' && operation.what === 'supply');
  return last?.seen.at ?? null;
}

const inC = inState('C');

/** No permission since the supply came back. */
function needsPermission(o: Observed, sample: Sample): boolean {
  const index = o.samples.indexOf(sample);
  const back = o.samples
    .slice(0, index + 1)
    .findLastIndex(({ operation }) => operation.op === 'reset' && operation.what === 'supply');
  return !o.samples
    .slice(back, index + 1)
    .some(({ operation }) => operation.op === 'press' && operation.button === 'authorise');
}

export const supplyReturn: TestLines = {
  expectations: (papers) => {
    const { startUp } = papers.sheet;
    const starting = (o: Observed, sample: Sample, at: Seconds): boolean => {
      const back = cameBack(o, sample);
      return back !== null && at - back < startUp;
    };
    return [
      {
        id: 'voltage',
        should: false,
        source: pilotStandard('6.3.1'),
        of: 'unit',
        points: ['switching'],
        judge: (o) =>
          judgeAll(
            o.samples
              .filter((s) => inC(s.setUp, s))
              .flatMap((s) =>
                s.readings.filter(
                  (r) =>
                    r.quantity === 'voltage' &&
                    r.between?.every((t) => t.startsWith('outlet.')) === true &&
                    starting(o, s, r.at),
                ),
              ),
            (r) => !showsVoltage(r),
          ),
      },
      {
        id: 'comes-back-closed',
        should: false,
        values: { startUp },
        source: pilotStandard('6.3.1'),
        of: 'unit',
        points: ['switching'],
        judge: (o) => {
          const resets = o.samples.filter(
            ({ operation, setUp }) =>
              operation.op === 'reset' && operation.what === 'supply' && setUp.standIn.state === 'C',
          );
          return judgeAll(resets, (reset) => {
            const after = o.samples.slice(o.samples.indexOf(reset));
            const closed = after
              .flatMap(({ events }) => events)
              .find(({ what, at }) => what === 'contactor closed' && at >= reset.seen.at);
            return closed === undefined || closed.at - reset.seen.at >= startUp - 0.001;
          });
        },
      },
      {
        id: 'permission-again',
        should: false,
        source: published('IEC 61851-1:2017 A.3; SI 2021/1467 reg 11'),
        of: 'unit',
        points: ['switching', 'pilot'],
        judge: (o) => {
          // An open unit with no delay needs none: nothing to be seen, and nothing wrong.
          const waiting = o.samples.filter(
            (s) => inC(s.setUp, s) && cameBack(o, s) !== null && needsPermission(o, s),
          );
          return papers.sheet.permission !== 'authorise'
            ? cameBack(o, o.samples.at(-1) as Sample) === null
              ? 'not shown'
              : 'met'
            : judgeAll(
                waiting.flatMap(({ events }) => [
                  true,
                  ...events.map(({ what }) => what !== 'contactor closed'),
                ]),
                (quiet) => quiet,
              );
        },
      },
      {
        id: 'supplies-again',
        should: true,
        source: SHEET,
        of: 'unit',
        points: ['switching', 'pilot'],
        judge: (o) =>
          outletSupplied(
            papers,
            o,
            (setUp, s) =>
              asked(papers, o)(setUp, s) &&
              !mayWait(papers, o, s) &&
              (s.readings[0]?.at ?? 0) - (cameBack(o, s) ?? Infinity) >= startUp + 3,
          ),
      },
    ];
  },
  figures: () => [],
  limits: () => [],
  stops: ['voltage'],
};
