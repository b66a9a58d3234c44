/** Where on the drawing the things stand that a hand can move before the lock, and how large a target each has. */
import type { Hand, HandTargets, Target } from './hands.ts';
import type { Layout, Shown } from './layout.ts';
import { LID } from './unit.ts';
import { UPRIGHT_HANDS } from './upright.ts';

/** The hands that there are in a view, in the order of the installation; none in a strip. */
export function handsOf(layout: Layout | Shown): HandTargets {
  switch (layout.view) {
    case 'strip':
      return new Map();
    case 'upright':
      return UPRIGHT_HANDS;
    default:
      return inColumns(layout as Layout);
  }
}

function inColumns(layout: Layout): HandTargets {
  const { view, columns, rows, lives, bottom, plugX, height } = layout;
  const { incoming, origin, unitLeft, unitRight, standInLeft, standInRight } = columns;
  const first = rows[lives[0] ?? 'N'];
  const between = (left: number, top: number, right: number, foot: number): Target => ({
    left,
    top,
    width: right - left,
    height: foot - top,
  });
  const shows = (part: typeof view) => view === 'whole' || view === part;
  return new Map<Hand, Target>([
    ...(shows('origin')
      ? ([
          ['main-switch', between(incoming - 6, first - 12, incoming + 51, rows.N + 66)],
          ['circuit', between(incoming + 53, first - 12, origin + 2, rows.N + 66)],
        ] as const)
      : []),
    ...(shows('unit')
      ? ([
          ['conductors', between(Math.max(0, unitLeft - 84), first - 14, unitLeft - 1, rows.PE - 18)],
          ['cover', between(unitLeft, bottom - LID, unitRight, bottom)],
        ] as const)
      : []),
    ...(shows('outlet')
      ? ([
          ['plug', between(plugX - 32, first - 14, plugX + 32, Math.min(bottom + 24, height))],
          ['request', between(standInLeft + 64, rows.CP - 52, standInRight - 2, rows.CP - 4)],
        ] as const)
      : []),
  ]);
}
