/** What every file of this room says of its quantity. */
import type * as v from 'valibot';
import type { Draw } from '../../unit/design.ts';
import type { Display, TypedUnit } from './display.ts';

export type Unit = 'Ω' | 'V' | 'A' | 's' | '';

/** What a reading says beside its figure, each by its schema; which there are hangs on the setting and on what was met. */
export type Fields<E extends v.ObjectEntries> = {
  readonly [K in keyof E]?: Readonly<v.InferOutput<E[K]>>;
};

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

export interface QuantityRules<Q extends string, M, E extends v.ObjectEntries> {
  readonly quantity: Q;
  readonly unit: Unit;
  /** The operation that takes a reading, with how the instrument is set. */
  readonly measurement: M;
  readonly fields: E;
  /** What is shown of a true value and of what was met beside it; `key` names the reading. */
  readonly shown: (truth: number, met: Fields<E>, key: string, draw: Draw) => Figures & Fields<E>;
  readonly band: (truth: number, met: Fields<E>) => Band;
  /** Of a figure of this size. */
  readonly display: (size: number, reading: Fields<E>) => Display;
  /** The units offered where it is typed. */
  readonly typedIn: readonly TypedUnit[];
}

/** One quantity; nothing but the types of its parts follows from it. */
export const quantityOf = <const Q extends string, M, E extends v.ObjectEntries>(
  rules: QuantityRules<Q, M, E>,
): QuantityRules<Q, M, E> => rules;
