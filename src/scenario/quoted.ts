/** What somebody else wrote (a name, a value, the name of a file), made fit for a line of a message or a terminal. */

/** Longest quotation, characters. */
const LONGEST = 60;

/**
 * C0, DEL and C1 move a terminal's cursor or change what it does, half a character is none, and the others turn the
 * order of a line about.
 */
const UNSEEN = /[\p{Cc}\p{Cs}\u202a-\u202e\u2066-\u2069]/gu;

/** Text with every control character written out as JSON escapes it; a line break too. */
export const visible = (text: string): string =>
  text.replace(UNSEEN, (c) => `\\u${c.charCodeAt(0).toString(16).padStart(4, '0')}`);

/** The same, cut after so many characters; no character is cut in two. */
export function shortened(text: string): string {
  if (text.length <= LONGEST) return visible(text);
  return `${visible(text.slice(0, LONGEST).replace(/[\ud800-\udbff]$/, ''))}…`;
}

export const quoted = (text: string): string => `"${shortened(text)}"`;
