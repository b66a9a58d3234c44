/** Every quantity that an instrument reads. */
import * as v from 'valibot';
import { coding } from './coding.ts';
import { continuity } from './continuity.ts';
import { electrode } from './electrode.ts';
import { insulation } from './insulation.ts';
import { loop } from './loop.ts';
import { openingTime } from './openingTime.ts';
import { phaseSequence } from './phaseSequence.ts';
import { pilot } from './pilot.ts';
import type { Fields, QuantityRules } from './quantity.ts';
import { residual } from './residual.ts';
import { voltage } from './voltage.ts';

const ALL = [
  continuity,
  insulation,
  voltage,
  pilot,
  coding,
  loop,
  residual,
  openingTime,
  electrode,
  phaseSequence,
] as const;
type One = (typeof ALL)[number];

export type Quantity = One['quantity'];
export type FieldsOf<Q extends Quantity> = Fields<Extract<One, { quantity: Q }>['fields']>;

type Together<U> = (U extends unknown ? (one: U) => void : never) extends (all: infer A) => void ? A : never;
export type AnyFields = Together<FieldsOf<Quantity>>;

type Each<K extends keyof One, All = typeof ALL> = {
  -readonly [I in keyof All]: All[I] extends One ? All[I][K] : never;
};
export const QUANTITIES = ALL.map(({ quantity }) => quantity) as Each<'quantity'>;

/** The operations that take a reading, and all that readings may say beside their figure. */
export const measurement = v.variant('quantity', ALL.map((one) => one.measurement) as Each<'measurement'>);
export const allFields: v.ObjectEntries = Object.assign({}, ...ALL.map(({ fields }) => fields));

/** A quantity's own rules, for whatever has a reading or a true value of that quantity in hand. */
type Rules = QuantityRules<Quantity, unknown, v.ObjectEntries>;
export const RULES = Object.fromEntries(ALL.map((one) => [one.quantity, one])) as unknown as Readonly<
  Record<Quantity, Rules>
>;
