/** A state of a bench that a question shows, and the small parts that such states are put together from. */
import type { OperationInput } from '../../bench/operation.ts';
import { conductorResistance } from '../../laws/conductor.ts';
import type { Metres, Ohms, SquareMillimetres } from '../../laws/quantities.ts';
import type { SiteId } from '../../scenario/aims.ts';
import type { ScenarioFile } from '../../scenario/schema.ts';
import type { Values } from '../../verification/testAction.ts';
import type { Question } from '../question.ts';

export interface Cause {
  readonly fault: string;
  readonly [parameter: string]: number | string;
}

/** What the question shows, as differences from the bench of its kind of site. */
export interface ShownState {
  /** The test in which it is seen. */
  readonly test: string;
  readonly on: SiteId;
  readonly site?: Partial<Omit<ScenarioFile['site'], 'circuit'>>;
  readonly circuit?: Partial<ScenarioFile['site']['circuit']>;
  /** Fields of the scenario file's unit; `cable` is the tether's, or the customer's at a socket-outlet. */
  readonly unit?: Readonly<Record<string, unknown>>;
  readonly causes?: readonly Cause[];
  /** How it is left by whoever hands it over; left out: set up as the test begins. */
  readonly left?: readonly OperationInput[];
}

/** Null: this question shows no state that a bench could stand in. */
export type Shows = (question: Question) => ShownState | null;

export function figureOf(values: Values, name: string): number {
  const value = values[name];
  if (typeof value !== 'number') throw new Error(`${name} is no figure`);
  return value;
}

export const idOf = (values: Values, name: string): string => String(values[name]);

/** Of a line and its PE, one metre each, Ω. */
export const perMetre = (line: SquareMillimetres, protective: SquareMillimetres): Ohms =>
  conductorResistance({ length: 1, area: line, class: 2 }) +
  conductorResistance({ length: 1, area: protective, class: 2 });

/** Line and PE of a tether, one metre, Ω. */
export const tetherPerMetre = (area: SquareMillimetres): Ohms =>
  2 * conductorResistance({ length: 1, area, class: 5 });

/** A length that a scenario may have, to a centimetre. */
export const lengthOf = (ohms: Ohms, each: Ohms): Metres =>
  Math.min(500, Math.max(0.5, Number((ohms / each).toFixed(2))));

/** In B for long enough that an offer stands; in C and D long enough that the unit has acted on it. */
export function inState(state: string): readonly OperationInput[] {
  if (state === 'A') return [];
  const connected: readonly OperationInput[] = [
    { op: 'vehicle', plugged: true, state: 'B' },
    { op: 'wait', seconds: 4 },
  ];
  return state === 'B'
    ? connected
    : [...connected, { op: 'vehicle', state: state === 'D' ? 'D' : 'C' }, { op: 'wait', seconds: 3 }];
}

/** Off and locked at the circuit's own device, nothing proved yet. */
export const LOCKED_OFF: readonly OperationInput[] = [{ op: 'isolate' }, { op: 'wait', seconds: 2 }];

/** A socket-outlet in place of the tether, with a cable of this coding in it. */
export const socketFor = (coding: number): Readonly<Record<string, unknown>> => ({
  outlet: 'socket',
  cable: { length: 5, area: 6, coding },
});
