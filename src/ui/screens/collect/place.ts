/** Addresses of attempts among those that were collected: the row's place, and a moment of its log. */

export const addressOf = (row: number, entry: number | null = null): string =>
  `/collect/${row}${entry === null ? '' : `-${entry}`}`;

/** Null where the address names none. */
export function placeIn(
  address: string | null,
): { readonly row: number; readonly entry: number | null } | null {
  const [, row, entry] = /^(\d{1,5})(?:-(\d{1,5}))?$/.exec(address ?? '') ?? [];
  return row === undefined ? null : { row: Number(row), entry: entry === undefined ? null : Number(entry) };
}
