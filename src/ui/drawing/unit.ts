/** The unit: a closed box with its terminals. No contact and no sensor inside it is ever drawn here. */
import type { Figure } from './figure.ts';
import { EMPTY, label, labels, path, rect, shapes, together } from './figure.ts';
import { partOf } from './layout.ts';
import type { Scene } from './scene.ts';
import { amount } from './scene.ts';

export function unitFigure({ papers, layout, position, now }: Scene): Figure {
  const { columns, top, bottom, view, terminals } = layout;
  const { sheet } = papers;
  const isCut = view === 'outlet';
  const left = isCut ? 0 : columns.unitLeft;
  const right = columns.unitRight;
  const middle = (left + right) / 2;
  const centre = (top + bottom) / 2 - 6;
  const words = [
    `${amount(sheet.ratedCurrent)} A`,
    ...(sheet.outlet === 'tethered' ? ['tethered'] : ['socket-outlet', 'type 2']),
    ...(position.unit === 'taken off' ? ['conductors', 'off'] : []),
  ];
  const isChanged = position.cover !== now.cover;
  return together(
    labels(label(left + (isCut ? 4 : 0), 16, 'unit', { bold: true })),
    shapes(
      isCut
        ? path('enclosure', `M0 ${top}H${right}V${bottom}H0`)
        : rect('enclosure', left, top, right - left, bottom - top),
    ),
    isCut
      ? EMPTY
      : labels(
          label(left, 30, `cover ${position.cover}`),
          ...(isChanged ? [label(left, 44, 'at the lock')] : []),
          ...words.map((word, i) =>
            label(middle, centre + 15 * i - 7.5 * (words.length - 1), word, { anchor: 'middle' }),
          ),
        ),
    [...terminals.keys()].some((t) => partOf(t) === 'unit')
      ? labels(label(middle + 14, bottom + 16, 'exposed metal'))
      : EMPTY,
  );
}
