/**
 * What each step ruled out: never what is really wrong, never the other way up, and in a few cases worked out by hand
 * exactly what it should; and which reading would have told most.
 */
import { describe, expect, test } from 'vitest';
import { alikeReadings } from '../../src/attempt/marks/telling.ts';
import type { Elimination } from '../../src/attempt/opened/elimination.ts';
import { candidatesOn, eliminate, eliminating, seekingUndone } from '../../src/attempt/opened/elimination.ts';
import { lockstep } from '../../src/attempt/opened/twin.ts';
import type { OperationInput } from '../../src/bench/operation.ts';
import type { Reading } from '../../src/bench/reading.ts';
import { toItsEnd } from '../../src/bench/toItsEnd.ts';
import { lookingUp } from '../../src/fairness/dictionary.ts';
import { ownRowOf } from '../../src/fairness/row.ts';
import { possibleAtFirst } from '../../src/fairness/told.ts';
import type { FaultChoice } from '../../src/faults/catalogue.ts';
import { CATALOGUE } from '../../src/faults/catalogue.ts';
import { FAMILIES } from '../../src/faults/families.ts';
import type { Scenario } from '../../src/scenario/scenario.ts';
import { beginningOf, papersOf } from '../../src/scenario/scenario.ts';
import { scenarioOn } from '../faults/installations.ts';
import { TELLS } from '../faults/tells.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';
import { faultlessAttempt } from '../helpers/trainee.ts';
import { logOf, logOfActions } from './logs.ts';

const leftAtEnd = ({ candidates }: Elimination): readonly string[] =>
  candidates.filter(({ ruledOutAt }) => ruledOutAt === null).map(({ causes }) => causes.join(' '));
/** No cause: nothing is wrong. */
const NOTHING_WRONG = '';

function neverGrows({ left }: Elimination): void {
  for (const [i, count] of left.entries())
    if (i > 0) expect(count, `after step ${i}`).toBeLessThanOrEqual(left[i - 1] as number);
}

const faults = CATALOGUE.filter(({ kind }) => kind === 'fault');
/** Two of every family, from both ends of its file. */
const SAMPLE = FAMILIES.flatMap((family) => {
  const own = faults.filter((fault) => fault.family === family);
  return [0, own.length - 1].map((i) => (own[i] as (typeof own)[number]).id);
});

function ofFault(id: string) {
  const entry = faults.find((fault) => fault.id === id);
  const [on, by] = TELLS[id] as (typeof TELLS)[string];
  const values = Object.fromEntries((entry?.parameters ?? []).map((p) => [p.name, p.default]));
  const scenario = scenarioOn(on, [{ fault: id, values }]);
  const both = lockstep(scenario, logOfActions(scenario, [typeof by === 'string' ? by : by[1]]));
  return { both, told: eliminate(both) };
}

describe('what is really wrong is never ruled out, and the count never grows', () => {
  test.each(SAMPLE)('%s, by the test that finds it', (id) => {
    const { both, told } = ofFault(id);
    expect(told.left).toHaveLength(both.steps.length);
    expect(told.left[0]).toBe(told.candidates.length);
    expect(told.candidates.find(({ isTrue }) => isTrue)).toMatchObject({
      causes: [id],
      ruledOutAt: null,
    });
    neverGrows(told);
    // The test that finds it tells it from a sound unit.
    expect(leftAtEnd(told)).not.toContain(NOTHING_WRONG);
    expect(told.left.at(-1)).toBe(leftAtEnd(told).length);
    for (const { step, left } of told.better) {
      expect(left).toBeGreaterThan(0);
      expect(left).toBeLessThan(told.left[step] as number);
    }
  });

  test.each(['harbour-mews', 'orchard-lane', 'bakery-lane'])(
    '%s, the whole verification',
    { timeout: 120_000 },
    (id) => {
      const { scenario, file } = scenarioNamed(id);
      const told = eliminate(lockstep(scenario, faultlessAttempt(scenario, file)));
      neverGrows(told);
      const left = leftAtEnd(told);
      if (id === 'harbour-mews') expect(left).toEqual([NOTHING_WRONG]);
      // Handed over: others did all but the residual tests.
      else if (id === 'bakery-lane') expect(left).toEqual(['direct-one-way']);
      // A detector that is dead, one that is late and one that needs more all fail the same ramp.
      else expect([...left].sort()).toEqual(['direct-detector-dead', 'direct-slow', 'direct-trips-late']);
    },
  );
});

