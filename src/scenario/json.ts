/** JSON text, read safely: what cannot be read is told problem by problem, with its place (jsonText.ts). */
import { slipsIn } from './jsonText.ts';
import { furtherProblems, listed, MOST_LISTED } from './problem.ts';
import type { Parsed } from './problems.ts';
import { LARGEST_FILE, tooLarge } from './problems.ts';

const DEEPEST = 40;
const BYTE_ORDER_MARK = '\ufeff';

const failed = (message: string): Parsed<never> => ({ ok: false, problems: [{ path: '', message }] });

/** JSON text as a value, up to so many characters; nothing in it is ever executed. */
export function parseJson(text: string, largest = LARGEST_FILE): Parsed<unknown> {
  if (text.length > largest) return failed(tooLarge(largest));
  const own = text.startsWith(BYTE_ORDER_MARK) ? text.slice(1) : text;
  if (own.trim() === '') return failed('empty: a JSON object is expected');
  const { slips, more } = slipsIn(own, { deepest: DEEPEST, most: MOST_LISTED });
  if (slips.length > 0) return { ok: false, problems: listed([...slips, ...furtherProblems(more)]) };
  return { ok: true, value: JSON.parse(own) };
}
