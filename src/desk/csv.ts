/**
 * Rows as CSV (RFC 4180): lines end in CR LF, quotes are doubled. A text that a spreadsheet would take for a formula gets an
 * apostrophe before it, so that what a learner typed is never worked out.
 */

export type Field = string | number | boolean | null;

/** What a spreadsheet takes for one, also behind spaces. */
const IS_FORMULA = /^\s*[=+\-@|%]|^[\t\r]/;
const NEEDS_QUOTES = /[",;\r\n\t']|^\s|\s$/;

function fieldText(field: Field): string {
  if (field === null) return '';
  if (typeof field !== 'string') return String(field);
  const text = IS_FORMULA.test(field) ? `'${field}` : field;
  return NEEDS_QUOTES.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

export const csvOf = (rows: readonly (readonly Field[])[]): string =>
  rows.map((row) => `${row.map(fieldText).join(',')}\r\n`).join('');
