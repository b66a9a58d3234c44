/**
 * The bench of the first minute: a unit whose line pole is stuck, with nothing plugged in, and the voltage between two of its
 * pins. What is read comes from the solved network, as on any bench.
 */
import noVehicle from '../../../../scenarios/first-run/no-vehicle.json';
import type { Run } from '../../../attempt/record/run.ts';
import { act, startingRun } from '../../../attempt/record/run.ts';
import { operation } from '../../../bench/operation.ts';
import type { Reading } from '../../../bench/reading.ts';
import { scenarioIn } from '../../../scenario/scenario.ts';

/** Pins that a lead can be put on, from the top, and what each is called. */
export const PINS = { L1: 'L', N: 'N', PE: 'PE' } as const;
export type Pin = keyof typeof PINS;
/** The one that was put on last stands last. */
export type Pair = readonly [Pin, Pin];

/** The unit that the first run ends with, without what others did on it before. */
const { handover: _, lines: __, ...alone } = noVehicle;
const FILE = { ...alone, allowed: 'all' };
/** Until the unit has started up, s. */
const START = 60;

export function* startingMinute(): Generator<null, Run> {
  const run = yield* startingRun(scenarioIn(FILE), FILE);
  return act(run, null, operation({ op: 'wait', seconds: START }), 0).run;
}

/** What a two-pole detector shows between two pins. */
export function readBetween(run: Run, [a, b]: Pair): { readonly run: Run; readonly reading: Reading } {
  const { run: done, outcome } = act(
    run,
    null,
    operation({
      op: 'measure',
      quantity: 'voltage',
      tool: 'two-pole',
      between: [`outlet.${a}`, `outlet.${b}`],
    }),
    0,
  );
  const [reading] = outcome.readings;
  if (reading === undefined) throw new Error('the detector showed nothing');
  return { run: done, reading };
}

/** The leads after one more pin was touched: the older one moves there. */
export const moved = (pair: Pair, pin: Pin): Pair => (pair.includes(pin) ? pair : [pair[1], pin]);

const ORDER: readonly string[] = Object.keys(PINS);
/** Both, from the top. */
export const pairText = (pair: Pair, between: string): string =>
  pair
    .toSorted((a, b) => ORDER.indexOf(a) - ORDER.indexOf(b))
    .map((pin) => PINS[pin])
    .join(between);
