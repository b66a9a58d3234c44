/** What a table of words holds for a test action, each line by its id in src/verification. */
import type { Values } from '../verification/testAction.ts';

/** A text, or one made of the values that come with the line. */
export type Words = string | ((values: Values) => string);

export interface LineWords {
  /** Completes "A correct unit …", "A sound circuit …" or "A sound tester …"; names no cause. */
  readonly text: Words;
  /** The mechanism: what flows, drops, joins or opens, and what somebody would meet because of it. */
  readonly why: Words;
  /** Of a line that is judged: completes "If it were faulty you would see …". */
  readonly otherwise?: Words;
}

export interface LimitWords {
  readonly text: Words;
  /** How the limit comes about, written out. */
  readonly sum: Words;
}

export interface ActionWords {
  /** Why the test is done, in a sentence. */
  readonly purpose: string;
  /** Why a faultless trainee goes no further, by the line that is broken. */
  readonly stops?: Readonly<Record<string, string>>;
  readonly lines: Readonly<Record<string, LineWords>>;
  readonly figures?: Readonly<Record<string, LineWords>>;
  readonly limits?: Readonly<Record<string, LimitWords>>;
  /** What is written down and advised, though nothing is broken. */
  readonly advice?: Readonly<Record<string, Words>>;
}
