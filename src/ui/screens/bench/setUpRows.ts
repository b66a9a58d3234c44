/** What can be set up beforehand by a list: labels and options, what each shows of a position and what it changes. */
import { CABLE_CODINGS } from '../../../laws/proximity.ts';
import type { UnitSheet } from '../../../unit/design.ts';
import { leakageText, loadText } from '../../../words/settings.ts';
import { STATE_WORDS } from '../../../words/trade.ts';
import type { Hand } from '../../drawing/hands.ts';
import type { Position } from '../../flow/position.ts';
import { isAlike, MAIN_POSITIONS, SUPPLY_POSITIONS } from '../../flow/position.ts';
import { MAIN_WORDS, SUPPLY_WORDS } from '../../flow/whatIsKnown.ts';

type Options = readonly (readonly [value: string, text: string])[];

export interface Row {
  readonly label: string;
  readonly options: Options;
  /** Which option a position has. */
  readonly shows: (position: Position) => string;
  /** What choosing an option changes; `now` is how things stand before the lock. */
  readonly sets: (option: string, now: Position) => Partial<Position>;
}

interface OneField {
  readonly field: keyof Position;
  readonly label: string;
  readonly options: Options;
}

const ofField = ({ field, label, options }: OneField): Row => ({
  label,
  options,
  shows: (position) => String(position[field]),
  sets: (option) => ({ [field]: option }),
});

const PLACES_OF_SITE: readonly OneField[] = [
  { field: 'supply', label: 'supply', options: SUPPLY_POSITIONS.map((x) => [x, SUPPLY_WORDS[x]]) },
  { field: 'main', label: 'main switch', options: MAIN_POSITIONS.map((x) => [x, MAIN_WORDS[x]]) },
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

const UNPLUGGED = 'unplugged';

/** Plug and state in one list: a state is set on a stand-in that is plugged in. */
const STAND_IN: Row = {
  label: 'stand-in',
  options: [
    [UNPLUGGED, UNPLUGGED],
    ...Object.entries({ ...STATE_WORDS, A: 'A: no vehicle, though plugged in' }),
  ],
  shows: ({ plugged, state }) => (plugged ? state : UNPLUGGED),
  // Left unplugged it keeps the state that it was left in.
  sets: (option, now) =>
    option === UNPLUGGED
      ? { plugged: false, state: now.plugged ? 'A' : now.state }
      : { plugged: true, state: option as Position['state'] },
};

const INSIDE: readonly OneField[] = [
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
  label: 'coding in the plug',
  options: [...CABLE_CODINGS.map((amps): [string, string] => [String(amps), `${amps} A`]), ['null', 'none']],
  shows: ({ coding }) => String(coding),
  sets: (option) => ({ coding: CABLE_CODINGS.find((amps) => String(amps) === option) ?? null }),
};

const [CIRCUIT, MAIN, COVER, CONDUCTORS] = PLACES_OF_SITE.map(ofField) as [Row, Row, Row, Row];

/** What a hand on the drawing chooses among, where there are more positions than two. */
export const CHOICES_OF: Readonly<Partial<Record<Hand, Row>>> = {
  circuit: CIRCUIT,
  'main-switch': MAIN,
  request: STAND_IN,
};

/** What a touch changes where there are two positions; nothing where there are more. */
export function otherPosition(hand: Hand, position: Position, now: Position): Partial<Position> {
  switch (hand) {
    case 'cover':
      return COVER.sets(position.cover === 'open' ? 'closed' : 'open', now);
    case 'conductors':
      return CONDUCTORS.sets(position.unit === 'connected' ? 'taken off' : 'connected', now);
    case 'plug':
      return STAND_IN.sets(position.plugged ? UNPLUGGED : position.state === 'A' ? 'B' : position.state, now);
    default:
      return {};
  }
}

/** What is set on most visits, in the order in which it is shown. */
export const usualRows = (outlet: UnitSheet['outlet']): readonly Row[] => [
  CIRCUIT,
  MAIN,
  COVER,
  CONDUCTORS,
  STAND_IN,
  ...(outlet === 'socket' ? [CODING] : []),
];

/** What is a part of the stand-in. */
export const INSIDE_ROWS: readonly Row[] = INSIDE.map(ofField);

const textOf = ({ options, shows }: Row, position: Position): string =>
  options.find(([value]) => value === shows(position))?.[1] ?? shows(position);

/** In words, what of one position is otherwise in another. */
export function changesOf(outlet: UnitSheet['outlet'], now: Position, then: Position): readonly string[] {
  const listed = [...usualRows(outlet), ...INSIDE_ROWS]
    .filter(({ shows }) => shows(now) !== shows(then))
    .map((row) => `${row.label} from ${textOf(row, now)} to ${textOf(row, then)}`);
  const drawn = [
    ...(isAlike(now, then, 'load') ? [] : [loadText(then.load)]),
    ...(isAlike(now, then, 'leakage') ? [] : [leakageText(then.leakage)]),
  ];
  return [...listed, ...drawn];
}

/** Whether everything inside the stand-in is at rest: sound, and nothing drawn. */
export const isAtRest = ({ pilot, diode, earth, load, leakage }: Position): boolean =>
  pilot === 'sound' && diode === 'sound' && earth === 'sound' && load === 0 && leakage === null;
