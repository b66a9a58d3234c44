/**
 * The 78 published check values on the bench: each is shown there by its id, or there is a reason why the laws alone
 * can answer it. What a row says in figures is compared with the laws in tests/laws.
 */
import { describe, expect, test } from 'vitest';
import { CHECK_VALUES } from '../references/checkValues.ts';
import { INSTALLATION_ROWS } from './checkValues/installationRows.ts';
import { LEVEL_ROWS } from './checkValues/levelRows.ts';
import { OFFER_ROWS } from './checkValues/offerRows.ts';
import { RESIDUAL_ROWS } from './checkValues/residualRows.ts';
import type { BenchRows } from './checkValues/row.ts';
import { TIME_ROWS } from './checkValues/timeRows.ts';

const TABLES: readonly BenchRows[] = [OFFER_ROWS, LEVEL_ROWS, TIME_ROWS, RESIDUAL_ROWS, INSTALLATION_ROWS];

/** Rows that no bench can show, and why. */
const LAWS_ALONE: Readonly<Record<string, string>> = {
  V57: 'the same limit as V56 before it is rounded: arithmetic, which no reading could tell from the rounded one',
  V68: 'a table of greatest electrodes by rating: nothing is measured in it, and V69 shows the arithmetic behind it',
  V75: 'nothing on the bench is warmer or colder than 20 °C',
  V78: 'stored charge is gone at once in this model, so that a bench could not fail it',
};

const NUMBERS = Array.from({ length: 78 }, (_, i) => `V${i + 1}`);

const rows = TABLES.flatMap((table) =>
  Object.entries(table).map(([id, row]) => ({
    id,
    ...row,
    source: CHECK_VALUES.find((value) => value.id === id)?.source ?? 'no such check value',
  })),
);

describe('on the bench', () => {
  test.each(rows)('$id $behaviour ($source)', ({ behaves }) => {
    expect.hasAssertions();
    behaves();
  });
});

test('V1 to V78: each is shown on the bench or left to the laws for a reason, and none twice', () => {
  expect([...rows.map(({ id }) => id), ...Object.keys(LAWS_ALONE)].sort()).toEqual([...NUMBERS].sort());
});
