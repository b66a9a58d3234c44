/**
 * Check values of residual current devices and d.c. detectors: V48 to V55. The limits, and that the
 * curves of the simulation keep them; what a whole unit does is the bench's matter.
 */

import { isWithin } from '../../src/laws/quantities.ts';
import { directTripTime, residualTripTime } from '../../src/laws/residualCurves.ts';
import {
  alternatingBand,
  breakTimeLimit,
  DIRECT_BAND,
  directBreakTimeLimit,
  halfWaveBand,
  leastNonActuatingTime,
  leastNonOperatingTime,
  VERIFICATION,
} from '../../src/laws/residualLimits.ts';
import type { Check, CheckValue } from './checkValueRow.ts';

const RCD = 'BS EN 61008-1, table of break times';
const RATED = 0.03;
const PICKUP = 0.0225;
const DIRECT_PICKUP = 0.0045;

const alternating = (multiple: number, limit: number): readonly [Check, Check] => [
  {
    what: `limit at ${multiple} IΔn, s`,
    expected: limit,
    compute: () => breakTimeLimit('general', multiple),
  },
  {
    what: `simulated device at ${multiple} IΔn keeps it`,
    expected: true,
    compute: () => residualTripTime(multiple * RATED, PICKUP) <= limit,
  },
];

const smooth = (milliamps: number, limit: number): readonly [Check, Check] => [
  {
    what: `limit at ${milliamps} mA, s`,
    expected: limit,
    compute: () => directBreakTimeLimit(milliamps / 1000),
  },
  {
    what: `simulated detector at ${milliamps} mA keeps it`,
    expected: true,
    compute: () => directTripTime(milliamps / 1000, DIRECT_PICKUP) <= limit,
  },
];

export const RESIDUAL_CHECK_VALUES: readonly CheckValue[] = [
  {
    id: 'V48',
    input: '30 mA a.c. on a 30 mA general device',
    source: `${RCD}; BS 7671:2018+A2:2022, 643.8, from memory`,
    checks: [
      ...alternating(1, 0.3),
      { what: 'limit on site, s', expected: 0.3, compute: () => VERIFICATION.general.greatest },
    ],
  },
  {
    id: 'V49',
    input: '15 mA a.c. on a 30 mA general device',
    source: RCD,
    checks: [
      {
        what: 'must not trip, s',
        expected: Infinity,
        compute: () => leastNonActuatingTime('general', 0.015 / RATED),
      },
      { what: 'lower end of the band, A', expected: 0.015, compute: () => alternatingBand(RATED).least },
      { what: 'simulated device, s', expected: Infinity, compute: () => residualTripTime(0.015, PICKUP) },
    ],
  },
  {
    id: 'V50',
    input: '60 and 150 mA a.c. on a 30 mA general device',
    source: RCD,
    checks: [...alternating(2, 0.15), ...alternating(5, 0.04)],
  },
  {
    id: 'V51',
    input: 'S type at rated current trips at 110 ms',
    source: `${RCD}, S type from memory`,
    checks: [
      { what: 'least, s', expected: 0.13, compute: () => leastNonActuatingTime('S', 1) },
      { what: 'pass', expected: false, compute: () => isWithin(VERIFICATION.S, 0.11) },
    ],
  },
  {
    id: 'V52',
    input: 'half-wave ramp at 0°: 30 mA type A trips at 12 mA',
    source: 'BS EN 61008-1, 9.9, table of pulsating currents',
    checks: [
      {
        what: 'pass',
        expected: true,
        compute: () => isWithin(halfWaveBand('A', RATED, 0) ?? { least: 1, greatest: 0 }, 0.012),
      },
    ],
  },
  {
    id: 'V53',
    input: 'smooth d.c. ramp: detector acts at 2.5, 4.5, 6.5 mA',
    source: 'IEC 62955:2018, 9.9.2.1',
    checks: [
      { what: '2.5 mA', expected: false, compute: () => isWithin(DIRECT_BAND, 0.0025) },
      { what: '4.5 mA', expected: true, compute: () => isWithin(DIRECT_BAND, 0.0045) },
      { what: '6.5 mA', expected: false, compute: () => isWithin(DIRECT_BAND, 0.0065) },
    ],
  },
  {
    id: 'V54',
    input: 'sudden smooth d.c. of 6, 60, 200 mA',
    source: 'IEC 62955:2018, Table 2',
    checks: [...smooth(6, 10), ...smooth(60, 0.3), ...smooth(200, 0.1)],
  },
  {
    id: 'V55',
    input: '30 mA a.c. for 10 s on a detector of the monitoring kind',
    source: 'IEC 62955:2018, Table 3 and 9.9.3',
    checks: [
      { what: 'must not act for 10 s', expected: true, compute: () => leastNonOperatingTime(0.03) >= 10 },
    ],
  },
];
