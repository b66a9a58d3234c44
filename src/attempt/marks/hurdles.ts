/**
 * What has to be reached by itself to pass, whatever the total: below any of these the rest does not make up for it.
 * A part that a scenario does not weigh is no hurdle there.
 */
import type { PartName } from '../../scenario/tasks.ts';
import type { JudgementMark } from './judgement.ts';

export const HURDLES = ['verdict', 'judgement', 'diagnosis', 'prediction', 'observation'] as const;
export type Hurdle = (typeof HURDLES)[number];

/** Shares that are enough, 0 to 1; a rounding in the last digit of a sum is none too few. */
const ROUNDING = 1e-9;
const JUDGEMENT = 0.6 - ROUNDING;
const HALF = 0.5 - ROUNDING;

export interface Reached {
  readonly isRightVerdict: boolean;
  /** Share of each part, 0 to 1, before it is weighed. */
  readonly shares: Readonly<Record<PartName, number>>;
  /** Share of the readings with a figure that was typed as shown, 0 to 1. */
  readonly ofFigures: number;
  readonly judgement: Pick<JudgementMark, 'rejected' | 'leastOfLines'>;
  /** What each part is out of; nothing for predictions that were given. */
  readonly weights: Readonly<Record<PartName, number>>;
}

/** Those not met, in one order. */
export function hurdlesNotMet({
  isRightVerdict,
  shares,
  ofFigures,
  judgement,
  weights,
}: Reached): readonly Hurdle[] {
  const isMet: Readonly<Record<Hurdle, boolean>> = {
    verdict: isRightVerdict,
    // One answer to every line gets near to 60 % of a sound unit: each kind has to be seen.
    judgement: shares.judgement >= JUDGEMENT && judgement.rejected >= HALF && judgement.leastOfLines >= HALF,
    diagnosis: shares.diagnosis >= HALF,
    prediction: shares.prediction >= HALF,
    observation: shares.observation >= HALF && ofFigures >= HALF,
  };
  return HURDLES.filter((name) => !isMet[name] && (name === 'verdict' || weights[name] > 0));
}
