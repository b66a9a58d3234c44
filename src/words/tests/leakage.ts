/** The words of the tests of the aim `leakage`, which come together. */
import { dcRamp } from '../actions/dcRamp.ts';
import { dcStep } from '../actions/dcStep.ts';
import { halfWave } from '../actions/halfWave.ts';
import { residualAgain } from '../actions/residualAgain.ts';
import { residualFive } from '../actions/residualFive.ts';
import { residualHalf } from '../actions/residualHalf.ts';
import { residualOrigin } from '../actions/residualOrigin.ts';
import { residualRamp } from '../actions/residualRamp.ts';
import { residualRated } from '../actions/residualRated.ts';
import type { ActionWords } from '../actionWords.ts';

export const leakage: Readonly<Record<string, ActionWords>> = {
  'residual-origin': residualOrigin,
  'residual-half': residualHalf,
  'residual-rated': residualRated,
  'residual-five': residualFive,
  'residual-ramp': residualRamp,
  'half-wave': halfWave,
  'dc-ramp': dcRamp,
  'dc-step': dcStep,
  'residual-again': residualAgain,
};
