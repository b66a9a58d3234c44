/** What the words of a kind of question consist of. */
import type { Values } from '../verification/testAction.ts';

export type Said = string | ((values: Values) => string);

export interface QuestionWords {
  /** What is given, and what is asked. */
  readonly stem: (values: Values) => string;
  /** Of a choice: each by its id, with its own values beside the question's. */
  readonly choices?: Readonly<Record<string, Said>>;
  /** Of a choice without words of its own, whose names its choices have: of tests, where it is not said. */
  readonly named?: 'causes';
  /** Of an order: each act by its id. */
  readonly parts?: Readonly<Record<string, string>>;
  /** What somebody took for what who arrived at a wrong answer, by the misconception's id; of a choice by the choice's. */
  readonly mistakes?: Readonly<Record<string, Said>>;
  /** The way to the answer, one sum or step each, as one can do it again. */
  readonly working: (values: Values, answer: string) => readonly string[];
  /** What flows, drops, joins or opens, and what somebody would meet because of it. */
  readonly why: Said;
}
