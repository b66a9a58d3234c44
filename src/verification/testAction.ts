/**
 * What a test action is: how a faultless trainee does it, and what a correct unit and a sound circuit should and
 * should not do, written from the standards and the unit's sheet. Nothing here looks inside the simulation: an
 * expectation is judged on what was read, seen and heard. Its words stand in src/words, by its id.
 */

import type { OperationInput } from '../bench/operation.ts';
import type { Reading } from '../bench/reading.ts';
import type { Quantity, Unit } from '../bench/readings/quantity.ts';
import type { Component } from '../faults/components.ts';
import type { Family } from '../faults/families.ts';
import type { Site } from '../site/site.ts';
import type { UnitSheet } from '../unit/design.ts';
import type { Observed } from './observed.ts';
import type { RuleSetName } from './rules/ruleSet.ts';
import type { Source } from './sources.ts';

/** What the papers say: the installation's design data and the unit's sheet. All that an expectation may depend on. */
export interface Papers {
  readonly site: Site;
  readonly sheet: UnitSheet;
  /** The wiring rules that it is judged by. */
  readonly rules?: RuleSetName;
  /** Limits that whoever set the job puts in the place of the standard's. */
  readonly own?: readonly OwnLimit[];
}

export interface OwnLimit {
  /** Test and limit by their ids, with a slash between them. */
  readonly limit: string;
  /** In the limit's own unit. */
  readonly value: number;
  readonly source: string;
  readonly why: string;
}

export const STAGES = ['before power', 'with power', 'protection', 'fault response'] as const;
export type Stage = (typeof STAGES)[number];
export type Supply = 'isolated' | 'energised';

/**
 * What the words of a line need to know of the papers (src/words): raw numbers in SI units, names, and what is or is
 * not so. A text is none of them.
 */
export type Values = Readonly<Record<string, string | number | boolean>>;

export type Finding = 'met' | 'broken' | 'not shown';

/** One end of a range that a line states, which may be replaced under its test and its id as a limit is (stated.ts). */
export interface StatedFigure {
  /** Ends in `-least` or `-greatest`; what is in force stands under it among the line's values. */
  readonly id: string;
  readonly unit: Unit | 'Hz';
  /** As the standard has it. */
  readonly usual: number;
}

export interface Expectation {
  readonly id: string;
  /** True: it should do what its words say; false: it should not. */
  readonly should: boolean;
  readonly values?: Values;
  readonly source: Source;
  readonly of: 'unit' | 'circuit' | 'tester';
  readonly states?: readonly StatedFigure[];
  /** Why whoever set the job put another figure in place of the standard's. The source is then theirs. */
  readonly own?: { readonly why: string } | undefined;
  /** Where to look when it is broken. */
  readonly points: readonly Family[];
  /** `met`: as it should be, whichever way round the line is. */
  readonly judge: (observed: Observed) => Finding;
}

/** A line whose right answer is that this test cannot tell. */
export interface Untold {
  readonly id: string;
  readonly values?: Values;
  /** The tests that do tell it, by their ids and by the papers alone; none where no test here does. */
  readonly toldBy: readonly string[];
  /** It speaks of this test, or of how things stand in it, and means nothing beside another one. */
  readonly ownOnly?: boolean;
  /** What it is said of; the unit where it is left out. */
  readonly of?: Expectation['of'];
  readonly source: Source;
}

/** A figure that a correct unit gives, to be said beforehand. */
export interface Figure {
  readonly id: string;
  readonly values?: Values;
  readonly unit: 'A' | 'V' | 'Ω';
  readonly value: number;
  /** Half-width within which the answer is right. */
  readonly tolerance: number;
  readonly source: Source;
}

export interface Limit {
  readonly id: string;
  readonly values?: Values;
  readonly quantity: Quantity;
  readonly unit: Unit;
  readonly limit: number;
  /** `most`: the value may not be above the limit; `least`: not below. */
  readonly kind: 'most' | 'least';
  /** What of the reading is compared: its value, or the time in which something tripped, s. */
  readonly compares?: 'value' | 'trip time';
  readonly source: Source;
  readonly points: readonly Family[];
  /** Of a limit that whoever set the job put in place of this: its value, and why. The source is then theirs. */
  readonly own?: { readonly value: number; readonly why: string };
  /** The readings it applies to. */
  readonly applies: (sample: Reading, observed?: Observed) => boolean;
}

/** What a verifier writes down and advises: no limit is broken, and the verdict does not hang on it. */
export interface Advice {
  readonly id: string;
  readonly values?: Values;
  readonly source: Source;
  readonly isDue: (observed: Observed) => boolean;
}

/** What a test action is, how it is done, and what it cannot tell. What it ought to show comes with its lines. */
export interface Procedure {
  readonly id: string;
  readonly stage: Stage;
  /** Done or left out, it costs nothing: no document asks for it. */
  readonly optional?: boolean;
  /** The state of the supply in which the test is done, and in which it leaves the installation. */
  readonly from: Supply;
  readonly leaves: Supply;
  /** It tells nothing of a unit that never supplies its outlet, whatever it is asked: a refusal shows nothing there either. */
  readonly needsSupply?: true;
  /**
   * What its readings depend on directly: when one of these is put right, the test is done again (BS 7671 643.1).
   * None: a step of the work, or a look, that is nothing to repeat by itself.
   */
  readonly restsOn: readonly Component[];
  /**
   * Dead work has the cover open unless this says `closed`: then everything is back and the cover on before it begins.
   * `as found`: reading and looking, for which neither supply nor cover is touched.
   */
  readonly cover?: 'closed' | 'as found';
  /** Whether the papers give anything to test. */
  readonly applies: (papers: Papers) => boolean;
  readonly steps: (papers: Papers) => readonly OperationInput[];
  readonly untold: (papers: Papers) => readonly Untold[];
}

/** What a correct unit and a sound circuit show in a test action. */
export interface TestLines {
  readonly expectations: (papers: Papers) => readonly Expectation[];
  readonly figures: (papers: Papers) => readonly Figure[];
  readonly limits: (papers: Papers) => readonly Limit[];
  readonly advice?: (papers: Papers) => readonly Advice[];
  /** Broken findings after which a faultless trainee goes no further, by expectation id. */
  readonly stops: readonly string[];
}

export interface TestAction extends Procedure, TestLines {}
