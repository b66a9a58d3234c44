/** Sound units that were once called faulty, and a faulty one that was energised: each by one configuration. */
import { expect, test } from 'vitest';
import { verify } from '../../src/scenario/verify.ts';
import { SHEET, type Wanted } from '../bench/build.ts';
import { scenarioOf } from '../scenario/build.ts';

/** On a PME earth with the measure that it needs. */
const wrongIn = ({ sheet, ...wanted }: Wanted): readonly string[] =>
  verify(scenarioOf({ ...wanted, sheet: { openPen: 'other', ...sheet } })).actions.flatMap(
    ({ action, expectations, limits, unsafe }) => [
      ...expectations
        .filter(({ finding }) => finding !== 'met')
        .map(({ expectation, finding }) => `${action.id}/${expectation.id} ${finding}`),
      ...limits.filter(({ pass }) => !pass).map(({ limit }) => `${action.id} limit ${limit.id}`),
      ...unsafe.map(({ id }) => `${action.id} unsafe ${id}`),
    ],
  );

test('a trip that only a return of supply clears is cleared between the tests', () => {
  expect(
    wrongIn({ sheet: { clearsBy: { ...SHEET.clearsBy, residual: 'supply', direct: 'supply' } } }),
  ).toEqual([]);
});

test('a declared bleed across the open poles is read, and is neither low insulation nor supply', () => {
  expect(wrongIn({ sheet: { poleBleed: 200_000 }, site: { voltage: 252 } })).toEqual([]);
});

test('a unit that always looks at the diode has stopped its offer before the low half can be read', () => {
  expect(wrongIn({ sheet: { diodeCheck: 'always' } })).toEqual([]);
});

test('declared steelwork in parallel with the protective conductor lowers what it reads', () => {
  const circuit = { length: 60, protectiveArea: 2.5, parallelEarth: 0.5 } as const;
  // At 20 A so long a run loses no more than 5 %.
  expect(wrongIn({ site: { circuit }, sheet: { setCurrent: 20 } })).toEqual([]);
});

test('insulation that shows a little under its least value is not energised', () => {
  const ohms = 900_000;
  for (const seed of [1, 2, 3, 4, 5, 6, 7, 8, 9]) {
    const { actions, stopped } = verify(
      scenarioOf({ seed, faults: [{ fault: 'line-pe-insulation-low', values: { ohms } }] }),
    );
    expect(stopped?.action, `seed ${seed}`).toBe('insulation-circuit');
    expect(actions.flatMap(({ unsafe }) => unsafe)).toEqual([]);
  }
});

test('a loop tester at the low end of its error still covers the true value with its uncertainty', () => {
  const residualDevice = { type: 'A', rated: 0.1, delay: 'S', poles: 2 } as const;
  for (let seed = 0; seed < 60; seed++) {
    const wrong = wrongIn({
      seed,
      site: { earthing: 'TT', electrodeResistance: 158, circuit: { residualDevice } },
    });
    expect(wrong, `seed ${seed}`).toEqual([]);
  }
});