describe('what was handed over as done rules out beforehand what would have read otherwise on its sheet', () => {
  // By hand: others measured the loop, in which a poor joint of the protective conductor stands, and looked at nothing
  // that shows whether the unit watches for d.c.
  const scenario: Scenario = {
    ...scenarioOn('home'),
    allowed: ['dc-ramp'],
    handover: { by: 'others', done: ['loop'], left: [] },
  };
  const told = eliminate(lockstep(scenario, logOf('dc-ramp', [])));
  const ruledOutAt = (...causes: readonly string[]) =>
    told.candidates.find((one) => one.causes.join() === causes.join())?.ruledOutAt;

  test('a cause that the sheet would have shown, and no other', () => {
    expect(ruledOutAt('pe-joint')).toBe(0);
    expect(ruledOutAt('direct-detector-dead')).toBeNull();
    expect(ruledOutAt()).toBeNull();
    expect(told.left).toEqual([leftAtEnd(told).length]);
    expect(told.left[0]).toBeLessThan(told.candidates.length);
  });

  test('the same whether or not such a bench was carried out before', () => {
    const [dead] = told.candidates.filter(({ causes }) => causes[0] === 'pe-joint');
    beginningOf(scenario, dead?.faults);
    expect(eliminate(lockstep(scenario, logOf('dc-ramp', [])))).toEqual(told);
  });

  test('what is left is what the dictionary leaves possible by the same sheet', () => {
    const { rows } = toItsEnd(lookingUp(scenario, { usual: true }));
    const possible = possibleAtFirst(ownRowOf(rows), rows).map(({ cause }) => cause.causes.join(' '));
    const papers = JSON.stringify(papersOf(scenario));
    const sheetTells = told.candidates.filter(({ ruledOutAt: at }) => at === 0);
    for (const { causes } of sheetTells) expect(possible).not.toContain(causes.join(' '));
    // Of what has the same papers; where those tell, the dictionary needs no sheet.
    const samePapers = told.candidates.filter(
      ({ faults: own, ruledOutAt: at }) => at === null && JSON.stringify(papersOf(scenario, own)) === papers,
    );
    expect(sheetTells.length).toBeGreaterThan(0);
    expect(samePapers.length).toBeGreaterThan(0);
    for (const { causes } of samePapers) expect(possible).toContain(causes.join(' '));
  });
});

describe('candidates', () => {
  test('the unit’s own as it is, nothing wrong, each other cause once, as far as it can be here', () => {
    const own: FaultChoice = { fault: 'pe-joint', values: { ohms: 7 } };
    const [first, second, ...others] = candidatesOn(scenarioOn('home', [own]));
    expect(first).toEqual({ causes: ['pe-joint'], faults: [own], isTrue: true });
    expect(second).toEqual({ causes: [], faults: [], isTrue: false });
    const ids = others.map(({ faults: [choice] }) => choice?.fault);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids).not.toContain('pe-joint');
    expect(ids).not.toContain('coding-ignored');
    expect(ids).toContain('tether-coding-wrong');
  });

  test('of a sound unit nothing wrong stands first; of two faults both together', () => {
    expect(candidatesOn(scenarioOn('home'))[0]?.causes).toEqual([]);
    const two = ['residual-dead', 'gland-loose'].map((fault) => ({ fault, values: {} }));
    const [both, ...others] = candidatesOn(scenarioOn('home', two));
    expect(both?.faults).toEqual(two);
    expect(others.map(({ causes }) => causes)).toContainEqual(['gland-loose']);
  });
});

