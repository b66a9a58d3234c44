/** What an option says that asks for one whole number. */
import { quoted } from '../scenario/quoted.ts';

/** The number, or what is wrong with it. */
export function wholeNumber(
  option: string,
  given: readonly string[] | undefined,
  least: number,
  most: number,
): number | string {
  const expected = `a whole number from ${least} to ${most} is expected`;
  if (given === undefined) return `${option} is missing: ${expected}`;
  const [text = ''] = given;
  const value = /^\d+$/.test(text) ? Number(text) : Number.NaN;
  return given.length === 1 && value >= least && value <= most
    ? value
    : `${option} ${quoted(given.join(' '))} does not fit: ${expected}`;
}
