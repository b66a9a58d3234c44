/** Readings as several tables write them: the expected one first, its range after. */
import type { Values } from '../verification/testAction.ts';
import { milliseconds, num, smallOhms } from './values.ts';

/** A limit as its sum has it, with no nought at its end below a tenth: 0.05 and not 0.050. */
export const limitOhms = (value: number): string => smallOhms(value).replace(/^(0\.0\d)0$/, '$1');

export const ohms = (value: number): string => value.toFixed(value < 10 ? 2 : 1);

/** Below this an instrument of two digits after the point shows nothing, Ω. */
const NOTHING = 0.005;

/** What a loop or a conductor should read, Ω. A range that begins at nothing has its upper end alone. */
export function aboutOhms(about: number, least: number, greatest: number): string {
  const range =
    least < NOTHING ? `at most ${limitOhms(greatest)} Ω` : `${ohms(least)} to ${ohms(greatest)} Ω`;
  return `about ${about < NOTHING ? '0' : ohms(about)} Ω (${range})`;
}

/** How far a reading may lie from its sum, Ω, where a trainee is to say the sum. */
export function marginOhms(sum: number, least: number, greatest: number): string {
  const [less, more] = [(sum - least).toFixed(2), (greatest - sum).toFixed(2)];
  return less === more ? `(to within ${more} Ω)` : `(${less} Ω less to ${more} Ω more)`;
}

/** The time in which an outlet has to be dead: that of the test’s limit. */
export const offWithin = (v: Values): string => `${milliseconds(num(v, 'opening-greatest'))} ms`;

/** Times in which an outlet that opens late might be dead: three and a half times what is allowed, or ten times. */
export function perhaps(v: Values): string {
  const text = (seconds: number) =>
    seconds < 1 ? `${milliseconds(seconds)} ms` : `${Number(seconds.toPrecision(2))} s`;
  const limit = num(v, 'opening-greatest');
  return `perhaps ${text(3.5 * limit)} or ${text(10 * limit)}`;
}

/**
 * Examples of what a faulty unit would show beside a range that a line states: so far below its least or above its greatest
 * figure, also where whoever set the job has put another range there.
 */
export const below = (v: Values, name: string, by: number, digits = 0): string =>
  figure(num(v, `${name}-least`) - by, digits);
export const above = (v: Values, name: string, by: number, digits = 0): string =>
  figure(num(v, `${name}-greatest`) + by, digits);

const figure = (value: number, digits: number): string => value.toFixed(digits).replace('-', '−');

/** What is said of a figure that something else would give, as long as that lies outside the range. */
export const unlessWithin = (v: Values, name: string, value: number, text: string): string =>
  value >= num(v, `${name}-least`) && value <= num(v, `${name}-greatest`) ? '' : text;

/** What a live line shows at an outlet that should be dead. */
export const LIVE_LINE = 'about 230 V from a line to PE at the outlet';
