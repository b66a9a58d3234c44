// Equal variants: the same cause on other figures, made again from the word and the label, and proved to be equal.

import { expect, test } from 'vitest';
import { mark } from '../../src/attempt/marks/mark.ts';
import type { Attempt } from '../../src/attempt/record/attempt.ts';
import { startRun } from '../../src/attempt/record/run.ts';
import { toItsEnd } from '../../src/bench/toItsEnd.ts';
import { Copies, collecting } from '../../src/desk/collect.ts';
import { labelsOf } from '../../src/desk/giving.ts';
import { variantFor, variantOf } from '../../src/desk/variantOf.ts';
import { areEqual, provingVariants, weighed } from '../../src/desk/variants.ts';
import { fairnessOf } from '../../src/fairness/fairness.ts';
import { readScenario } from '../../src/scenario/readScenario.ts';
import type { Scenario } from '../../src/scenario/scenario.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';
import { faultlessAttempt } from '../helpers/trainee.ts';
import { givingOf, readGiving, SHIPPED } from './helpers.ts';

const dyers = scenarioNamed('find-dyers-row').file as object;
const read = (file: object): Scenario => {
  const one = readScenario(file);
  if (!one.ok) throw new Error('not read');
  return one.scenario;
};

test('is another site with the same papers, cause and tests', () => {
  const one = read(variantOf(dyers, 41));
  const parent = read(dyers);
  expect(one.site).not.toEqual(parent.site);
  expect({ ...one, site: null, seed: 0 }).toEqual({ ...parent, site: null, seed: 0 });
  expect(variantOf(dyers, 41)).toEqual(variantOf(dyers, 41));
});

test('every job that ships has variants that can be read', () => {
  for (const file of SHIPPED)
    for (const seed of [1, 2, 3]) expect(() => read(variantOf(file, seed))).not.toThrow();
});

test('who gets which goes by word and label, however these are typed, and all are given out', () => {
  expect(variantFor('heron-42', 'ash-07', 4)).toBe(variantFor(' Heron-42', 'ASH-07 ', 4));
  const got = Array.from({ length: 40 }, (_, i) => variantFor('heron-42', `ash-${i}`, 4));
  expect(new Set(got).size).toBe(4);
});

test('those that are proved are equal by another weighing, and collecting makes each again', () => {
  const seeds = toItsEnd(provingVariants([dyers], 'heron-42', 1));
  expect(seeds).toHaveLength(1);
  const [seed = 0] = seeds;
  const own = weighed(fairnessOf(read(dyers)));
  expect(areEqual(own, weighed(fairnessOf(read(variantOf(dyers, seed)))))).toBe(true);

  const giving = givingOf([dyers], { variants: [seed, seed + 1] });
  const given = readGiving(giving);
  const copies = new Copies([given], SHIPPED);
  for (const label of ['ash-07', 'elm-19', 'oak-03']) {
    const at = variantFor(giving.word, label, 2);
    const file = variantOf({ ...dyers, support: 'practice' }, giving.variants[at] as number);
    const scenario = read(file);
    const worked = faultlessAttempt(scenario, file);
    const { entries: _, ...bare } = startRun(scenario, file, { ...labelsOf(giving), trainee: label }).attempt;
    const attempt = { ...bare, entries: worked.entries } as Attempt;
    const row = toItsEnd(collecting({ name: label, text: JSON.stringify(attempt) }, copies));
    expect(row).toMatchObject({
      kind: 'marked',
      variant: at,
      marks: { total: mark(scenario, attempt).total },
    });
    expect(row.kind === 'marked' ? row.looks.map(({ id }) => id) : []).not.toContain('job-differs');
  }
});

test('a job that is not equal is told: other tests, more causes left, or a fifth more minutes', () => {
  const one = { revealedBy: ['loop'], left: 1, minutes: 10, solvable: true };
  expect(areEqual(one, { ...one, minutes: 11 })).toBe(true);
  expect(areEqual(one, { ...one, minutes: 12 })).toBe(false);
  expect(areEqual(one, { ...one, left: 2 })).toBe(false);
  expect(areEqual(one, { ...one, revealedBy: ['state-c'] })).toBe(false);
  expect(areEqual(one, { ...one, revealedBy: ['loop', 'state-c'] })).toBe(false);
});
