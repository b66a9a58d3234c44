/**
 * The 78 published check values, each once. The laws answer all of them, some only by the limit; what the bench shows
 * of each is in tests/bench.
 */

import type { CheckValue } from './checkValueRow.ts';
import { INSTALLATION_CHECK_VALUES } from './installationCheckValues.ts';
import { PILOT_CHECK_VALUES } from './pilotCheckValues.ts';
import { RESIDUAL_CHECK_VALUES } from './residualCheckValues.ts';

export const CHECK_VALUES: readonly CheckValue[] = [
  ...PILOT_CHECK_VALUES,
  ...RESIDUAL_CHECK_VALUES,
  ...INSTALLATION_CHECK_VALUES,
];
