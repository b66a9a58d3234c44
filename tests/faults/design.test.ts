/**
 * Wrong designs: they stand in the papers, the correct twin has a right one, nobody puts one right at the bench, and
 * nothing else reads like one. And the breaker of a slower type, which is a fault only where its loop is too high for it.
 */
import { describe, expect, test } from 'vitest';
import { NOTHING } from '../../src/attempt/marks/diagnosis.ts';
import { mark } from '../../src/attempt/marks/mark.ts';
import { rightConclusion } from '../../src/attempt/marks/worked.ts';
import { candidatesOn } from '../../src/attempt/opened/elimination.ts';
import { causesOf } from '../../src/attempt/opened/roots.ts';
import { whyImpossible, withFaults } from '../../src/faults/catalogue.ts';
import { designFaults } from '../../src/faults/design.ts';
import { supplyWiringFaults } from '../../src/faults/supplyWiring.ts';
import { readScenario } from '../../src/scenario/readScenario.ts';
import { benchOf, papersOf, soundPartsOf } from '../../src/scenario/scenario.ts';
import { verify } from '../../src/scenario/verify.ts';
import { benchWith, doing, MAKE_DEAD, type Wanted } from '../bench/build.ts';
import { attemptOf } from '../helpers/person.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';
import { scenarioOf } from '../scenario/build.ts';
import { scenarioOn } from './installations.ts';

const chosen = designFaults.map(({ id, parameters }) => ({
  fault: id,
  values: Object.fromEntries(parameters.map((p) => [p.name, p.default])),
}));

/** Where it can be: a limit of the service is kept by a unit with a sensor alone. */
const placeOf = (fault: string) =>
  fault === 'service-limit-above-rating'
    ? ({ at: 'pair', job: 'granary-mews' } as const)
    : ({ at: 'home', job: 'harbour-mews' } as const);

describe.each(chosen)('$fault', (choice) => {
  const { at, job } = placeOf(choice.fault);
  const scenario = scenarioOn(at, [choice]);

  test('the unit as it is, is not sound; with no fault the papers are right and it is', () => {
    expect(verify(scenario).conclusion).toBe('not sound');
    expect(verify(scenario, { faults: [] }).conclusion).toBe('sound');
    expect(papersOf(scenario, [])).toEqual(papersOf(scenarioOn(at)));
  });

  test('is built as it is told, told once or twice', () => {
    const { site, sheet } = papersOf(scenario);
    const { installation } = benchOf(scenario);
    expect(installation.site).toEqual(site);
    expect(installation.design.sheet).toEqual(sheet);
    expect(papersOf(scenario, [choice, choice])).toEqual(papersOf(scenario));
    // Every part has the resistance that the papers make of it.
    for (const part of benchOf(scenario).installation.parts) expect(part.resistance, part.id).not.toBeNaN();
  });

  test('is a cause with its place', () => {
    const twin = soundPartsOf(scenario);
    const causes = causesOf(withFaults(twin, [choice]), twin, [choice]);
    expect(causes.length).toBeGreaterThan(0);
    expect(causes.every(({ fault }) => fault?.id === choice.fault)).toBe(true);
  });

  test('cannot be put right at the bench, whether it is there or not', () => {
    for (const faults of [[choice], []]) {
      const world = benchWith({ faults });
      const outcomes = doing(world, ...MAKE_DEAD, { op: 'put-right', what: choice.fault });
      expect(outcomes.at(-1)?.refused).toEqual({
        id: 'never-put-right',
        why: 'designers-to-alter',
      });
      expect(world.faults).toEqual(faults);
    }
  });

  test('nothing else is named rightly in its place', () => {
    const file = { ...(scenarioNamed(job).file as object), faults: [{ fault: choice.fault }] };
    const read = readScenario(file);
    if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join('\n'));
    const named = (cause: string) =>
      mark(
        read.scenario,
        attemptOf(read.scenario, file, {
          leavesOut: ({ id }) => id !== 'papers',
          conclude: (run) => ({ ...rightConclusion(run), cause, family: null }),
        }),
      ).parts.diagnosis;
    expect(named(choice.fault)).toBe(20);
    expect(named(NOTHING)).toBe(0);
    expect(named('labels-missing')).toBe(0);
    const other = chosen.find(({ fault }) => fault !== choice.fault)?.fault ?? '';
    expect(named(other)).toBe(0);
  });

  test('every other cause that is still possible is one beside it, and without it none has it', () => {
    const others = candidatesOn(scenario).slice(1);
    expect(others.length).toBeGreaterThan(40);
    for (const { faults } of others) expect(faults[0]).toEqual(choice);
    for (const { faults } of candidatesOn(scenarioOn(at)))
      expect(faults.some(({ fault }) => fault === choice.fault)).toBe(false);
  });
});

const tooSlow = supplyWiringFaults.find(({ id }) => id === 'breaker-too-slow');
const typeOn = (site: NonNullable<Wanted['site']>): string | null => {
  const { site: told, unit: sheet } = scenarioOf({ site });
  if (tooSlow === undefined) throw new Error('no such fault');
  if (whyImpossible(tooSlow, { site: told, sheet }, {}) !== null) return null;
  const world = benchWith({ site, faults: [{ fault: tooSlow.id, values: {} }] });
  return world.installation.site.circuit.breaker.type;
};

describe('a breaker of a slower type is a fault where its loop, measured, is too high for it', () => {
  // BS 7671:2018+A2:2022 Table 41.3 by 0.8: C40 0.44 Ω, D40 0.22 Ω. The circuit is 2 × 18 m × 3.08 mΩ/m = 0.11 Ω.
  test.each([
    [{ loopImpedance: 0.5 }, 'C'],
    [{ loopImpedance: 0.3 }, 'D'],
    [{ loopImpedance: 0.1 }, null],
    [{ loopImpedance: 0.5, circuit: { faultProtection: 'residual' } }, null],
    [{ earthing: 'TT', electrodeResistance: 80, loopImpedance: 80 }, null],
  ] satisfies [NonNullable<Wanted['site']>, string | null][])('%o: %s', (site, type) => {
    expect(typeOn(site)).toBe(type);
  });
});
