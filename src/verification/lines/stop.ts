/** What test action `stop` ought to show. */
import type { Seconds } from '../../laws/quantities.ts';
import { LEAST_OPEN_UNDER_LOAD, LEAST_OSCILLATION_PAUSE } from '../../laws/timing.ts';
import { oscillating } from '../actions/pilotLines.ts';
import { inState, judgeAll, outletDead, readingsOf, samplesWhen } from '../judging.ts';
import type { Observed, Sample } from '../observed.ts';
import { rulesFor } from '../rules/rules.ts';
import { pilotStandard, SHEET } from '../sources.ts';
import type { TestLines } from '../testAction.ts';

/** "At once", s: what a contactor and the ear need. Common practice, no source. */
const AT_ONCE: Seconds = 0.5;

interface Press {
  readonly index: number;
  /** When the button went down: the end of what was done before. */
  readonly at: Seconds;
}

/** Presses of a button while a vehicle was being supplied. */
const presses = (o: Observed, button: 'stop' | 'emergency'): readonly Press[] =>
  o.samples.flatMap(({ operation, setUp }, index): Press[] => {
    const before = o.samples[index - 1];
    return operation.op === 'press' &&
      operation.button === button &&
      before !== undefined &&
      before.seen.indicator === 'charging' &&
      inState('C')(setUp, before)
      ? [{ index, at: before.seen.at }]
      : [];
  });

/** What was observed from a press on, until something else was set or reset. */
function until(o: Observed, { index }: Press): readonly Sample[] {
  const later = o.samples.slice(index);
  const end = later.findIndex(
    ({ operation }, i) => i > 0 && !['wait', 'measure', 'prove-dead'].includes(operation.op),
  );
  return end < 0 ? later : later.slice(0, end);
}

const openings = (o: Observed, press: Press): readonly Seconds[] =>
  until(o, press)
    .flatMap(({ events }) => events)
    .filter(({ what }) => what === 'contactor opened')
    .map(({ at }) => at - press.at);

/** A stop that was reset before the pause was over: the vehicle asked all the while, and the contactor can be heard. */
const resetAtOnce = (o: Observed): readonly Press[] =>
  presses(o, 'emergency').filter((press) => {
    const reset = o.samples[press.index + until(o, press).length];
    const began = o.samples[press.index + until(o, press).length - 1]?.seen.at ?? Infinity;
    return (
      reset?.operation.op === 'reset' &&
      reset.operation.what === 'unit' &&
      began - press.at < LEAST_OSCILLATION_PAUSE &&
      inState('C')(reset.setUp, reset)
    );
  });

export const stop: TestLines = {
  expectations: (papers) => [
    {
      id: 'steady',
      should: true,
      source: pilotStandard('Table A.6 sequence 9.1'),
      of: 'unit',
      points: ['pilot'],
      judge: (o) =>
        judgeAll(
          presses(o, 'stop').flatMap((press) => {
            const samples = until(o, press);
            return readingsOf({ samples }, 'pilot', () => true);
          }),
          (r) => !oscillating(r),
        ),
    },
    {
      id: 'under-load',
      should: false,
      source: pilotStandard('Table A.6 sequence 10.2'),
      of: 'unit',
      points: ['switching', 'pilot'],
      judge: (o) =>
        judgeAll(
          presses(o, 'stop').filter(
            (press) => (until(o, press).at(-1)?.seen.at ?? 0) - press.at >= LEAST_OPEN_UNDER_LOAD,
          ),
          (press) => openings(o, press).every((after) => after >= LEAST_OPEN_UNDER_LOAD - 0.001),
        ),
    },
    {
      id: 'emergency',
      should: true,
      values: { atOnce: AT_ONCE },
      source: rulesFor(papers).regulation('722.537.2.201', 'time-by-practice'),
      of: 'unit',
      points: ['switching'],
      judge: (o) => {
        const all = presses(o, 'emergency');
        const heard = judgeAll(all, (press) => openings(o, press).some((after) => after <= AT_ONCE));
        const read = outletDead(papers, o, (_, sample) =>
          all.some((press) => until(o, press).includes(sample)),
        );
        return heard === 'met' ? read : heard;
      },
    },
    {
      id: 'restarts',
      should: false,
      source: rulesFor(papers).remembered('537.3.3'),
      of: 'unit',
      points: ['switching'],
      judge: (o) =>
        judgeAll(
          presses(o, 'emergency').flatMap((press) => [
            true,
            ...until(o, press).flatMap(({ events }) => events.map(({ what }) => what !== 'contactor closed')),
          ]),
          (quiet) => quiet,
        ),
    },
    {
      id: 'pause',
      should: false,
      source: pilotStandard('Table A.6 sequence 9.2'),
      of: 'unit',
      points: ['pilot', 'switching'],
      judge: (o) =>
        judgeAll(resetAtOnce(o), (press) =>
          o.samples
            .slice(press.index)
            .flatMap(({ events }) => events)
            .filter(({ what }) => what === 'contactor closed')
            .every(({ at }) => at - press.at >= LEAST_OSCILLATION_PAUSE),
        ),
    },
    {
      id: 'says-so',
      should: true,
      source: SHEET,
      of: 'unit',
      points: ['switching'],
      judge: (o) =>
        judgeAll(
          [...presses(o, 'stop'), ...presses(o, 'emergency')].flatMap((press) =>
            samplesWhen({ samples: until(o, press) }, inState('C')),
          ),
          ({ seen }) => seen.indicator === 'stopped',
        ),
    },
  ],
  figures: () => [],
  limits: () => [],
  stops: ['emergency'],
};
