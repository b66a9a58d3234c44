/** Prediction is corrected for chance: what guessing would get is nobody's. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { correctedForChance } from '../../../src/attempt/marks/prediction.ts';
import type { Answer } from '../../../src/attempt/record/attempt.ts';
import { ANSWERS } from '../../../src/attempt/record/attempt.ts';

const rights = fc.array(fc.constantFrom<Answer>(...ANSWERS), { minLength: 2, maxLength: 60 });
const isMixed = (all: readonly Answer[]): boolean => new Set(all).size > 1;

test('one answer to everything earns nothing, whatever is right', () => {
  fc.assert(
    fc.property(rights.filter(isMixed), fc.constantFrom<Answer>(...ANSWERS), (all, said) => {
      expect(correctedForChance(all.map((right) => ({ right, said })))).toBe(0);
    }),
  );
});

test('all right earns all, nothing said nothing, and half of it half', () => {
  fc.assert(
    fc.property(rights, (all) => {
      const right = all.map((one) => ({ right: one, said: one }));
      const unsaid = all.map((one) => ({ right: one, said: undefined }));
      expect(correctedForChance(right)).toBeCloseTo(1, 9);
      expect(correctedForChance(unsaid)).toBe(0);
      expect(correctedForChance([...right, ...unsaid])).toBeCloseTo(0.5, 9);
    }),
  );
});

test('each kind of answer weighs the same, however many lines it has', () => {
  const should = Array.from({ length: 9 }, () => ({ right: 'should' as const, said: 'should' as const }));
  const not = (said: Answer) => ({ right: 'should-not' as const, said });
  // 9 of 9 and 0 of 1: as good as a coin; 9 of 9 and 1 of 2: half way from there.
  expect(correctedForChance([...should, not('should')])).toBe(0);
  expect(correctedForChance([...should, not('should'), not('should-not')])).toBeCloseTo(0.5, 9);
});
