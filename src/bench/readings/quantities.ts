/** Every quantity that an instrument reads. */
import { coding } from './coding.ts';
import { continuity } from './continuity.ts';
import { electrode } from './electrode.ts';
import { insulation } from './insulation.ts';
import { loop } from './loop.ts';
import { openingTime } from './openingTime.ts';
import { phaseSequence } from './phaseSequence.ts';
import { pilot } from './pilot.ts';
import type { Quantity, QuantityRules } from './quantity.ts';
import { residual } from './residual.ts';
import { voltage } from './voltage.ts';

const ALL: { readonly [Q in Quantity]: QuantityRules<Q> } = {
  continuity,
  insulation,
  voltage,
  pilot,
  coding,
  loop,
  residual,
  'opening-time': openingTime,
  electrode,
  'phase-sequence': phaseSequence,
};
export const QUANTITIES = Object.keys(ALL) as readonly Quantity[];

/** A quantity's own rules, for whatever has a reading or a true value of that quantity in hand. */
export const RULES = ALL as unknown as Readonly<Record<Quantity, QuantityRules<Quantity>>>;
