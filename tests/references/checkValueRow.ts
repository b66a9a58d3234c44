/**
 * The shape of a check value: what is put in, and one or more things computed from it by the laws,
 * each with the published figure and how near it has to come.
 */

import type { ReferenceRow } from './row.ts';

/** Without a tolerance the result has to be the same; with one, a number no further away. */
export interface Check {
  readonly what: string;
  readonly expected: number | string | boolean;
  readonly tolerance?: number;
  readonly compute: () => number | string | boolean;
}

export interface CheckValue extends ReferenceRow {
  readonly id: string;
  readonly input: string;
  readonly checks: readonly [Check, ...Check[]];
}
