// Traces are made of what the instrument shows and of how its test is done, and of nothing else.

import { describe, expect, test } from 'vitest';
import type { OperationInput } from '../../src/bench/operation.ts';
import type { Reading, ReadingOf } from '../../src/bench/reading.ts';
import { applicableActions, benchOf, papersOf } from '../../src/scenario/scenario.ts';
import { tracePath } from '../../src/ui/drawing/traces/plot.ts';
import { residualTrace } from '../../src/ui/drawing/traces/residualTrace.ts';
import type { Trace } from '../../src/ui/drawing/traces/trace.ts';
import { edgeFrom, edgesOf, levelAt, roundNumbers } from '../../src/ui/drawing/traces/trace.ts';
import { traceOf } from '../../src/ui/drawing/traces/traceOf.ts';
import { done, newBench } from '../../src/ui/flow/bench.ts';
import { readsTrace } from '../../src/ui/screens/measure/LateTrace.tsx';
import { numberedSince } from '../../src/ui/screens/measure/records.ts';
import { carryOut } from '../../src/verification/procedure.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';

const PILOT: Reading = {
  quantity: 'pilot',
  unit: 'V',
  value: 8.94,
  uncertainty: 0.05,
  qualifier: null,
  high: 8.94,
  low: -11.97,
  frequency: 1000,
  duty: 0.533,
  amps: 32,
  at: 9,
};

const of = (reading: Reading, took = 0): Trace => {
  const trace = traceOf(reading, took);
  if (trace === null) throw new Error('no trace');
  return trace;
};
const ms = (times: readonly number[]) => times.map((at) => Number((1000 * at).toFixed(3)));

describe('a pilot’s edges in 2 ms', () => {
  test.each([
    // At 1 kHz a period is 1 ms; the high half lasts its duty (IEC 61851-1:2017 Table A.2, Table A.7).
    ['53.3 %, 1 kHz: 32 A', {}, [0, 0.533, 1, 1.533, 2], [0, 0.533]],
    ['10 %, 1 kHz: 6 A', { duty: 0.1 }, [0, 0.1, 1, 1.1, 2], [0, 0.1]],
    [
      '53.3 % at 1005 Hz, the upper end of ±0.5 %',
      { frequency: 1005 },
      [0, 0.53, 0.995, 1.525, 1.99],
      [0, 0.53],
    ],
    [
      'steady +12 V: not ready, or nothing offered',
      { low: 12, high: 12, frequency: null, duty: 1 },
      [],
      [0.5, 1.5],
    ],
  ] as const)('%s (IEC 61851-1:2017 A.4)', (_, change, edges, cursors) => {
    const trace = of({ ...PILOT, ...change });
    expect(ms(edgesOf(trace))).toEqual(edges);
    expect(ms(trace.cursors)).toEqual(cursors);
  });

  test('its levels are the two halves as shown', () => {
    const trace = of(PILOT);
    expect([0, 0.0003, 0.000533, 0.0009, 0.001].map((at) => levelAt(trace, at))).toEqual([
      8.94, 8.94, -11.97, -11.97, 8.94,
    ]);
  });

  test('the amperes are nowhere in it', () => {
    const { levelText, stepText, ...data } = of(PILOT);
    const { levelText: _, stepText: __, ...without } = of({ ...PILOT, amps: 7 });
    expect(data).toEqual(without);
    expect(levelText(8.94)).toBe('+8.94\u202fV');
    expect(stepText(-20.91)).toBe('−20.91\u202fV');
  });

  test('only level lines and right angles', () =>
    expect(tracePath(of(PILOT))).toMatch(/^M[\d. ]+(H[\d.]+V[\d.]+)+H276$/));
});

const RESIDUAL: ReadingOf<'residual'> = {
  quantity: 'residual',
  unit: 'A',
  value: 0.03,
  uncertainty: 0.0015,
  qualifier: null,
  line: 'L1',
  waveform: 'sinusoidal',
  mode: 'fixed',
  tripAmps: 0.03,
  tripMs: 24,
  at: 10,
};
const steps = (trace: Trace | null) =>
  (trace?.levels ?? [])
    .slice(1)
    .map(({ at, value }) => [Number(at.toFixed(4)), Number((1000 * value).toFixed(2))]);

