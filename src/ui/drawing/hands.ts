/**
 * What a hand can move on the drawing before the lock, and the words of how it stands. It knows what the trainee sets,
 * never what should be set.
 */
import type { Position } from '../flow/position.ts';

/** `request`: the stand-in's S2, with which a vehicle asks for current. */
export const HANDS = ['main-switch', 'circuit', 'conductors', 'cover', 'plug', 'request'] as const;
export type Hand = (typeof HANDS)[number];

/** What is touched: it covers the thing and the word of its state. In drawing units, at least one CSS pixel each. */
export interface Target {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

export type HandTargets = ReadonlyMap<Hand, Target>;

/** What the thing is called on the drawing, and how it stands there. */
export interface HandText {
  readonly thing: string;
  readonly state: string;
}

const SWITCHED: Readonly<Record<Position['supply'], string>> = {
  on: 'on',
  'off-locked': 'off, locked',
  'off-line-locked': 'lines off, locked',
  'off-unlocked': 'off, no lock',
};

export function handText(hand: Hand, position: Position): HandText {
  switch (hand) {
    case 'main-switch':
      return { thing: 'main', state: SWITCHED[position.main] };
    case 'circuit':
      return { thing: 'breaker', state: SWITCHED[position.supply] };
    case 'conductors':
      return { thing: 'conductors', state: position.unit === 'connected' ? 'connected' : 'off' };
    case 'cover':
      return { thing: 'cover', state: position.cover };
    case 'plug':
      return { thing: 'plug', state: position.plugged ? 'in' : 'out' };
    case 'request':
      return position.state === 'D'
        ? { thing: 'state', state: 'D' }
        : { thing: 'S2', state: position.state === 'C' ? 'closed' : 'open' };
  }
}

/** For whoever does not see where it stands. */
const NAMES: Readonly<Record<Hand, string>> = {
  'main-switch': 'main switch at the origin',
  circuit: 'circuit breaker at the origin',
  conductors: 'unit’s supply conductors',
  cover: 'unit’s cover',
  plug: 'plug',
  request: 'vehicle stand-in',
};

/** The name of its control: what it is, how it is drawn, and whether that comes only at the lock. */
export function handName(hand: Hand, position: Position, now: Position): string {
  const { thing, state } = handText(hand, position);
  const says = hand === 'request' ? `${thing} ${state}, state ${position.state}` : state;
  return `${NAMES[hand]}: ${says}${isChanged(hand, position, now) ? '; changes at the lock' : ''}`;
}

const FIELDS = {
  'main-switch': 'main',
  circuit: 'supply',
  conductors: 'unit',
  cover: 'cover',
  plug: 'plugged',
  request: 'state',
} as const satisfies Readonly<Record<Hand, keyof Position>>;

/** Whether it is drawn as it will be at the lock, and stands otherwise now. */
export const isChanged = (hand: Hand, position: Position, now: Position): boolean =>
  position[FIELDS[hand]] !== now[FIELDS[hand]];
