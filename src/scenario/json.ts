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
  const written = asWrittenHere(own);
  if (written !== undefined) return { ok: true, value: written };
  if (own.trim() === '') return failed('empty: a JSON object is expected');
  const { slips, more } = slipsIn(own, { deepest: DEEPEST, most: MOST_LISTED });
  if (slips.length > 0) return { ok: false, problems: listed([...slips, ...furtherProblems(more)]) };
  return { ok: true, value: JSON.parse(own) };
}

/** What none of our own files holds, and what writing it once more would not show: a name or half a character. */
const NEVER_OURS = ['"__proto__"', '\\ud', `\n${' '.repeat(DEEPEST)}`];

/**
 * The value of a text that is, to the last character, what this program would write of it, so that nothing in it can be
 * hidden by being read; undefined of any other, which is gone through for slips. Most files that a class hands in are so.
 */
function asWrittenHere(text: string): unknown {
  if (!text.endsWith('}\n') || NEVER_OURS.some((never) => text.includes(never))) return undefined;
  try {
    const value: unknown = JSON.parse(text);
    return `${JSON.stringify(value, null, 1)}\n` === text ? value : undefined;
  } catch {
    return undefined;
  }
}
