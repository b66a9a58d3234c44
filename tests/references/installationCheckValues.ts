/** Check values of the installation, the supply and the law: V56 to V78. */

import { isPeakHour, RANDOM_DELAY } from '../../src/laws/chargingHours.ts';
import { conductorResistance, resistancePerMetre, toTwenty } from '../../src/laws/conductor.ts';
import { electrodeVoltage, greatestElectrode } from '../../src/laws/electrode.ts';
import { minimumInsulation } from '../../src/laws/insulationLimits.ts';
import {
  lineAndProtectiveFrom,
  lineToLineProspective,
  loopImpedance,
  prospectiveCurrent,
  threePhaseProspective,
} from '../../src/laws/loop.ts';
import {
  greatestLoopImpedance,
  instantaneousMultiple,
  measuredLoopLimit,
  NOMINAL_TO_EARTH,
  VOLTAGE_FACTOR,
} from '../../src/laws/overcurrent.ts';
import { parallel } from '../../src/laws/pilotLevels.ts';
import { isWithin } from '../../src/laws/quantities.ts';
import { isDischarged, STORED_ENERGY } from '../../src/laws/storedEnergy.ts';
import { OPEN_PEN_WINDOW, SUPPLY_VOLTAGE, VOLTAGE_DROP_SHARE } from '../../src/laws/supplyLimits.ts';
import type { Check, CheckValue } from './checkValueRow.ts';

const ohms = (what: string, expected: number, tolerance: number, compute: () => number): Check => ({
  what: `${what}, ohms`,
  expected,
  tolerance,
  compute,
});

const pair = (length: number, line: number, protective: number) =>
  length * (resistancePerMetre(line, 2) + resistancePerMetre(protective, 2));

/** External loop, run in metres, areas; the loop cold and at ×1.2. */
const run = (
  id: string,
  [external, length, line, protective]: readonly [number, number, number, number],
  [circuit, cold, hot]: readonly [number, number, number],
): CheckValue => ({
  id,
  input: `Ze ${external} ohms, ${length} m of ${line}/${protective} mm²`,
  source: 'IEC 60228; IET On-Site Guide, factor 1.2 for 70 °C thermoplastic',
  checks: [
    ohms('R1+R2', circuit, 0.0006, () => pair(length, line, protective)),
    ohms('Zs cold', cold, 0.0006, () => loopImpedance(external, pair(length, line, protective))),
    ohms('Zs hot', hot, 0.0006, () => loopImpedance(external, pair(length, line, protective), 1.2)),
  ],
});

const electrodes: readonly (readonly [number, number])[] = [
  [0.1, 500],
  [0.3, 167],
  [0.5, 100],
];

