/**
 * What a dictionary's rows are to each other: which tests let a cause be seen, which tell two causes apart, and which
 * causes read the same.
 */
import type { Cell } from './cell.ts';
import { difference, distance } from './cell.ts';
import type { Row } from './row.ts';

/** Reading the papers, or the sheet of a handover, tells them apart before any test is done. */
export const toldBeforehand = (x: Row, y: Row): boolean =>
  x.papers !== y.papers || x.sheet === null || y.sheet === null || sheetsDiffer(x.sheet, y.sheet);

const sheetsDiffer = (x: NonNullable<Row['sheet']>, y: NonNullable<Row['sheet']>): boolean =>
  [...x].some(([test, cell]) => {
    const other = y.get(test);
    return other !== undefined && difference(cell, other) !== null;
  });

/**
 * Whether this test shows a difference; false where one of them is never brought to it, for the trainee has stopped. What
 * breaks a line that nothing wrong keeps is told from nothing wrong, however close its figures are.
 */
export function splits(x: Row, y: Row, test: string): boolean {
  const one = x.cells.get(test);
  const other = y.cells.get(test);
  if (one === undefined || other === undefined) return false;
  return (
    difference(one, other) !== null ||
    (y.cause.of === 'sound' && breaksMore(one, other)) ||
    (x.cause.of === 'sound' && breaksMore(other, one))
  );
}

const breaksMore = ({ broken }: Cell, usual: Cell): boolean =>
  broken.some((line) => !usual.broken.includes(line));

/** The tests that show a difference, in their order. */
export const splitBy = (x: Row, y: Row): readonly string[] =>
  [...x.cells.keys()].filter((test) => splits(x, y, test));

/** No difference in the papers, on the sheet, or in any test that both are brought to. */
export const readsTheSame = (x: Row, y: Row): boolean =>
  !toldBeforehand(x, y) && ![...x.cells.keys()].some((test) => splits(x, y, test));

/**
 * The tests in which it reads otherwise than nothing wrong would, or breaks a line or a limit that nothing wrong would
 * not. With other papers than that the tests are not the same: there what is broken counts alone.
 */
export const seenBy = (row: Row, sound: Row): readonly string[] =>
  [...row.cells]
    .filter(([test, { broken }]) => {
      const usual = sound.cells.get(test)?.broken ?? [];
      const breaks = broken.some((line) => !usual.includes(line));
      return breaks || (row.papers === sound.papers && splits(row, sound, test));
    })
    .map(([test]) => test);

/** Whether anything shows it: a test, or what was handed over. */
export const shows = (row: Row, sound: Row): boolean => row.sheet === null || seenBy(row, sound).length > 0;

/** Less is less visible: by the tests that see it, then by how far its readings are from those of nothing wrong. */
export function visibility(row: Row, sound: Row): readonly [number, number] {
  if (row.sheet === null) return [Infinity, 0];
  const apart = [...row.cells].reduce((sum, [test, cell]) => {
    const usual = sound.cells.get(test);
    return usual === undefined ? sum : sum + distance(cell, usual);
  }, 0);
  return [seenBy(row, sound).length, apart];
}
