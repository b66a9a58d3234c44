/** The lines of the tests of the aim `leakage`, which come together. */
import { dcRamp } from '../lines/dcRamp.ts';
import { dcStep } from '../lines/dcStep.ts';
import { halfWave } from '../lines/halfWave.ts';
import { residualAgain } from '../lines/residualAgain.ts';
import { residualFive } from '../lines/residualFive.ts';
import { residualHalf } from '../lines/residualHalf.ts';
import { residualOrigin } from '../lines/residualOrigin.ts';
import { residualRamp } from '../lines/residualRamp.ts';
import { residualRated } from '../lines/residualRated.ts';
import type { TestLines } from '../testAction.ts';

export const leakage: Readonly<Record<string, TestLines>> = {
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
