/**
 * One question: which kind it is, the values that its words are made of, and its answer. Ids and figures alone; its
 * sentences are made in src/words/questions.
 */
import type { Answer } from '../attempt/record/attempt.ts';
import type { Terminal } from '../bench/terminals.ts';
import type { Seconds } from '../laws/quantities.ts';
import type { AimId, SiteId } from '../scenario/aims.ts';
import type { Source } from '../verification/sources.ts';
import type { Values } from '../verification/testAction.ts';

/** Units that a figure may be asked in; a resistance of insulation is asked in MΩ, a duty in per cent. */
export type AskedUnit = 'A' | 'V' | 'Ω' | 'MΩ' | '%' | 'ms' | 'mA';

/** A figure that a misconception arrives at, by the misconception's id. */
export interface Mistake {
  readonly id: string;
  readonly value: number;
}

/** A line of a test, whose words are those of the bench. */
export interface AboutLine {
  readonly test: string;
  readonly id: string;
  readonly values: Values;
}

/** The pilot over two periods, as its instrument shows it: V, s. */
export interface PilotPicture {
  readonly of: 'pilot';
  readonly high: number;
  readonly low: number;
  readonly period: Seconds;
  readonly highFor: Seconds;
}

/** What is asked, before it is known of which kind. */
interface Asked {
  readonly values: Values;
  readonly source: Source;
  readonly about?: AboutLine;
  readonly picture?: PilotPicture;
}

/** A figure is typed: right within `tolerance` of `answer`, both in `unit`. */
export interface FigureAsked extends Asked {
  readonly way: 'figure';
  readonly unit: AskedUnit;
  readonly answer: number;
  readonly tolerance: number;
  readonly mistakes: readonly Mistake[];
}

export interface Choice {
  readonly id: string;
  readonly values?: Values;
  readonly about?: AboutLine;
}

/** One of several; `answer` is the id of the right one. Every other one is a misconception's, under its own id. */
export interface ChoiceAsked extends Asked {
  readonly way: 'choice';
  readonly choices: readonly Choice[];
  readonly answer: string;
}

/** What a correct unit does: should, should not, or this test cannot tell. */
export interface ThreeAsked extends Asked {
  readonly way: 'three-answers';
  readonly answer: Answer;
}

/** Acts to be put in order; `answer` has the same ids in the right one. */
export interface OrderAsked extends Asked {
  readonly way: 'order';
  readonly parts: readonly string[];
  readonly answer: readonly string[];
}

/** Where things are drawn: one part of a kind of site, with the cover open and the plug as it stands. */
export interface OnDrawing {
  readonly site: SiteId;
  readonly part: 'origin' | 'unit' | 'outlet';
  readonly plugged: boolean;
}

/** Two leads are put on terminals of the drawing; any of these pairs is right, either way round. */
export interface LeadsAsked extends Asked {
  readonly way: 'leads';
  readonly drawing: OnDrawing;
  readonly answers: readonly (readonly [Terminal, Terminal])[];
  /** Pairs that misconceptions arrive at. */
  readonly mistakes: readonly { readonly id: string; readonly pair: readonly [Terminal, Terminal] }[];
}

/** One terminal of the drawing is touched. */
export interface TouchAsked extends Asked {
  readonly way: 'touch';
  readonly drawing: OnDrawing;
  readonly answer: Terminal;
  readonly mistakes: readonly { readonly id: string; readonly terminal: Terminal }[];
}

/** Levels that hold from one step to the next, s and V; of an outlet 1 is supplied, 0 is not. */
export interface AskedTrace {
  readonly of: 'pilot-peak' | 'outlet';
  readonly levels: readonly { readonly at: Seconds; readonly value: number }[];
  readonly to: Seconds;
}

/** One step of a trace is touched; `answer` is its time. */
export interface CursorAsked extends Asked {
  readonly way: 'cursor';
  readonly trace: AskedTrace;
  readonly answer: Seconds;
  readonly mistakes: readonly { readonly id: string; readonly at: Seconds }[];
}

export type AskedQuestion =
  | FigureAsked
  | ChoiceAsked
  | ThreeAsked
  | OrderAsked
  | LeadsAsked
  | TouchAsked
  | CursorAsked;

export type Question = AskedQuestion & {
  /** Its kind and the seed that it was drawn from: enough to make it again. */
  readonly id: string;
  readonly kind: string;
  readonly topic: AimId;
};

export interface Kind {
  readonly id: string;
  /** The aims that it can be asked about. */
  readonly topics: readonly AimId[];
  /** Says the same for the same dice. */
  readonly ask: (dice: Dice, topic: AimId) => AskedQuestion;
}

/** What varies from one question of a kind to the next, drawn by name. */
export interface Dice {
  /** One of them. */
  readonly pick: <const T extends readonly [unknown, ...(readonly unknown[])]>(
    name: string,
    among: T,
  ) => T[number];
  /** A figure from `least` to `greatest` in whole steps. */
  readonly figure: (name: string, least: number, greatest: number, step: number) => number;
  /** The same things in an order of its own. */
  readonly shuffle: <T>(name: string, things: readonly T[]) => readonly T[];
}
