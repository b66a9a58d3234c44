/** What belongs to a reading in the record: each part of it costs the record where it is wrong, and no figure. */
import { expect, test } from 'vitest';
import { mark } from '../../../src/attempt/marks/mark.ts';
import { typedAsShown } from '../../../src/attempt/marks/worked.ts';
import type { NotedOf } from '../../../src/attempt/record/attempt.ts';
import { act, startRun } from '../../../src/attempt/record/run.ts';
import { readRightly, recordedFully } from '../../../src/attempt/record/typed.ts';
import { operation } from '../../../src/bench/operation.ts';
import { scenarioNamed } from '../../helpers/scenarios.ts';
import { attemptBy } from '../../helpers/trainee.ts';

const { scenario, file } = scenarioNamed('harbour-mews');
/** Between them: insulation, a pilot with both peaks, volts, a residual time. */
const FEW = ['insulation-circuit', 'state-b', 'state-c', 'residual-rated'];

type Typed = NotedOf<'observation'>;
const typedAs = (type?: (typed: Typed) => Typed) =>
  mark(
    scenario,
    attemptBy(scenario, file, {
      tests: (all) => all.filter(({ id }) => FEW.includes(id)),
      ...(type === undefined ? {} : { type }),
    }),
  ).sums;

const whole = typedAs();

test.each<[string, (typed: Typed) => boolean, (typed: Typed) => Typed]>([
  ['the unit', ({ unit }) => unit === 'V', (typed) => ({ ...typed, unit: 'A' })],
  ['the > sign', ({ qualifier }) => qualifier === '>', (typed) => ({ ...typed, qualifier: null })],
  [
    'the polarity of the negative peak',
    ({ low }) => low !== undefined && low < -1,
    (typed) => ({ ...typed, low: -(typed.low ?? 0) }),
  ],
  [
    'the polarity of what is shown',
    ({ unit, value }) => unit === 'V' && (value ?? 0) !== 0,
    (typed) => ({ ...typed, value: -(typed.value ?? 0) }),
  ],
  ['the test voltage', ({ volts }) => volts !== undefined, (typed) => ({ ...typed, volts: 1000 })],
  ['what tripped', ({ tripped }) => tripped === 'unit', (typed) => ({ ...typed, tripped: 'upstream' })],
])('%s', (_, has, change) => {
  let changed = 0;
  const sums = typedAs((typed) => {
    // No trip in a residual test is read by its > sign.
    if (!has(typed) || (typed.qualifier === '>' && typed.tripped !== undefined)) return typed;
    changed += 1;
    return change(typed);
  });
  expect(changed).toBeGreaterThan(0);
  expect(sums.record.written).toEqual({
    right: whole.record.written.right - changed,
    of: whole.record.written.of,
  });
  expect(sums.observation).toEqual(whole.observation);
});

test('a prefix is no other unit, and where nothing tripped there is nothing to name', () => {
  expect(
    typedAs((typed) =>
      typed.unit === 'V' && typed.value !== null
        ? { ...typed, unit: 'mV', value: 1000 * typed.value }
        : typed,
    ),
  ).toEqual(whole);
});

test('what an instrument refused is written down as no reading', () => {
  const run = startRun(scenario, file);
  // Nothing is plugged in and nothing is supplied: there is no loop to measure.
  const { run: refused } = act(
    run,
    'loop',
    operation({ op: 'measure', quantity: 'loop', between: ['outlet.L1', 'outlet.PE'] }),
    0,
  );
  const [taken] = refused.readings;
  if (taken === undefined) throw new Error('no reading');
  expect(taken.reading.qualifier).toBe('unable');
  const typed = { ...typedAsShown(taken, 0), at: 0, wall: 0, hash: '' };
  expect(recordedFully(typed, taken)).toBe(true);
  expect(recordedFully({ ...typed, qualifier: null, value: 0.5 }, taken)).toBe(false);
  expect(readRightly(typed, taken)).toBe(true);
  expect(readRightly({ ...typed, qualifier: null, value: 0.5 }, taken)).toBe(false);
});
