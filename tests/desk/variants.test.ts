// Equal variants: the same cause on other figures, made again from the word and the label, and proved to be equal.

import { expect, test } from 'vitest';
import { mark } from '../../src/attempt/marks/mark.ts';
import type { Attempt } from '../../src/attempt/record/attempt.ts';
import { startRun } from '../../src/attempt/record/run.ts';
import { toItsEnd } from '../../src/bench/toItsEnd.ts';
import { Copies, collecting } from '../../src/desk/collect.ts';
import { labelsOf } from '../../src/desk/giving.ts';
import { nthVariant, variantFor, variantFrom, variantOf } from '../../src/desk/variantOf.ts';
import type { Weight } from '../../src/desk/variants.ts';
import { allEqual, areEqual, weighingVariant, weightOf } from '../../src/desk/variants.ts';
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

/** All but what a variant may change: voltage, resistances of supply and earth, lengths, how bad it is, the seed. */
function bare(file: object): unknown {
  const { site, unit, faults, seed: _, ...rest } = JSON.parse(JSON.stringify(file));
  const { voltage, loopImpedance, neutralImpedance, electrodeResistance, circuit, ...supply } = site;
  const { cable, customerCable, ...make } = unit;
  return {
    ...{ rest, supply, make },
    circuit: { ...circuit, length: 0 },
    cables: [cable, customerCable].map((one) => one && { ...one, length: 0 }),
    faults: faults.map(({ fault, line }: Record<string, unknown>) => [fault, line]),
  };
}

test('is another site and another size of the same cause; papers, cause, place, tests and words are the same', () => {
  for (const file of SHIPPED)
    for (const seed of [41, 42]) {
      const one = variantOf(file, seed) as typeof dyers;
      expect(bare(one)).toEqual(bare(file));
      expect(read(one).site).not.toEqual(read(file).site);
      expect(variantOf(file, seed)).toEqual(one);
    }
  const sizes = [1, 2, 3].map((seed) => read(variantOf(dyers, seed)).faults[0]?.values);
  expect(new Set(sizes.map((one) => JSON.stringify(one))).size).toBe(3);
});

test('a variant follows from the word and its number: another word, other figures', () => {
  const figures = Array.from({ length: 30 }, (_, n) => JSON.stringify(nthVariant(dyers, 'heron-42', n)));
  expect(new Set(figures).size).toBe(30);
  expect(nthVariant(dyers, ' Heron-42 ', 3)).toEqual(nthVariant(dyers, 'heron-42', 3));
  expect(nthVariant(dyers, 'otter-17', 3)).not.toEqual(nthVariant(dyers, 'heron-42', 3));
});

test('every job that ships has variants that can be read', () => {
  for (const file of SHIPPED) expect(() => read(variantOf(file, 1))).not.toThrow();
});

test('who gets which goes by word and label, however these are typed, and all are given out', () => {
  expect(variantFor('heron-42', 'ash-07', 4)).toBe(variantFor(' Heron-42', 'ASH-07 ', 4));
  const got = Array.from({ length: 40 }, (_, i) => variantFor('heron-42', `ash-${i}`, 4));
  expect(new Set(got).size).toBe(4);
});

test('those that are proved are equal by another weighing, and collecting makes each again', () => {
  const own = toItsEnd(weighingVariant([dyers], 'heron-42', null));
  const n = [0, 1, 2, 3].find((n) => allEqual(own, toItsEnd(weighingVariant([dyers], 'heron-42', n)))) ?? 0;
  const [one, other] = [dyers, nthVariant(dyers, 'heron-42', n)].map((file) =>
    weightOf(fairnessOf(read(file))),
  );
  expect(own).toEqual([one]);
  expect(areEqual(one as Weight, other as Weight)).toBe(true);

  const giving = givingOf([dyers], { variants: [n, n + 1] });
  const given = readGiving(giving);
  const copies = new Copies([given], SHIPPED);
  for (const label of ['ash-07', 'elm-19', 'oak-03']) {
    const at = variantFor(giving.word, label, 2);
    const file = nthVariant({ ...dyers, support: 'practice' }, giving.word, giving.variants[at] as number);
    expect(variantFrom({ ...dyers, support: 'practice' }, giving, label)).toEqual(file);
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
  expect(allEqual([one], null)).toBe(false);
  expect(allEqual([one, one], [one, { ...one, left: 0 }])).toBe(false);
  expect(areEqual(one, { ...one, left: 2 })).toBe(false);
  expect(areEqual(one, { ...one, revealedBy: ['state-c'] })).toBe(false);
  expect(areEqual(one, { ...one, revealedBy: ['loop', 'state-c'] })).toBe(false);
});
