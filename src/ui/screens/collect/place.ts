/** Addresses of attempts among those that were collected: the row's place, a moment of its log, or a test to be shown. */

export interface Place {
  readonly row: number;
  readonly entry: number | null;
  /** A test that is shown in class, at the step that tells it. */
  readonly shown: string | null;
}

export const addressOf = (row: number, entry: number | null = null): string =>
  `/collect/${row}${entry === null ? '' : `-${entry}`}`;

export const addressToShow = (row: number, test: string): string => `/collect/${row}-show-${test}`;

/** Null where the address names none. */
export function placeIn(address: string | null): Place | null {
  const [, row, entry, shown] = /^(\d{1,5})(?:-(\d{1,5})|-show-([a-z0-9-]+))?$/.exec(address ?? '') ?? [];
  if (row === undefined) return null;
  return { row: Number(row), entry: entry === undefined ? null : Number(entry), shown: shown ?? null };
}
