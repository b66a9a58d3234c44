/**
 * The words of test actions, by their ids, and what the page and the command line ask of them. Whoever words a test sees
 * to it before that its words are there: the command line has them all from its beginning (allTests.ts), the page those
 * of the aims that a job is about (src/ui/flow/loadTests.ts).
 */

import { NO_SUPPLY } from '../verification/noSupply.ts';
import type { Values } from '../verification/testAction.ts';
import type { ActionWords, LimitWords, LineWords, Words } from './actionWords.ts';
import { amountText } from './amounts.ts';

const there = new Map<string, ActionWords>();

/** By their ids; what is there already is the same. */
export function addTests(words: Readonly<Record<string, ActionWords>>): void {
  for (const [test, itsWords] of Object.entries(words)) there.set(test, itsWords);
}

/** Something of a test action that has words. */
interface Worded {
  /** Of a line of another test, that test's id stands before it, with a slash. */
  readonly id: string;
  readonly values?: Values;
  /** Of a line into which whoever set the job put another figure. */
  readonly own?: { readonly why: string } | undefined;
}

function among<T>(table: Readonly<Record<string, T>> | undefined, id: string, what: string): T {
  const words = table !== undefined && Object.hasOwn(table, id) ? table[id] : undefined;
  if (words === undefined) throw new Error(`no words for ${what}`);
  return words;
}

function wordsOf(test: string): ActionWords {
  const words = there.get(test);
  if (words === undefined) throw new Error(`no words for the test ${test}`);
  return words;
}

const said = (words: Words, values: Values = {}): string =>
  typeof words === 'string' ? words : words(values);

function lineWords(test: string, id: string): LineWords {
  const [own = '', other] = id.split('/').reverse();
  return among(wordsOf(other ?? test).lines, own, `the line ${id} of ${test}`);
}

const figureWords = (test: string, id: string): LineWords =>
  among(wordsOf(test).figures, id, `the figure ${id} of ${test}`);
const limitWords = (test: string, id: string): LimitWords =>
  among(wordsOf(test).limits, id, `the limit ${id} of ${test}`);

export const testPurpose = (test: string): string => wordsOf(test).purpose;

export const lineText = (test: string, { id, values }: Worded): string =>
  said(lineWords(test, id).text, values);
export const limitText = (test: string, { id, values }: Worded): string =>
  said(limitWords(test, id).text, values);
interface WordedLimit extends Worded {
  readonly unit?: string;
  readonly kind?: 'most' | 'least';
  readonly own?: { readonly value: number; readonly why: string };
}

/** Where whoever set the job has put another in its place, that one with both. */
export function limitSum(test: string, { id, values, unit = '', kind, own }: WordedLimit): string {
  const usual = said(limitWords(test, id).sum, values);
  if (own === undefined) return usual;
  const side = kind === 'least' ? 'at least' : 'at most';
  return `${side} ${amountText(own.value, unit)}, set by the tutor: ${own.why} (in place of ${usual})`;
}

export const adviceText = (test: string, { id, values }: Worded): string =>
  said(among(wordsOf(test).advice, id, `the advice ${id} of ${test}`), values);

/** Said of whichever test found it. */
const WITHOUT_SUPPLY =
  'the unit gives no supply, asked for rightly and after a reset, so what needs a supplied outlet cannot be tested';

/** Why a faultless trainee goes no further when this line of the test is broken. */
export const stopWhy = (test: string, id: string): string =>
  id === NO_SUPPLY ? WITHOUT_SUPPLY : among(wordsOf(test).stops, id, `stopping at ${id} of ${test}`);

export type InWords<T> = T & {
  readonly text: string;
  readonly why: string;
  /** What a faulty unit would show; null where the line is not one to be judged. */
  readonly otherwise: string | null;
};

const inWords = <T extends Worded>(one: T, { text, why, otherwise }: LineWords): InWords<T> => ({
  ...one,
  text: said(text, one.values),
  why: `${said(why, one.values)}${one.own ? ` Set by the tutor: ${one.own.why}` : ''}`,
  otherwise: otherwise === undefined ? null : said(otherwise, one.values),
});

/** The line, or the figure, with its words. */
export const lineInWords = <T extends Worded>(test: string, one: T): InWords<T> =>
  inWords(one, lineWords(test, one.id));
export const figureInWords = <T extends Worded>(test: string, one: T): InWords<T> =>
  inWords(one, figureWords(test, one.id));
