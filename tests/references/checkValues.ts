/**
 * The 78 published check values, each once. The laws answer all of them, some only by the limit;
 * UNIT_BEHAVIOUR names those whose point is what a simulated unit does, which the laws cannot show.
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

/** Unit behaviour, for tests/bench/checkValues.test.ts: what a sound unit is to do. */
export const UNIT_BEHAVIOUR = [
  { id: 'V33', behaviour: 'supply off within 3 s' },
  { id: 'V34', behaviour: 'does not close' },
  { id: 'V37', behaviour: 'supply off within 100 ms' },
  { id: 'V38', behaviour: 'supply on within 3 s' },
  { id: 'V39', behaviour: 'supply off within 100 ms' },
  { id: 'V40', behaviour: 'does not open under load before 6 s' },
  { id: 'V41', behaviour: 'vehicle follows within 5 s' },
  { id: 'V42', behaviour: 'lock freed within 30 s' },
  { id: 'V44', behaviour: 'offers 53.33 % at most' },
  { id: 'V45', behaviour: 'offers 21.67 % at most' },
  { id: 'V47', behaviour: 'no supply' },
  { id: 'V48', behaviour: 'trips within 300 ms' },
  { id: 'V49', behaviour: 'does not trip' },
  { id: 'V50', behaviour: 'trips within 150 and 40 ms' },
  { id: 'V53', behaviour: 'ramp readings judged fail, pass, fail' },
  { id: 'V54', behaviour: 'acts within 10, 0.3 and 0.1 s' },
  { id: 'V55', behaviour: 'd.c. detector does not act' },
  { id: 'V72', behaviour: 'open-PEN device of the voltage window locks out' },
  { id: 'V76', behaviour: 'does not start' },
  { id: 'V77', behaviour: 'starts 0 to 600 s later' },
] as const;
