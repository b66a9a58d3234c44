/**
 * What somebody gave as an answer, and what is to be said of it: whether it is right, and which misconception arrives
 * at just that. One law for the page, for a tutor's quiz and for its marks.
 */
import * as v from 'valibot';
import { ANSWERS } from '../attempt/record/attempt.ts';
import type { AskedUnit, Question } from './question.ts';

/** Units that a figure may be given in, each in the unit of its quantity without prefix. */
const IN_SI = { A: 1, mA: 1e-3, V: 1, mV: 1e-3, Ω: 1, kΩ: 1e3, MΩ: 1e6, '%': 1, ms: 1e-3, s: 1 } as const;
export type GivenUnit = keyof typeof IN_SI;
const GIVEN_UNITS = Object.keys(IN_SI) as [GivenUnit, ...GivenUnit[]];

/** What may be meant, in an order that says nothing of what is. */
const MEANT: Readonly<Record<AskedUnit, readonly GivenUnit[]>> = {
  A: ['%', 'A', 'mA'],
  mA: ['A', 'mA', 'ms'],
  V: ['A', 'V', 'Ω'],
  Ω: ['A', 'kΩ', 'Ω'],
  MΩ: ['kΩ', 'MΩ', 'Ω'],
  '%': ['%', 'A', 'ms'],
  ms: ['mA', 'ms', 's'],
};
export const unitsMeant = (unit: AskedUnit): readonly GivenUnit[] => MEANT[unit];

const quantityOf = (unit: GivenUnit): string => unit.replace(/^[mkM](?=.)/, '');

const text = v.pipe(v.string(), v.maxLength(100));
export const givenSchema = v.variant('way', [
  v.object({
    way: v.literal('figure'),
    value: v.pipe(v.number(), v.finite()),
    unit: v.picklist(GIVEN_UNITS),
  }),
  v.object({ way: v.literal('choice'), id: text }),
  v.object({ way: v.literal('three-answers'), answer: v.picklist(ANSWERS) }),
  v.object({ way: v.literal('order'), parts: v.pipe(v.array(text), v.maxLength(20)) }),
  v.object({ way: v.literal('leads'), pair: v.tuple([text, text]) }),
  v.object({ way: v.literal('touch'), terminal: text }),
  v.object({ way: v.literal('cursor'), at: v.pipe(v.number(), v.finite()) }),
]);
export type Given = v.InferOutput<typeof givenSchema>;

/** Moments this near, s, are the same step of a trace. */
const SAME_MOMENT = 1e-6;

const isPair = (a: readonly [string, string], b: readonly [string, string]): boolean =>
  (a[0] === b[0] && a[1] === b[1]) || (a[0] === b[1] && a[1] === b[0]);

/** In the unit that was asked; null where it is one of another quantity. */
function valueIn(unit: AskedUnit, given: Extract<Given, { way: 'figure' }>): number | null {
  return quantityOf(given.unit) === quantityOf(unit) ? (given.value * IN_SI[given.unit]) / IN_SI[unit] : null;
}

/** A hair beyond the tolerance is rounding: 0.3 is within 0.3. */
const isNear = (value: number, answer: number, tolerance: number): boolean =>
  Math.abs(value - answer) <= tolerance * (1 + 1e-9);

/** What is allowed for the answer may be many times a mistake that is small beside it: no more than a tenth of that. */
const nearMistake = (tolerance: number, mistake: number): number =>
  Math.min(tolerance, 0.1 * Math.abs(mistake));

/** What is given in another way than was asked is not right. */
export function isRight(question: Question, given: Given): boolean {
  switch (question.way) {
    case 'figure': {
      const value = given.way === 'figure' ? valueIn(question.unit, given) : null;
      return value !== null && isNear(value, question.answer, question.tolerance);
    }
    case 'choice':
      return given.way === 'choice' && given.id === question.answer;
    case 'three-answers':
      return given.way === 'three-answers' && given.answer === question.answer;
    case 'order':
      return (
        given.way === 'order' &&
        given.parts.length === question.answer.length &&
        given.parts.every((part, i) => part === question.answer[i])
      );
    case 'leads':
      return given.way === 'leads' && question.answers.some((pair) => isPair(pair, given.pair));
    case 'touch':
      return given.way === 'touch' && given.terminal === question.answer;
    case 'cursor':
      return given.way === 'cursor' && Math.abs(given.at - question.answer) < SAME_MOMENT;
  }
}

/** A figure whose unit belongs to another quantity. */
export const OTHER_QUANTITY = 'other-quantity';

/** The misconception that arrives at this, by its id within the kind; null where it is right, or none that has a name. */
export function mistakeOf(question: Question, given: Given): string | null {
  if (isRight(question, given)) return null;
  switch (question.way) {
    case 'figure': {
      if (given.way !== 'figure') return null;
      const value = valueIn(question.unit, given);
      const near = question.mistakes.find((one) =>
        // Whoever takes per cent for amperes may write either behind the figure.
        isNear(value ?? given.value, one.value, nearMistake(question.tolerance, one.value)),
      );
      return near?.id ?? (value === null ? OTHER_QUANTITY : null);
    }
    case 'choice':
      return given.way === 'choice' && question.choices.some(({ id }) => id === given.id) ? given.id : null;
    case 'three-answers':
      return given.way === 'three-answers' ? given.answer : null;
    case 'order':
      return given.way === 'order' ? firstOutOfPlace(given.parts, question.answer) : null;
    case 'leads':
      return given.way === 'leads'
        ? (question.mistakes.find(({ pair }) => isPair(pair, given.pair))?.id ?? null)
        : null;
    case 'touch':
      return given.way === 'touch'
        ? (question.mistakes.find(({ terminal }) => terminal === given.terminal)?.id ?? null)
        : null;
    case 'cursor':
      return given.way === 'cursor'
        ? (question.mistakes.find(({ at }) => Math.abs(at - given.at) < SAME_MOMENT)?.id ?? null)
        : null;
  }
}

const firstOutOfPlace = (parts: readonly string[], answer: readonly string[]): string | null =>
  parts.find((part, i) => part !== answer[i]) ?? null;
