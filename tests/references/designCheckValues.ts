/**
 * Worked examples of design sums and of the limits that a verifier argues over: W1 to W26, as far as they are sums of
 * the laws; the others are benchExamples.ts. Each says what its figure rests on.
 */

import {
  CURVE_ENDS,
  classEnergy,
  leastForEnergy,
  leastProtective,
  protectiveWithoutSum,
} from '../../src/laws/adiabatic.ts';
import { isPeakHour } from '../../src/laws/chargingHours.ts';
import type { CableKind, Method } from '../../src/laws/currentCarrying.ts';
import { currentCarrying } from '../../src/laws/currentCarrying.ts';
import { greatestDemand } from '../../src/laws/demand.ts';
import { electrodeVoltage, greatestElectrode, STABLE_ELECTRODE } from '../../src/laws/electrode.ts';
import { prospectiveCurrent, threePhaseProspective } from '../../src/laws/loop.ts';
import { greatestLoopImpedance } from '../../src/laws/overcurrent.ts';
import { dutyForCurrent } from '../../src/laws/pilotDuty.ts';
import {
  greatestResidualLoop,
  isSelective,
  multipleAtLimit,
  strictResidualLoop,
  timeAtLimit,
} from '../../src/laws/residualProtection.ts';
import { OPEN_PEN_TIME, OPEN_PEN_WINDOW, SUPPLY_VOLTAGE, TOUCH_LIMIT } from '../../src/laws/supplyLimits.ts';
import { greatestDrop, leastLeft, longestRun, voltageDrop } from '../../src/laws/voltageDrop.ts';
import type { Check, CheckValue } from './checkValueRow.ts';

/** P: a published row or rule; D: arithmetic of it; M: rests on a value from memory; J: a judgement. */
export interface DesignCheckValue extends Omit<CheckValue, 'checks'> {
  readonly checks: readonly Check[];
  readonly mark: 'P' | 'D' | 'M' | 'J' | 'P/J';
}

const BS = 'BS 7671:2018+A2:2022';

interface LaidAs {
  readonly cable?: CableKind;
  readonly method?: Method;
  readonly area: number;
  readonly loaded?: 2 | 3;
  readonly ambient?: number;
  readonly grouped?: number;
}

const carried = ({
  cable = 'sheathed',
  method = 'C',
  area,
  loaded = 2,
  ambient = 30,
  grouped = 1,
}: LaidAs): number => currentCarrying({ cable, method, area, loaded, ambient, grouped, insulated: 0 }).amps;

const amps = (expected: number, laid: LaidAs, tolerance = 1e-9) => ({
  what: 'A carried',
  expected,
  tolerance,
  compute: () => carried(laid),
});
const allows = (rating: number, expected: boolean, laid: LaidAs) => ({
  what: `a breaker of ${rating} A is allowed`,
  expected,
  compute: () => rating <= carried(laid) + 1e-9,
});
const drop = (length: number, area: number, phases: 1 | 3 = 1): number =>
  voltageDrop({ area, phases, amps: 32, length });
const volts = (expected: number, length: number, area: number, phases: 1 | 3 = 1) => ({
  what: `V lost on ${area} mm²`,
  expected,
  tolerance: 0.006,
  compute: () => drop(length, area, phases),
});
const share = (expected: number, length: number, area: number, phases: 1 | 3 = 1) => ({
  what: `% lost on ${area} mm²`,
  expected,
  tolerance: 0.006,
  compute: () => (5 * drop(length, area, phases)) / greatestDrop(phases),
});
const size = (what: string, expected: number, compute: () => number) => ({
  what: `mm² ${what}`,
  expected,
  tolerance: 0.006,
  compute,
});
const longest = (area: number, expected: number) => ({
  what: `m of ${area} mm²`,
  expected,
  tolerance: 0.05,
  compute: () => longestRun({ area, phases: 1, amps: 32, drop: greatestDrop(1) }),
});
const energyOf = (capacity: number): number => classEnergy('B', 32, capacity) ?? Number.NaN;
const touch = (electrode: number, rated: number, expected: number, passes: boolean) => [
  {
    what: `V at ${1000 * rated} mA and ${electrode} Ω`,
    expected,
    tolerance: 1e-9,
    compute: () => electrodeVoltage(electrode, rated),
  },
  {
    what: `${electrode} Ω is within the limit of ${1000 * rated} mA`,
    expected: passes,
    compute: () => electrode <= greatestElectrode(rated),
  },
];
const unstable = (electrode: number, expected: boolean) => ({
  what: `${electrode} Ω is to be remarked on`,
  expected,
  compute: () => electrode > STABLE_ELECTRODE,
});

