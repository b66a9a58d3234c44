/** What every file of this room says of its quantity. */
import type * as v from 'valibot';
import type { Draw } from '../../unit/design.ts';
import type { Display, TypedUnit } from './display.ts';
import type { READING_FIELDS } from './schemas.ts';

export type Unit = 'Ω' | 'V' | 'A' | 's' | '';

export type Quantity = keyof typeof READING_FIELDS;

type Fields<E extends v.ObjectEntries> = {
  readonly [K in keyof E]?: Readonly<v.InferOutput<E[K]>>;
};
/** What a reading says beside its figure; which there are hangs on the setting and on what was met. */
export type FieldsOf<Q extends Quantity> = Fields<(typeof READING_FIELDS)[Q]>;

type Together<U> = (U extends unknown ? (one: U) => void : never) extends (all: infer A) => void ? A : never;
/** All that readings may say, of whatever quantity. */
export type AnyFields = Together<FieldsOf<Quantity>>;

/** The figure that is shown, SI, and the half-width of its error. */
export interface Figures {
  readonly value: number | null;
  readonly uncertainty: number | null;
  readonly qualifier: '>' | '<' | null;
  /** The end of the range, beside a qualifier `>` or `<`. */
  readonly limit?: number;
}

/**
 * Between which figures an instrument may show a true value: the half-width of its drawn error, and two digits of its
 * display more. Two true values whose bands do not meet are told apart whatever errors are drawn.
 */
export interface Figure {
  /** Which figure of the display. */
  readonly name: 'value' | 'dc' | 'high' | 'low' | 'duty' | 'frequency' | 'tripMs';
  readonly true: number;
  /** SI units as in the reading; the greatest of what is beyond the range is Infinity. */
  readonly least: number;
  readonly greatest: number;
}

export interface Band {
  /** What is shown besides figures: a refusal, what tripped, that nothing did. The same text for the same. */
  readonly told: string;
  readonly figures: readonly Figure[];
}

export interface QuantityRules<Q extends Quantity> {
  readonly quantity: Q;
  readonly unit: Unit;
  /** What is shown of a true value and of what was met beside it; `key` names the reading. */
  readonly shown: (truth: number, met: FieldsOf<Q>, key: string, draw: Draw) => Figures & FieldsOf<Q>;
  readonly band: (truth: number, met: FieldsOf<Q>) => Band;
  /** Of a figure of this size. */
  readonly display: (size: number, reading: FieldsOf<Q>) => Display;
  /** The units offered where it is typed. */
  readonly typedIn: readonly TypedUnit[];
}

/** One quantity; nothing but the types of its parts follows from it. */
export const quantityOf = <const Q extends Quantity>(rules: QuantityRules<Q>): QuantityRules<Q> => rules;