export const INSTALLATION_CHECK_VALUES: readonly CheckValue[] = [
  {
    id: 'V56',
    input: 'type B 32 A',
    source: 'BS 7671:2018+A2:2022, Table 41.3',
    checks: [{ what: 'Zs, ohms', expected: 1.37, compute: () => greatestLoopImpedance('B', 32) }],
  },
  {
    id: 'V57',
    input: '218.5 V over 5 times 32 A',
    source: 'BS 7671:2018+A2:2022, 411.4.4',
    checks: [
      ohms(
        'Zs unrounded',
        1.3656,
        0.00005,
        () => (NOMINAL_TO_EARTH * VOLTAGE_FACTOR) / (instantaneousMultiple('B') * 32),
      ),
    ],
  },
  {
    id: 'V58',
    input: 'type C 32 A, 0.60 ohm measured cold',
    source: 'BS 7671:2018+A2:2022, Table 41.3 and Appendix 3',
    checks: [
      { what: 'tabled, ohms', expected: 0.68, compute: () => greatestLoopImpedance('C', 32) },
      { what: 'quick check, ohms', expected: 0.54, compute: () => measuredLoopLimit('C', 32) },
      { what: 'passes the quick check', expected: false, compute: () => 0.6 <= measuredLoopLimit('C', 32) },
      { what: 'below the table', expected: true, compute: () => 0.6 <= greatestLoopImpedance('C', 32) },
    ],
  },
  {
    id: 'V59',
    input: 'Ze 0.6 ohm, 10 m of 1.5/1.0 mm² at ×1.2',
    source: 'IEC 60228; IET On-Site Guide, factor 1.2 for 70 °C thermoplastic',
    checks: [
      ohms('hot circuit', 0.36, 0.005, () => loopImpedance(0, pair(10, 1.5, 1), 1.2)),
      ohms('Zs', 0.96, 0.005, () => loopImpedance(0.6, pair(10, 1.5, 1), 1.2)),
    ],
  },
  {
    id: 'V60',
    input: 'Zs 2.0, Ze 1.5 ohms',
    source: 'BS 7671:2018+A2:2022, Part 2: Zs = Ze + (R1 + R2)',
    checks: [ohms('R1+R2', 0.5, 1e-9, () => lineAndProtectiveFrom(2, 1.5))],
  },
  run('V61', [0.35, 30, 6, 2.5], [0.315, 0.665, 0.728]),
  {
    ...run('V62', [0.8, 25, 6, 4], [0.192, 0.992, 1.031]),
    checks: [
      ...run('V62', [0.8, 25, 6, 4], [0.192, 0.992, 1.031]).checks,
      {
        what: 'cold reading passes B32',
        expected: true,
        compute: () => loopImpedance(0.8, pair(25, 6, 4)) <= measuredLoopLimit('B', 32),
      },
    ],
  },
  run('V63', [0.35, 40, 10, 4], [0.258, 0.608, 0.659]),
  {
    id: 'V64',
    input: '50 m of 6/2.5 mm²',
    source: 'Guide to the Wiring Regulations (17th edition), D. Locke, 2008, Appendix 4',
    checks: [ohms('R1+R2', 0.52, 0.005, () => pair(50, 6, 2.5))],
  },
  {
    id: 'V65',
    input: '50 m of 10/4 mm²',
    source: 'Guide to the Wiring Regulations (17th edition), D. Locke, 2008, Appendix 4',
    checks: [ohms('R1+R2', 0.32, 0.005, () => pair(50, 10, 4))],
  },
  {
    id: 'V66',
    input: 'Ze 0.30 ohm at 230 V',
    source: 'IET Guidance Note 3, model form',
    checks: [{ what: 'A', expected: 770, tolerance: 5, compute: () => prospectiveCurrent(0.3) }],
  },
  {
    id: 'V67',
    input: 'Z 0.35 ohm',
    source: 'IET Guidance Note 3, rule for three phases',
    checks: [
      { what: 'single-phase, A', expected: 657, tolerance: 0.5, compute: () => prospectiveCurrent(0.35) },
      {
        what: 'three-phase, A',
        expected: 1310,
        tolerance: 5,
        compute: () => threePhaseProspective(prospectiveCurrent(0.35)),
      },
      {
        what: 'line to line, A',
        expected: 1140,
        tolerance: 5,
        compute: () => lineToLineProspective(prospectiveCurrent(0.35)),
      },
    ],
  },
  {
    id: 'V68',
    input: '50 V over 30, 100, 300, 500 mA',
    source: 'BS 7671:2018+A2:2022, Table 41.5',
    checks: [
      ohms('30 mA', 1667, 0.5, () => greatestElectrode(0.03)),
      ...electrodes.map(([rated, expected]) =>
        ohms(`${rated * 1000} mA`, expected, 0.5, () => greatestElectrode(rated)),
      ),
    ],
  },
  {
    id: 'V69',
    input: 'RA 200 ohms, 30 mA device',
    source: 'BS 7671:2018+A2:2022, 411.5.3',
    checks: [
      { what: 'V at IΔn', expected: 6, tolerance: 1e-9, compute: () => electrodeVoltage(200, 0.03) },
      { what: 'dead fault, A', expected: 1.15, tolerance: 1e-9, compute: () => prospectiveCurrent(200) },
    ],
  },
  {
    id: 'V70',
    input: '5, 20, 10, 20, 2 MΩ in parallel',
    source: 'parallel resistances; BS 7671:2018+A2:2022, Table 64',
    checks: [
      { what: 'MΩ', expected: 1.11, tolerance: 0.005, compute: () => parallel(5, 20, 10, 20, 2) },
      {
        what: 'passes',
        expected: true,
        compute: () => parallel(5e6, 20e6, 10e6, 20e6, 2e6) >= minimumInsulation(230).minimum,
      },
    ],
  },
  {
    id: 'V71',
    input: '230 V +10 % -6 %',
    source: 'SI 1994/3021',
    checks: [
      { what: 'least, V', expected: 216.2, compute: () => SUPPLY_VOLTAGE.least },
      { what: 'greatest, V', expected: 253, compute: () => SUPPLY_VOLTAGE.greatest },
    ],
  },
  {
    id: 'V72',
    input: 'origin at 216.2 V, 5 % drop',
    source: 'BS 7671:2018, 722.411.4.1(iv), window from memory',
    checks: [
      {
        what: 'V at the unit',
        expected: 204.7,
        tolerance: 0.05,
        compute: () => SUPPLY_VOLTAGE.least - VOLTAGE_DROP_SHARE.other * SUPPLY_VOLTAGE.nominal,
      },
      {
        what: 'inside the window',
        expected: false,
        compute: () =>
          isWithin(OPEN_PEN_WINDOW, SUPPLY_VOLTAGE.least - VOLTAGE_DROP_SHARE.other * SUPPLY_VOLTAGE.nominal),
      },
    ],
  },
  {
    id: 'V73',
    input: '5 m of 6 mm² class 5',
    source: 'IEC 60228',
    checks: [
      ohms('one conductor', 0.0165, 1e-9, () => conductorResistance({ length: 5, area: 6, class: 5 })),
    ],
  },
  {
    id: 'V74',
    input: '1 km of 1.5 mm² class 2',
    source: 'IEC 60228',
    checks: [
      ohms('one conductor', 12.1, 1e-9, () => conductorResistance({ length: 1000, area: 1.5, class: 2 })),
    ],
  },
  {
    id: 'V75',
    input: 'reading taken at 10 °C',
    source: 'IEC 60228, annex on temperature correction',
    checks: [{ what: 'factor', expected: 1.042, tolerance: 0.0005, compute: () => toTwenty(10) }],
  },
  {
    id: 'V76',
    input: '17:30 on a Tuesday, default schedule',
    source: 'SI 2021/1467, regulation 10',
    checks: [
      { what: 'kept from charging', expected: true, compute: () => isPeakHour('Tuesday', 17 * 60 + 30) },
    ],
  },
  {
    id: 'V77',
    input: 'random delay not overridden',
    source: 'SI 2021/1467, regulation 11',
    checks: [{ what: 'greatest as delivered, s', expected: 600, compute: () => RANDOM_DELAY.default }],
  },
  {
    id: 'V78',
    input: '5 s after isolation',
    source: 'IEC 61851-1:2017, 8.2.2',
    checks: [
      { what: 'judged after, s', expected: 5, compute: () => STORED_ENERGY.after },
      { what: '100 µF at 60 V', expected: true, compute: () => isDischarged(100e-6, 60) },
      { what: '1 µF at 325 V, 0.05 J', expected: true, compute: () => isDischarged(1e-6, 325) },
      { what: '10 µF at 325 V, 0.53 J', expected: false, compute: () => isDischarged(10e-6, 325) },
    ],
  },
];
