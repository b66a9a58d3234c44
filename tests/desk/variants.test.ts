// Equal variants: the same cause on other figures, made again from the word and the label, and proved to be equal.

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mark } from '../../src/attempt/marks/mark.ts';
import type { Attempt } from '../../src/attempt/record/attempt.ts';
import { startRun } from '../../src/attempt/record/run.ts';
import { toItsEnd } from '../../src/bench/toItsEnd.ts';
import { Copies, collecting } from '../../src/desk/collect.ts';
import { forLearners, givingText, labelsOf } from '../../src/desk/giving.ts';
import { plainWord } from '../../src/desk/heldBy.ts';
import {
  allDealt,
  isListed,
  nthVariant,
  sharing,
  variantFor,
  variantFrom,
  variantOf,
} from '../../src/desk/variantOf.ts';
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
  const variants = [0, 1, 2, 3];
  expect(variantFor({ word: 'heron-42', variants }, 'ash-07')).toBe(
    variantFor({ word: ' Heron-42', variants }, 'ASH-07 '),
  );
  const got = Array.from({ length: 40 }, (_, i) => variantFor({ word: 'heron-42', variants }, `ash-${i}`));
  expect(new Set(got).size).toBe(4);
});

test('listed labels get another one each, whatever their order, and where they are more than the variants, in turn', () => {
  fc.assert(
    fc.property(
      fc.uniqueArray(fc.string({ minLength: 1, maxLength: 20 }), { selector: plainWord, maxLength: 40 }),
      fc.integer({ min: 1, max: 40 }),
      (labels, count) => {
        const variants = Array.from({ length: count }, (_, n) => n);
        const dealing = { word: 'heron-42', variants, dealt: allDealt('heron-42', labels) };
        const got = labels.map((label) => variantFor(dealing, label));
        const each = variants.map((n) => got.filter((one) => one === n).length);
        expect(Math.max(...each) - Math.min(...each)).toBeLessThanOrEqual(1);
        expect(allDealt('heron-42', labels.toReversed())).toEqual(dealing.dealt);
        for (const label of labels) expect(isListed(dealing, ` ${label} `)).toBe(true);
      },
    ),
  );
});

test('a listed label cannot be read in what learners open, and one that is not listed is told', () => {
  const giving = givingOf([dyers], {
    variants: [0, 1],
    dealt: [...allDealt('heron-42', ['ash-07', 'elm-19'])],
  });
  expect(givingText(forLearners({ ...giving, tutor: { labels: ['ash-07'], notes: {} } }))).not.toContain(
    'ash-07',
  );
  const scenario = read(variantFrom({ ...dyers, support: 'practice' }, giving, 'oak-03'));
  expect(scenario.id).toBe(read(dyers).id);
  const rows = ['ash-07', 'oak-03'].map((label) => {
    const file = variantFrom({ ...dyers, support: 'practice' }, giving, label);
    const { attempt } = startRun(read(file), file, { ...labelsOf(giving), trainee: label });
    return toItsEnd(
      collecting({ name: label, text: JSON.stringify(attempt) }, new Copies([readGiving(giving)], SHIPPED)),
    );
  });
  const looks = rows.map((row) => (row.kind === 'marked' ? row.looks.map(({ id }) => id) : []));
  expect(looks[0]).not.toContain('not-listed');
  expect(looks[1]).toContain('not-listed');
});

test('how many share theirs by chance, held against the matching of 30 in 30 (a binomial, by hand)', () => {
  // 1 − (29/30)^29 = 0.6259 of each of 30.
  expect(sharing(30, 30)).toBeCloseTo(18.776, 2);
  expect(sharing(1, 4)).toBe(0);
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
    const at = variantFor(giving, label);
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
