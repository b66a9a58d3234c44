/** How a slip in JSON text is said: where it is, what is there and what was expected, in words for who wrote it. */
import { quoted } from './quoted.ts';

/** Line and column of a place in a text, both from 1. */
export function placeIn(text: string, at: number): string {
  let line = 1;
  let begin = 0;
  for (let end = text.indexOf('\n'); end >= 0 && end < at; end = text.indexOf('\n', begin)) {
    line += 1;
    begin = end + 1;
  }
  return `line ${line}, column ${at - begin + 1}`;
}

/** Habits of other languages, and what JSON asks for instead. */
const HABITS: readonly (readonly [RegExp, string])[] = [
  [/^[-+]?(NaN|Infinity)\b/, 'NaN and Infinity are no JSON numbers'],
  [/^(\/[/*]|#)/, 'comments are no part of JSON: leave them out'],
  [/^'/, 'double quotes are expected, not single ones'],
  [/^[“”„‟«»‘’‚`]/, 'straight double quotes (") are expected'],
  [
    /^(True|TRUE|False|FALSE|None|Null|NULL|undefined)\b/,
    'only true, false and null are known, in small letters',
  ],
  [/^[-+]?0[xXbBoO]/, 'numbers are written with ten digits only'],
  [/^[\0\ufffd\ufeff]/, 'this is not plain UTF-8 text: save the file as UTF-8'],
];

/** What is at this place of a text, where something else was expected. */
export function whatIsAt(text: string, at: number, expected: string): string {
  if (at >= text.length) return `the text ends here, ${expected} is expected`;
  return habitAt(text, at) ?? `${named(wordAt(text, at))} is there, ${expected} is expected`;
}

/** What begins as a number and is none. */
export const noNumberAt = (text: string, at: number): string =>
  habitAt(text, at) ?? `${named(wordAt(text, at))} is no number as JSON writes it, such as 0.5, -3 or 1e6`;

function habitAt(text: string, at: number): string | undefined {
  const ahead = text.slice(at, at + 20);
  return HABITS.find(([form]) => form.test(ahead))?.[1];
}

/** A word, or one character. */
const wordAt = (text: string, at: number): string =>
  /^([\w.+-]+|[\s\S])/u.exec(text.slice(at, at + 80))?.[0] ?? '';

/** What may not stand inside double quotes, or that they are not closed. */
export function whatIsInText(text: string, begin: number, at: number): string {
  const c = text[at];
  if (c === undefined) return `the text ends here, but the quotes at ${placeIn(text, begin)} are not closed`;
  if (c === '\n' || c === '\r') return 'the line ends inside double quotes: close them, or write \\n';
  if (c === '\t') return 'a tab inside double quotes: write \\t';
  if (c !== '\\') return `${named(c)} inside double quotes is not allowed`;
  return `${quoted(text.slice(at, at + 2))} is no escape: \\" \\\\ \\/ \\b \\f \\n \\r \\t or \\u with four digits is expected`;
}

const named = (word: string): string =>
  /^[\p{Z}\p{C}]/u.test(word)
    ? `U+${(word.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`
    : quoted(word);
