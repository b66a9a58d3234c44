/** Jobs that are drawn can be solved, are the same for the same seed, and a call that does not fit says why. */
import { describe, expect, test } from 'vitest';
import { make } from '../../src/cli/make.ts';
import { fairnessOf } from '../../src/fairness/fairness.ts';
import { makeJob } from '../../src/fairness/make.ts';
import { minutesOf } from '../../src/fairness/minutes.ts';
import { entryNamed } from '../../src/faults/catalogue.ts';
import { readScenario } from '../../src/scenario/readScenario.ts';
import { allowedActions, papersOf } from '../../src/scenario/scenario.ts';
import { verify } from '../../src/scenario/verify.ts';
import { madeJobWords } from '../../src/words/madeJobs.ts';

const SWITCHING = { level: 1, seed: 11, families: ['switching'], minutes: 12 } as const;

describe('a job of a family', () => {
  const file = makeJob(SWITCHING, madeJobWords);
  const read = readScenario(file);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const { scenario } = read;

  test('has a fault of it, which its few tests show within the minutes', () => {
    expect(scenario.faults.map(({ fault }) => entryNamed(fault)?.family)).toEqual(['switching']);
    expect(verify(scenario).conclusion).toBe('not sound');
    const tests = allowedActions(scenario);
    expect(tests.length).toBeGreaterThanOrEqual(4);
    expect(tests.length).toBeLessThanOrEqual(8);
    expect(minutesOf(tests, papersOf(scenario))).toBeLessThanOrEqual(SWITCHING.minutes);
  });

  test('is the same for the same seed', () => {
    expect(JSON.stringify(makeJob(SWITCHING, madeJobWords))).toBe(JSON.stringify(file));
  });

  test('can be solved', () => {
    expect(fairnessOf(scenario, { only: [] }).solvable).toBe(true);
  });

  test('is told in words that do not depend on what is wrong', () => {
    const { title, brief } = scenario;
    const others = madeJobWords('single-pme', SWITCHING.seed);
    expect(title).toBe(others.title);
    expect(brief).not.toContain(scenario.faults[0]?.fault);
  });
});

describe('the verb', () => {
  test('says so and ends with 1 where no job can be drawn', () => {
    const { text, errors, exit } = make({
      '--level': ['1'],
      '--seed': ['4'],
      '--families': ['residual-direct'],
      '--minutes': ['3'],
    });
    expect(text).toBe('');
    expect(exit).toBe(1);
    expect(errors?.join()).toMatch(/^make: no job was drawn .*level 1, seed 4, families residual-direct/);
  });

  test.each([
    [{ '--seed': ['1'] }, /--level is missing/],
    [{ '--level': ['4'], '--seed': ['1'] }, /--level "4" does not fit: a whole number from 1 to 3/],
    [{ '--level': ['1'], '--seed': ['1.5'] }, /--seed "1.5" does not fit/],
    [{ '--level': ['1'], '--seed': ['1'], '--minutes': ['2'] }, /--minutes "2" does not fit/],
    [{ '--level': ['1'], '--seed': ['1'], '--families': ['swiching'] }, /no family .*"swiching".*switching/],
  ])('refuses %j', (lists, why) => {
    expect(() => make(lists)).toThrow(why);
  });
});