export const DESIGN_CHECK_VALUES: readonly DesignCheckValue[] = [
  {
    id: 'W1',
    input: 'Ib 32, B40, 6 mm² sheathed, method C',
    source: `${BS}, 433.1.1, Table 4D2A`,
    mark: 'P',
    checks: [amps(46, { area: 6 }), allows(40, true, { area: 6 })],
  },
  {
    id: 'W2',
    input: 'Ib 32, B63, 4 mm² armoured, method D',
    source: `${BS}, 433.1.1, Table 4D4A`,
    mark: 'P',
    checks: [
      amps(37, { cable: 'armoured', method: 'D', area: 4 }),
      allows(63, false, { cable: 'armoured', method: 'D', area: 4 }),
    ],
  },
  {
    id: 'W3',
    input: '6 mm² sheathed, C, 35 °C, two bunched',
    source: `${BS}, Tables 4D2A, 4B1, 4C1`,
    mark: 'D',
    checks: [
      amps(34.6, { area: 6, ambient: 35, grouped: 2 }, 0.05),
      allows(32, true, { area: 6, ambient: 35, grouped: 2 }),
      allows(40, false, { area: 6, ambient: 35, grouped: 2 }),
    ],
  },
  {
    id: 'W4',
    input: 'B32, flat twin and earth inside an insulated stud wall, 103',
    source: `${BS}, Table 4D5`,
    mark: 'P',
    checks: [
      amps(23.5, { cable: 'flat', method: '103', area: 6 }),
      allows(32, false, { cable: 'flat', method: '103', area: 6 }),
      amps(32, { cable: 'flat', method: '103', area: 10 }),
      allows(32, true, { cable: 'flat', method: '103', area: 10 }),
    ],
  },
  {
    id: 'W5',
    input: 'three-phase, 6 mm² armoured, D',
    source: `${BS}, Table 4D4A`,
    mark: 'P',
    checks: [
      amps(38, { cable: 'armoured', method: 'D', area: 6, loaded: 3 }),
      allows(32, true, { cable: 'armoured', method: 'D', area: 6, loaded: 3 }),
      allows(40, false, { cable: 'armoured', method: 'D', area: 6, loaded: 3 }),
    ],
  },
  {
    id: 'W6',
    input: '18 m of 6 mm², 32 A',
    source: `${BS}, Table 4D4B`,
    mark: 'D',
    checks: [volts(4.2, 18, 6), share(1.83, 18, 6)],
  },
  {
    id: 'W7',
    input: '50 m at 32 A, 6 and 10 mm²',
    source: `${BS}, Table 4D4B, Appendix 4`,
    mark: 'D',
    checks: [
      volts(11.68, 50, 6),
      share(5.08, 50, 6),
      volts(7.04, 50, 10),
      share(3.06, 50, 10),
      { what: '6 mm² is over 5 %', expected: true, compute: () => drop(50, 6) > greatestDrop(1) },
    ],
  },
  {
    id: 'W8',
    input: '55 m of 4 mm², 32 A',
    source: `${BS}, Table 4D4B; ESQCR 2002, regulation 27`,
    mark: 'D',
    checks: [
      volts(19.36, 55, 4),
      share(8.42, 55, 4),
      {
        what: 'V left of 216.2',
        expected: 196.8,
        tolerance: 0.05,
        compute: () => leastLeft(drop(55, 4), 1),
      },
    ],
  },
  {
    id: 'W9',
    input: 'longest run at 32 A for 11.5 V',
    source: `${BS}, Table 4D4B, Appendix 4`,
    mark: 'D',
    checks: [longest(4, 32.7), longest(6, 49.2), longest(10, 81.7)],
  },
  {
    id: 'W10',
    input: 'three-phase, 70 m of 6 mm², 32 A',
    source: `${BS}, Table 4D4B`,
    mark: 'D',
    checks: [volts(14.34, 70, 6, 3), share(3.58, 70, 6, 3)],
  },
  {
    id: 'W11',
    input: 'origin at 216.2 V, open-PEN window from 207 V, 6 mm², 32 A',
    source: `ESQCR 2002, regulation 27; ${BS}, 722.411.4.1(iv)`,
    mark: 'D',
    checks: [
      {
        what: 'V to spare',
        expected: 9.2,
        tolerance: 0.001,
        compute: () => SUPPLY_VOLTAGE.least - OPEN_PEN_WINDOW.least,
      },
      {
        what: 'm at most',
        expected: 39.4,
        tolerance: 0.05,
        compute: () =>
          longestRun({
            area: 6,
            phases: 1,
            amps: 32,
            drop: SUPPLY_VOLTAGE.least - OPEN_PEN_WINDOW.least,
          }),
      },
      {
        what: 'V left after 18 m',
        expected: 212,
        tolerance: 0.05,
        compute: () => leastLeft(drop(18, 6), 1),
      },
    ],
  },
  {
    id: 'W12',
    input: 'B32, Zs 0.50 Ω, k 115, 0.1 s',
    source: `${BS}, 543.1.3`,
    mark: 'P',
    checks: [
      { what: 'A', expected: 460, tolerance: 1e-9, compute: () => prospectiveCurrent(0.5) },
      size('needed', 1.26, () => leastProtective(460, CURVE_ENDS)),
    ],
  },
  {
    id: 'W13',
    input: 'B32 of 6 kA, class 3, Zs 0.22 Ω',
    source: `${BS}, 543.1.3; BS EN 60898-1, Annex ZA, from memory`,
    mark: 'M',
    checks: [
      { what: 'A', expected: 1045, tolerance: 0.5, compute: () => prospectiveCurrent(0.22) },
      size('by 0.1 s', 2.87, () => leastProtective(prospectiveCurrent(0.22), CURVE_ENDS)),
      size('by its class', 1.84, () => leastForEnergy(energyOf(6000))),
    ],
  },
  {
    id: 'W14',
    input: 'the same of 10 kA',
    source: `${BS}, 543.1.3; BS EN 60898-1, Annex ZA, from memory`,
    mark: 'M',
    checks: [size('by its class', 2.61, () => leastForEnergy(energyOf(10_000)))],
  },
  {
    id: 'W15',
    input: 'lines of 6, 16, 25, 50 mm²',
    source: `${BS}, Table 54.7`,
    mark: 'P',
    checks: [
      size('for 6', 6, () => protectiveWithoutSum(6)),
      size('for 16', 16, () => protectiveWithoutSum(16)),
      size('for 25', 16, () => protectiveWithoutSum(25)),
      size('for 50', 25, () => protectiveWithoutSum(50)),
    ],
  },
  {
    id: 'W16',
    input: '0.030 Ω at the origin; 0.040 Ω on three phases',
    source: `${BS}, 434.5.1, 536.4.201; IET Guidance Note 3`,
    mark: 'P',
    checks: [
      { what: 'A', expected: 7667, tolerance: 1, compute: () => prospectiveCurrent(0.03) },
      {
        what: 'A, three phases',
        expected: 11_500,
        tolerance: 1,
        compute: () => threePhaseProspective(prospectiveCurrent(0.04)),
      },
    ],
  },
  {
    id: 'W17',
    input: 'service 60 A, house 40 A, point 32 A; then curtailed',
    source: `${BS}, 722.311, 722.311.201; IEC 61851-1:2017, Table A.7`,
    mark: 'D',
    checks: [
      {
        what: 'A asked',
        expected: 72,
        compute: () => greatestDemand({ house: 40, point: 32, curtailedTo: null }),
      },
      {
        what: 'A asked, curtailed',
        expected: 60,
        compute: () => greatestDemand({ house: 40, point: 32, curtailedTo: 60 }),
      },
      { what: 'duty of 20 A', expected: 0.3333, tolerance: 5e-5, compute: () => dutyForCurrent(20) },
    ],
  },
  {
    id: 'W18',
    input: 'TT, 300 mA and 180 or 150 Ω, 100 mA and 480 Ω',
    source: `${BS}, 411.5.3, Table 41.5`,
    mark: 'P',
    checks: [
      ...touch(180, 0.3, 54, false),
      ...touch(150, 0.3, 45, true),
      ...touch(480, 0.1, 48, true),
      unstable(480, true),
    ],
  },
  {
    id: 'W19',
    input: 'TT, 30 mA and 210, 1500, 1700 Ω',
    source: `${BS}, 411.5.3, Table 41.5 and its note`,
    mark: 'P',
    checks: [
      ...touch(210, 0.03, 6.3, true),
      unstable(210, true),
      ...touch(1500, 0.03, 45, true),
      ...touch(1700, 0.03, 51, false),
    ],
  },
  {
    id: 'W20',
    input: 'TT at 50 V exactly',
    source: 'BS EN 61008-1, table of break times; the S row from memory',
    mark: 'D',
    checks: [
      { what: 'times IΔn', expected: 4.6, tolerance: 1e-9, compute: () => multipleAtLimit(0.1) },
      { what: 's, general', expected: 0.15, compute: () => timeAtLimit(0.03, 'general') },
      { what: 's, S', expected: 0.2, compute: () => timeAtLimit(0.1, 'S') },
    ],
  },
  {
    id: 'W21',
    input: 'TN, 1.41 Ω, B40; 30 mA at the origin',
    source: `${BS}, Tables 41.3 and 41.5, 411.4.4`,
    mark: 'P',
    checks: [
      { what: 'Ω by B40', expected: 1.09, compute: () => greatestLoopImpedance('B', 40) },
      { what: 'Ω by 30 mA', expected: 1667, tolerance: 0.5, compute: () => greatestResidualLoop(0.03) },
      { what: 'Ω by 30 mA, strict', expected: 1457, tolerance: 0.5, compute: () => strictResidualLoop(0.03) },
    ],
  },
  {
    id: 'W22',
    input: 'TN, 1.41 Ω, B40; 30 mA inside the unit alone: supply terminals, outlet',
    source: `${BS}, Tables 41.3 and 41.5, 411.4.5: a device covers what lies beyond it`,
    mark: 'D',
    checks: [
      {
        what: 'the supply terminals, by B40, are within',
        expected: false,
        compute: () => greatestLoopImpedance('B', 40) >= 1.41,
      },
      {
        what: 'the outlet, by 30 mA, is within',
        expected: true,
        compute: () => greatestResidualLoop(0.03) >= 1.41,
      },
    ],
  },
  {
    id: 'W23',
    input: 'residual devices in series',
    source: `${BS}, 536.4.1.4`,
    mark: 'P',
    checks: (
      [
        [0.1, 'S', 0.03, true],
        [0.1, 'general', 0.03, false],
        [0.03, 'general', 0.03, false],
        [0.3, 'S', 0.1, true],
      ] as const
    ).map(([rated, delay, beyond, expected]) => ({
      what: `${1000 * rated} mA ${delay} over ${1000 * beyond} mA: selective`,
      expected,
      compute: () => isSelective({ rated, delay }, { rated: beyond, delay: 'general' }),
    })),
  },
  {
    id: 'W25',
    input: 'N displaced by 80 V in quadrature',
    source: `${BS}, 722.411.4.1`,
    mark: 'D',
    checks: [
      {
        what: 'the window is blind',
        expected: true,
        compute: () => Math.hypot(230, 80) < OPEN_PEN_WINDOW.greatest && TOUCH_LIMIT < 80,
      },
      { what: 's to open in', expected: 5, compute: () => OPEN_PEN_TIME },
    ],
  },
  {
    id: 'W26',
    input: 'default hours: Tuesday 08:00, Friday 22:00, Monday 17:00, Saturday 17:00',
    source: 'SI 2021/1467 regs. 2 and 10; that bank holidays are weekdays, from memory',
    mark: 'P/J',
    checks: (
      [
        ['Tuesday', 8, true],
        ['Friday', 22, false],
        ['Monday', 17, true],
        ['Saturday', 17, false],
      ] as const
    ).map(([day, hour, expected]) => ({
      what: `${day} ${hour}:00 is peak`,
      expected,
      compute: () => isPeakHour(day, 60 * hour),
    })),
  },
];