describe('test current against time', () => {
  test.each([
    // A fixed current is there at once and goes with the trip.
    [
      'fixed',
      {},
      0.024,
      [
        [0, 30],
        [0.024, 0],
      ],
    ],
    // Held for its whole time, then taken off by the instrument.
    [
      'fixed, no trip',
      { value: null, qualifier: '>', limit: 0.015, tripAmps: null, tripMs: null },
      0.5,
      [
        [0, 15],
        [0.5, 0],
      ],
    ],
    // 30 % to 110 % of the rating in 10 % steps of 300 ms: the fifth is 70 %.
    [
      'rising a.c.',
      { mode: 'ramp', tripAmps: 0.021, tripMs: 40 },
      1.24,
      [
        [0, 9],
        [0.3, 12],
        [0.6, 15],
        [0.9, 18],
        [1.2, 21],
        [1.24, 0],
      ],
    ],
    // 2 to 6 mA in 30 s (IEC 62955:2018 9.9.2.1): seventeen steps of 0.25 mA; the third is 2.5 mA.
    [
      'rising d.c., negative',
      { mode: 'ramp', waveform: 'smooth-dc-negative', tripAmps: 0.0025, tripMs: 100 },
      (2 * 30) / 17 + 0.1,
      [
        [0, -2],
        [1.7647, -2.25],
        [3.5294, -2.5],
        [3.6294, 0],
      ],
    ],
  ] as const)('%s', (_, change, took, wanted) => {
    expect(steps(residualTrace({ ...RESIDUAL, ...change } as ReadingOf<'residual'>, took))).toEqual(wanted);
  });

  test('the last step of a test on the bench ends when the test does', () => {
    const { scenario, file } = scenarioNamed('harbour-mews');
    const operations: readonly OperationInput[] = [
      { op: 'vehicle', plugged: true, state: 'C' },
      { op: 'wait', seconds: 20 },
      { op: 'measure', quantity: 'residual', waveform: 'smooth-dc-positive', mode: 'ramp' },
    ];
    const bench = operations.reduce((now, next) => done(now, 'dc-ramp', next, 0), newBench(scenario, file));
    const [[numbered] = []] = numberedSince(bench, 'dc-ramp', -1);
    if (numbered === undefined) throw new Error('no reading');
    const { reading, took } = numbered;
    if (reading.quantity !== 'residual') throw new Error('another reading');
    const trace = residualTrace(reading, took);
    const levels = trace?.levels ?? [];
    // The shown time is up to 2 ms off.
    expect(Math.abs((levels.at(-1)?.at ?? 0) - took)).toBeLessThan(0.003);
    expect(levels.at(-2)?.value).toBeCloseTo(reading.tripAmps ?? 0, 9);
    // The current comes out up to 5 % above its setting: the first step is 2 to 2.1 mA.
    expect(levels[1]?.value).toBeGreaterThanOrEqual(0.00199);
    expect(levels[1]?.value).toBeLessThanOrEqual(0.00211);
  });
});

describe('the outlet around a change of state', () => {
  const opened = of({
    quantity: 'opening-time',
    unit: 's',
    value: 0.064,
    uncertainty: 0.002,
    qualifier: null,
    of: 'C-to-B',
    at: 20,
  });
  test('supplied before, not supplied from the time shown on; volts are not told', () => {
    expect([-0.01, 0, 0.063, 0.064].map((at) => opened.levelText(levelAt(opened, at)))).toEqual([
      'over 50\u202fV',
      'over 50\u202fV',
      'over 50\u202fV',
      'not over 50\u202fV',
    ]);
    expect(opened.cursors).toEqual([0, 0.064]);
    expect(opened.stepText(1)).toBeNull();
  });
  test('still supplied after the longest time: no edge', () => {
    const never = of({
      quantity: 'opening-time',
      unit: 's',
      value: null,
      uncertainty: null,
      qualifier: '>',
      limit: 5,
      at: 20,
    });
    expect(edgesOf(never)).toEqual([]);
  });
});

test('no reading, no trace; a figure alone has none', () => {
  expect(
    traceOf(
      { ...RESIDUAL, value: null, qualifier: 'unable', reason: { id: 'not-live', place: 'outlet' } },
      0,
    ),
  ).toBeNull();
  expect(traceOf({ ...PILOT, quantity: 'voltage' }, 0)).toBeNull();
});

test.each(['almshouse-row', 'foundry-yard'])(
  'on %s what draws traces is there for every test that reads one, and for no other',
  (name) => {
    const { scenario } = scenarioNamed(name);
    const papers = papersOf(scenario);
    const actions = applicableActions(scenario);
    const reads = actions.filter((action) =>
      carryOut(benchOf(scenario, []), action, papers)
        .samples.flatMap(({ readings }) => readings)
        .some((reading) => traceOf(reading, 1) !== null),
    );
    expect(reads.length).toBeGreaterThan(5);
    expect(actions.filter((action) => readsTrace(action, papers))).toEqual(reads);
  },
);

test('edges one after the other, and the ends of the trace beyond them', () => {
  const trace = of(PILOT);
  expect(ms([0.0002, 0.000533, 0.002].map((at) => edgeFrom(trace, at, 'next')))).toEqual([0.533, 1, 2]);
  expect(ms([0.0002, 0.000533, 0].map((at) => edgeFrom(trace, at, 'before')))).toEqual([0, 0, 0]);
});

test('round numbers on an axis', () => {
  expect(roundNumbers(0, 27.6, 4)).toEqual([0, 10, 20]);
  expect(roundNumbers(-3.4, 34, 4)).toEqual([0, 10, 20, 30]);
  expect(roundNumbers(0, 0.35, 4)).toEqual([0, 0.1, 0.2, 0.3]);
});
