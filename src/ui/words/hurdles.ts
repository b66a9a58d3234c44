/** What was still wanting to pass, in words. */
import type { Hurdle } from '../../attempt/marks/hurdles.ts';

export const HURDLE_WORDS: Readonly<Record<Hurdle, string>> = {
  verdict: 'the verdict is not the right one',
  judgement:
    'judgement is under 60 %, or half of what was wrong, or of what the unit did or did not do, was passed over',
  diagnosis: 'diagnosis is under half',
  prediction: 'prediction is under half, with guessing taken off',
  observation: 'fewer than half of the figures are typed as shown',
};
