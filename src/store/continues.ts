/** Whether one log of an attempt goes on where another ends. */
import canonicalize from 'canonicalize';
import type { Written } from '../attempt/record/written.ts';

/**
 * Whether the log begins with the whole of the other: by what stands in it, not by the hashes it claims. Where both are
 * whole and claim different marks, neither stands for the other: one of them was altered.
 */
export const continues = (longer: Written, shorter: Written): boolean =>
  longer.entries.length >= shorter.entries.length &&
  !(longer.entries.length === shorter.entries.length && claimOtherwise(longer, shorter)) &&
  text(longer.scenario) === text(shorter.scenario) &&
  text(longer.entries.slice(0, shorter.entries.length)) === text(shorter.entries);

const claimOtherwise = (x: Written, y: Written): boolean =>
  x.marks !== undefined && y.marks !== undefined && text(x.marks) !== text(y.marks);

const text = (value: unknown): string => canonicalize(value) ?? '';
