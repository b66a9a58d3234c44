/** What is written of a test at a fixed residual current: the time, not the current, which was set. */

import { describe, expect, test } from 'vitest';
import { debriefOf } from '../../src/attempt/marks/debrief.ts';
import { mark } from '../../src/attempt/marks/mark.ts';
import { typedAsShown } from '../../src/attempt/marks/worked.ts';
import type { Attempt } from '../../src/attempt/record/attempt.ts';
import { replay } from '../../src/attempt/record/run.ts';
import { lastSitting } from '../../src/attempt/record/sitting.ts';
import { truthOf } from '../../src/attempt/record/truth.ts';
import { readRightly, recordedFully } from '../../src/attempt/record/typed.ts';
import { isOf } from '../../src/bench/reading.ts';
import { actionNamed } from '../../src/verification/actions.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';
import type { Habits } from '../helpers/trainee.ts';
import { attemptBy, faultlessAttempt } from '../helpers/trainee.ts';

const { scenario, file } = scenarioNamed('harbour-mews');
const only = (id: string) => (all: readonly { readonly id: string }[]) =>
  all.filter((action) => action.id === id || action.id === 'pe-outlet') as never;
const done = (id: string, type?: Habits['type']) =>
  attemptBy(scenario, file, { tests: only(id), ...(type === undefined ? {} : { type }) });
const typedIn = ({ entries }: Attempt, test_: string) =>
  entries
    .filter((entry) => entry.kind === 'observation')
    .filter((entry) => entry.test === test_ && entry.tripped);

const run = replay(scenario, faultlessAttempt(scenario, file));
const residual = run.readings.flatMap(({ reading, ...taken }) =>
  isOf(reading, 'residual') ? [{ ...taken, reading }] : [],
);
const fixed = (trips: boolean) =>
  residual.find(({ reading }) => reading.mode === 'fixed' && (reading.tripMs != null) === trips);
const ramp = residual.find(({ reading }) => reading.mode === 'ramp' && reading.tripMs != null);

describe('a fixed current that trips', () => {
  const taken = fixed(true) as NonNullable<ReturnType<typeof fixed>>;
  const right = { ...typedAsShown(taken, 0), at: 0, wall: 0, hash: '' };
  const ms = taken.reading.tripMs as number;

  test('is the milliseconds that it shows', () => {
    expect(right).toMatchObject({ value: null, unit: 'ms', qualifier: null, tripMs: ms });
    expect([readRightly(right, taken), recordedFully(right, taken)]).toEqual([true, true]);
  });

  test.each([
    ['another time', { tripMs: ms + 2 }],
    ['no time', { tripMs: undefined }],
    ['no trip', { tripMs: undefined, qualifier: '>' as const }],
  ])('%s is a misreading', (_, change) => {
    expect(readRightly({ ...right, ...change } as typeof right, taken)).toBe(false);
  });
});

test('a fixed current that trips nothing is written as no trip', () => {
  const taken = fixed(false) as NonNullable<ReturnType<typeof fixed>>;
  const right = { ...typedAsShown(taken, 0), at: 0, wall: 0, hash: '' };
  expect(right).toMatchObject({ value: null, qualifier: '>', tripped: 'none' });
  expect(right.tripMs).toBeUndefined();
  expect([readRightly(right, taken), recordedFully(right, taken)]).toEqual([true, true]);
  expect(readRightly({ ...right, qualifier: null, tripMs: 20 }, taken)).toBe(false);
});

test('a ramp is its current, with the last step’s time where that was written', () => {
  const taken = ramp as NonNullable<typeof ramp>;
  const right = { ...typedAsShown(taken, 0), at: 0, wall: 0, hash: '' };
  const ms = taken.reading.tripMs as number;
  expect(right).toMatchObject({ unit: 'mA' });
  expect(right.tripMs).toBeUndefined();
  expect(readRightly({ ...right, tripMs: ms }, taken)).toBe(true);
  expect(readRightly({ ...right, tripMs: ms + 30 }, taken)).toBe(false);
});

test('the current that was set is no record, and earns no observation', () => {
  const current = done('residual-rated', ({ tripMs: _, ...typed }, { reading }) =>
    typed.tripped === undefined ? typed : { ...typed, value: 1000 * (reading.value ?? 0), unit: 'mA' },
  );
  expect(typedIn(current, 'residual-rated').length).toBeGreaterThan(0);
  const honest = done('residual-rated');
  expect(mark(scenario, current).parts.observation).toBeLessThan(mark(scenario, honest).parts.observation);
});

describe('the limit of the trip time is held against what was written', () => {
  const action = actionNamed('residual-rated') as NonNullable<ReturnType<typeof actionNamed>>;
  // IEC 61008-1, general type at its rating: 300 ms.
  test.each([
    [290, 'within'],
    [299, 'too-close'],
    [301, 'too-close'],
    [340, 'outside'],
  ])('%i ms is %s', (tripMs, right) => {
    const attempt = done('residual-rated', (typed) =>
      typed.tripMs === undefined ? typed : { ...typed, tripMs },
    );
    const run = replay(scenario, attempt);
    const { limits } = truthOf(run, action, lastSitting(run, action.id));
    expect(limits.length).toBeGreaterThan(0);
    expect(new Set(limits.map((limit) => limit.right))).toEqual(new Set([right]));
  });

  test('no trip is outside, and the debrief says so', () => {
    const attempt = done('residual-rated', ({ tripMs, ...typed }) =>
      tripMs === undefined ? typed : { ...typed, qualifier: '>' },
    );
    const told = debriefOf(scenario, attempt).tests.find((one) => one.test === 'residual-rated');
    expect(new Set(told?.limits.map((limit) => limit.right))).toEqual(new Set(['outside']));
  });
});
