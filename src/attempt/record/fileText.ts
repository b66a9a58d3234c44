/** An attempt's file as it is written; how one is read is in file.ts. */
import canonicalize from 'canonicalize';
import type { Attempt } from './attempt.ts';
import { asWritten } from './written.ts';

/**
 * The text of an attempt's file: keys in one order, so that the same attempt is the same text. One of an older format
 * goes out as it came, with the marks that go with it.
 */
export function makeAttemptText(attempt: Attempt): string {
  const { marks } = attempt;
  const file = { ...asWritten(attempt), ...(marks === undefined ? {} : { marks }) };
  return `${JSON.stringify(JSON.parse(canonicalize(file) ?? 'null'), null, 1)}\n`;
}
