/**
 * What a set of wiring rules is to the verification: a name with its amendment, and the values that limits are made
 * of, each with the regulation that it stands in. What the rules say is in a file of their own each.
 */

import type { BreakerType } from '../../laws/overcurrent.ts';
import type { Amps, Ohms, Range, Volts } from '../../laws/quantities.ts';
import type { DeviceType } from '../../laws/residualLimits.ts';
import type { Earthing } from '../../site/site.ts';
import type { Remark, Source } from '../sources.ts';

/** Every set that a scenario may be judged by. Another one is a name here, a file beside this and a line in rules.ts. */
export const RULE_SET_NAMES = ['BS 7671:2018+A2:2022'] as const;
export type RuleSetName = (typeof RULE_SET_NAMES)[number];

/** A test voltage (d.c.) and the least resistance that passes at it. */
export interface InsulationRule {
  readonly testVoltage: Volts;
  readonly minimum: Ohms;
  readonly source: Source;
}

export interface RuleSet {
  readonly name: RuleSetName;
  /** Whether it is the edition in force; else src/words/sources.ts says what has replaced it. */
  readonly edition: { readonly inForce: boolean };
  /** A regulation of this set as a source; `remembered` where its text was not seen. */
  readonly regulation: (number: string, remark?: Remark) => Source;
  readonly remembered: (number: string, remark?: Remark) => Source;
  readonly insulation: {
    /** The circuit alone. */
    readonly circuit: InsulationRule;
    /** With equipment connected that the circuit's voltage could harm. */
    readonly equipment: InsulationRule;
  };
  readonly loop: {
    /** Greatest loop to be measured on a cold circuit for this breaker to clear it, Ω. */
    readonly measured: (type: BreakerType, rating: Amps) => Ohms;
    readonly source: Source;
    /** The same where a residual device at the origin clears it on TN, Ω. */
    readonly byResidual: (rated: Amps) => Ohms;
    readonly byResidualSource: Source;
  };
  /** The usual upper figure of the loop outside the installation, Ω; null where the installation has its own electrode. */
  readonly external: Readonly<Record<Earthing, Ohms | null>> & { readonly source: Source };
  readonly prospective: {
    /** Nominal voltage that a prospective current is reckoned with, V. */
    readonly voltage: Volts;
    /** A three-phase fault as a multiple of the line–neutral one. */
    readonly threePhase: number;
    readonly source: Source;
    /** Where a declared consumer unit makes up for what its breaker does not break by itself. */
    readonly conditionalSource: Source;
  };
  readonly electrode: {
    readonly touchVoltage: Volts;
    /** Greatest resistance for a device of this rating, Ω. */
    readonly greatest: (rated: Amps) => Ohms;
    readonly source: Source;
    /** Above this it may not be stable, Ω. */
    readonly stable: Ohms;
    readonly stableSource: Source;
  };
  readonly supply: {
    readonly lineToNeutral: Range;
    readonly lineToLine: Range;
    readonly source: Source;
  };
  /** The most that a circuit may lose without a further look, V. */
  readonly drop: { readonly greatest: (phases: 1 | 3) => Volts; readonly source: Source };
  /** The residual device that a connecting point needs. */
  readonly additional: {
    readonly rated: Amps;
    /** With a d.c. detector; a type B needs none. */
    readonly types: readonly DeviceType[];
    readonly source: Source;
  };
}