describe('what would have told most', () => {
  const L1_N: OperationInput = { op: 'measure', quantity: 'voltage', between: ['outlet.L1', 'outlet.N'] };

  test('a welded line behind an open neutral: line to PE, not line to neutral', () => {
    const both = lockstep(
      {
        ...scenarioOn('home', [{ fault: 'line-pole-welded', values: {} }]),
        allowed: ['state-a', 'state-b', 'isolate'],
      },
      logOf('state-a', [{ op: 'wait', seconds: 2 }, L1_N]),
    );
    const told = eliminate(both);
    // L–N reads nothing on this unit as on a sound one.
    expect(leftAtEnd(told)).toContain(NOTHING_WRONG);
    expect(told.better).toHaveLength(1);
    expect(told.better[0]).toMatchObject({
      step: 2,
      test: 'state-a',
      left: 1,
      measurement: { quantity: 'voltage', between: ['outlet.L1', 'outlet.PE'] },
    });
    // Of the tests allowed and not done, state B reads the line against PE; isolating tells nothing of it.
    expect(toItsEnd(seekingUndone(both, told)).best).toMatchObject({ test: 'state-b' });
    expect(
      toItsEnd(seekingUndone(both, { ...told, candidates: told.candidates.slice(0, 1) })).best,
    ).toBeNull();
  });

  test('nobody is told of a dead test where nothing was proved dead', () => {
    const told = eliminate(
      lockstep(
        scenarioOn('home', [{ fault: 'pe-joint', values: { ohms: 5 } }]),
        logOf('pe-circuit', [
          { op: 'isolate' },
          { op: 'measure', quantity: 'voltage', between: ['origin.L1', 'origin.N'] },
        ]),
      ),
    );
    expect(told.better).toEqual([]);
  });
});

test('it is done in small pieces that say how far they are', () => {
  const both = lockstep(scenarioOn('home'), logOfActions(scenarioOn('home'), ['isolate']));
  const work = eliminating(both);
  const told: number[] = [];
  for (let next = work.next(); next.done !== true; next = work.next()) told.push(next.value.done);
  const operations = both.steps.length - 1;
  expect(told.length).toBeGreaterThan(operations);
  expect(told).toEqual([...told].sort((x, y) => x - y));
});

describe('readings that cannot be told apart', () => {
  const ohms = (value: number | null, more: Partial<Reading> = {}): Reading => ({
    quantity: 'continuity',
    unit: 'Ω',
    value,
    uncertainty: value === null ? null : 0.05,
    qualifier: null,
    at: 0,
    ...more,
  });
  test.each([
    ['within both uncertainties', ohms(1), ohms(1.1), true],
    ['beyond both', ohms(1), ohms(1.11), false],
    ['over the range both', ohms(null, { qualifier: '>' }), ohms(null, { qualifier: '>' }), true],
    ['one over the range', ohms(null, { qualifier: '>' }), ohms(1), false],
    ['what tripped is other', ohms(1, { trippedWhat: 'unit' }), ohms(1, { trippedWhat: 'both' }), false],
    ['a time of 4 ms more', ohms(1, { tripMs: 40 }), ohms(1, { tripMs: 44 }), true],
    ['a time of 5 ms more', ohms(1, { tripMs: 40 }), ohms(1, { tripMs: 45 }), false],
    ['half a per cent of duty', ohms(1, { duty: 0.5 }), ohms(1, { duty: 0.505 }), false],
    [
      'refused for a volt more or less',
      ohms(null, { qualifier: 'unable', reason: { id: 'voltage-on-leads', volts: 235 } }),
      ohms(null, { qualifier: 'unable', reason: { id: 'voltage-on-leads', volts: 236 } }),
      true,
    ],
  ])('%s', (_, x, y, alike) => expect(alikeReadings(x, y)).toBe(alike));
});
