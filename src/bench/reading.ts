/**
 * From a true value to what an instrument shows. Instruments know only true values; what a reading of one is, with an
 * error drawn by key, is told here alone, by the rules of its quantity (readings).
 *
 * The half-widths are a design choice, far inside the operating uncertainty that IEC 61557 allows (±30 %, from
 * memory); `uncertainty` is the half-width at the shown value.
 */
import type { Seconds } from '../laws/quantities.ts';
import type { Draw } from '../unit/design.ts';
import type { Display, TypedUnit } from './readings/display.ts';
import { RULES } from './readings/quantities.ts';
import type { AnyFields, Band, FieldsOf, Quantity, Unit } from './readings/quantity.ts';
import type { Refusal } from './refusal.ts';

/** What an ideal instrument would show; `refused` where it cannot test at all. */
export type TruthOf<Q extends Quantity> = {
  [K in Q]:
    | { readonly quantity: K; readonly value: number; readonly details: FieldsOf<K> }
    | { readonly quantity: K; readonly refused: Refusal; readonly details: FieldsOf<K> };
}[Q];
export type Truth = TruthOf<Quantity>;

interface Frame {
  readonly value: number | null;
  readonly unit: Unit;
  readonly uncertainty: number | null;
  readonly qualifier: '>' | '<' | 'unable' | null;
  /** The end of the range, beside a qualifier `>` or `<`. */
  readonly limit?: number;
  /** Why the instrument refused, beside `unable`. */
  readonly reason?: Refusal;
  readonly at: Seconds;
}

/** How the instrument was set and what it shows besides depends on the quantity. */
export type ReadingOf<Q extends Quantity> = {
  [K in Q]: Frame & { readonly quantity: K } & FieldsOf<K>;
}[Q];
export type Reading = ReadingOf<Quantity>;
/** For what looks at a field wherever there is one. */
export type AnyReading = Reading & AnyFields;

/** The reading shown for a true value. `key` names this reading, so that its error never depends on other readings. */
export function shown<T extends Truth>(
  truth: T,
  key: string,
  at: Seconds,
  draw: Draw,
): ReadingOf<T['quantity']> {
  const { quantity, details } = truth;
  const rules = RULES[quantity];
  const figures =
    'refused' in truth
      ? { value: null, uncertainty: null, qualifier: 'unable' as const, reason: truth.refused }
      : rules.shown(truth.value, details, key, draw);
  return { quantity, unit: rules.unit, at, ...details, ...figures } as ReadingOf<T['quantity']>;
}

/** Between which figures the instrument may show it. */
export function bandOf(truth: Truth): Band {
  return 'refused' in truth
    ? { told: `unable ${truth.refused.id}`, figures: [] }
    : RULES[truth.quantity].band(truth.value, truth.details);
}

/** How the instrument's display gives a reading. */
export const displayOf = (reading: Reading): Display =>
  RULES[reading.quantity].display(Math.abs(reading.value ?? reading.limit ?? 0), reading as AnyFields);

/** The units in which it may be typed. */
export const typedIn = ({ quantity }: Reading): readonly TypedUnit[] => RULES[quantity].typedIn;

/** At a fixed test current the instrument shows the time in which it tripped; the current is its setting. */
export const showsTripTime = (reading: Reading): reading is ReadingOf<'residual'> & { mode: 'fixed' } =>
  reading.quantity === 'residual' && reading.mode === 'fixed';

export const isOf = <Q extends Quantity>(reading: Reading, quantity: Q): reading is Reading & ReadingOf<Q> =>
  reading.quantity === quantity;

/** The terminals that the leads were on, where it was taken between two. */
export const pairOf = (reading: AnyFields): readonly [string, string] | undefined => reading.between;
