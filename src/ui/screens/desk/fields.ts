/** What of site, unit and marks can be changed below the fold: each field with its path in the file and its range there. */
import { CONDUCTOR_AREAS } from '../../../laws/conductor.ts';
import { BREAKER_TYPES } from '../../../laws/overcurrent.ts';
import { CABLE_CODINGS } from '../../../laws/proximity.ts';
import { PARTS, weightsOf } from '../../../scenario/tasks.ts';
import { OPEN_PEN_KINDS, PERMISSIONS } from '../../../unit/design.ts';
import type { JobFile } from './jobFile.ts';
import { fieldOf } from './jobFile.ts';

interface Common {
  readonly path: readonly string[];
  readonly label: string;
}

export interface Figure extends Common {
  readonly kind: 'figure';
  readonly unit: string;
  readonly least: number;
  readonly greatest: number;
  /** What stands for it where the file leaves it out. */
  readonly usual?: number;
}

export interface Pick extends Common {
  readonly kind: 'pick';
  readonly options: readonly (readonly [text: string, value: unknown])[];
  readonly usual?: unknown;
}

export type Field = Figure | Pick;

const figure = (
  path: string,
  label: string,
  unit: string,
  [least, greatest]: readonly [number, number],
  usual?: number,
): Figure => ({
  kind: 'figure',
  path: path.split('.'),
  label,
  unit,
  least,
  greatest,
  ...(usual === undefined ? {} : { usual }),
});

const pick = (path: string, label: string, options: Pick['options'], usual?: unknown): Pick => ({
  kind: 'pick',
  path: path.split('.'),
  label,
  options,
  ...(usual === undefined ? {} : { usual }),
});

const each = (list: readonly (string | number)[], unit = ''): Pick['options'] =>
  list.map((one) => [`${one}${unit === '' ? '' : ` ${unit}`}`, one]);

const RATINGS = [6, 10, 16, 20, 25, 32, 40, 50, 63];
const AREAS = each([...CONDUCTOR_AREAS], 'mm²');

const device = (type: string, rated: number, delay: string, poles: number) => ({ type, rated, delay, poles });

export function siteFields({ site }: JobFile): readonly Field[] {
  const isTT = site.earthing === 'TT';
  const poles = site.phases + 1;
  return [
    figure('site.voltage', 'supply, line to neutral', 'V', [200, 265]),
    isTT
      ? figure('site.electrodeResistance', 'earth electrode', 'Ω', [0.5, 5000])
      : figure('site.loopImpedance', 'external loop impedance, Ze', 'Ω', [0.01, 50]),
    figure('site.circuit.length', 'length of the run', 'm', [0.5, 500]),
    pick('site.circuit.lineArea', 'line and neutral', AREAS),
    pick('site.circuit.protectiveArea', 'protective conductor', AREAS),
    pick('site.circuit.breaker.type', 'breaker, type', each(BREAKER_TYPES)),
    pick('site.circuit.breaker.rating', 'breaker, rating', each(RATINGS, 'A')),
    figure('site.circuit.breaker.breakingCapacity', 'breaker, breaking capacity', 'A', [1000, 100_000], 6000),
    pick(
      'site.circuit.residualDevice',
      'residual device at the origin',
      [
        ['none', null],
        ['type A, 30 mA', device('A', 0.03, 'general', poles)],
        ['type B, 30 mA', device('B', 0.03, 'general', poles)],
        ['type A, 300 mA, delayed', device('A', 0.3, 'S', poles)],
      ],
      null,
    ),
  ];
}

export function unitFields({ unit }: JobFile): readonly Field[] {
  const cable = unit.outlet === 'tethered' ? 'unit.cable' : 'unit.customerCable';
  const whose = unit.outlet === 'tethered' ? 'tether' : 'customer’s cable';
  const direct = fieldOf({ unit }, ['unit', 'residual', 'direct']) ?? null;
  const own = (type: string, by: string) => ({ type, rated: 0.03, by, direct });
  return [
    figure('unit.ratedCurrent', 'rated current', 'A', [6, 80]),
    figure('unit.setCurrent', 'set to', 'A', [6, 80], unit.ratedCurrent),
    figure(`${cable}.length`, `${whose}, length`, 'm', [0.5, 50]),
    pick(`${cable}.area`, `${whose}, area`, AREAS),
    pick(`${cable}.coding`, `${whose}, coded for`, each(CABLE_CODINGS, 'A')),
    pick('unit.residual', 'residual device in the unit', [
      ['none', { type: null, direct }],
      ['type A, 30 mA, opens the contactor', own('A', 'contactor')],
      ['type A, 30 mA, its own breaker', own('A', 'breaker')],
      ['type B, 30 mA, opens the contactor', own('B', 'contactor')],
    ]),
    pick('unit.residual.direct', 'd.c. detection', [
      ['none', null],
      ['trips (protective)', 'protective'],
      ['opens the contactor (monitoring)', 'monitoring'],
    ]),
    pick('unit.openPen', 'open-PEN measure', each(OPEN_PEN_KINDS), 'none'),
    pick(
      'unit.ventilation',
      'ventilation can be switched on',
      [
        ['no', false],
        ['yes', true],
      ],
      false,
    ),
    figure('unit.startUp', 'start-up', 's', [0.1, 50], 8),
    figure('unit.startDelay', 'longest start delay', 's', [0, 1800], 0),
    pick('unit.permission', 'permission to charge', each(PERMISSIONS), 'open'),
  ];
}

const PART_WORDS: Readonly<Record<keyof typeof PARTS, string>> = {
  prediction: 'prediction',
  observation: 'observation',
  judgement: 'judgement',
  record: 'record',
  diagnosis: 'diagnosis',
  reasons: 'reasons for the verdict',
};

export const markFields = ({ task = 'verify' }: JobFile): readonly Field[] => [
  ...(Object.keys(PARTS) as (keyof typeof PARTS)[]).map((part) =>
    figure(`marking.weights.${part}`, PART_WORDS[part], 'points', [0, 100], weightsOf(task)[part]),
  ),
  figure('marking.pass', 'passed from', 'points', [0, 100], 70),
];

export const clockFields: readonly Field[] = [
  figure('seed', 'seed of the instruments’ errors', '', [0, 2_147_483_647]),
];
