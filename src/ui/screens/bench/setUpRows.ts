/** What can be set up beforehand by a list: its fields, their labels and options, the same for the short list and the lists. */
import { CABLE_CODINGS } from '../../../laws/proximity.ts';
import type { UnitSheet } from '../../../unit/design.ts';
import { SUPPLY_WORDS } from '../../flow/known.ts';
import type { Position } from '../../flow/position.ts';
import { SUPPLY_POSITIONS } from '../../flow/position.ts';
import { STATE_WORDS } from '../../words/trade.ts';

type Options = readonly (readonly [string, string])[];

export interface Row {
  readonly field: keyof Position;
  readonly label: string;
  readonly options: Options;
}

const PLACES_OF_SITE: readonly Row[] = [
  { field: 'supply', label: 'supply', options: SUPPLY_POSITIONS.map((x) => [x, SUPPLY_WORDS[x]]) },
  {
    field: 'cover',
    label: 'unit’s cover',
    options: [
      ['closed', 'closed'],
      ['open', 'open'],
    ],
  },
  {
    field: 'unit',
    label: 'unit’s conductors',
    options: [
      ['connected', 'connected'],
      ['taken off', 'taken off'],
    ],
  },
];

const STAND_IN: readonly Row[] = [
  {
    field: 'plugged',
    label: 'stand-in',
    options: [
      ['true', 'plugged in'],
      ['false', 'unplugged'],
    ],
  },
  { field: 'state', label: 'its state', options: Object.entries(STATE_WORDS) },
  {
    field: 'pilot',
    label: 'its pilot (CP)',
    options: [
      ['sound', 'sound'],
      ['shorted-to-earth', 'shorted to PE'],
      ['open', 'open'],
    ],
  },
  {
    field: 'diode',
    label: 'its diode',
    options: [
      ['sound', 'sound'],
      ['shorted', 'shorted'],
    ],
  },
  {
    field: 'earth',
    label: 'its PE',
    options: [
      ['sound', 'sound'],
      ['open', 'open'],
    ],
  },
];

const CODING: Row = {
  field: 'coding',
  label: 'coding in the plug',
  options: [...CABLE_CODINGS.map((amps): [string, string] => [String(amps), `${amps} A`]), ['null', 'none']],
};

/** A position's field from the text of its option. */
export const fromText = (field: keyof Position, text: string): unknown =>
  field === 'plugged' ? text === 'true' : field === 'coding' ? (text === 'null' ? null : Number(text)) : text;

/** Everything that is set by a list, in the order in which it is shown. */
export const rowsFor = (outlet: UnitSheet['outlet']): readonly Row[] =>
  outlet === 'socket' ? [...PLACES_OF_SITE, ...STAND_IN, CODING] : [...PLACES_OF_SITE, ...STAND_IN];

export const optionText = ({ field, options }: Row, position: Position): string =>
  options.find(([value]) => value === String(position[field]))?.[1] ?? String(position[field]);
