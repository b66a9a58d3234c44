/**
 * The unit's plain face: its lid, its terminals, and what it said when it was last looked at. No contact and no sensor
 * inside it is ever drawn here.
 */
import type { Figure } from './figure.ts';
import { dashedIf, EMPTY, label, labels, path, rect, shapes, together } from './figure.ts';
import { handText, isChanged } from './hands.ts';
import { heading, partOf } from './layout.ts';
import type { BenchScene, Scene } from './scene.ts';
import { amount } from './scene.ts';
import { lid } from './symbols.ts';

/** The lid's line stands so far above the foot of the unit. */
export const LID = 64;

/** Height of what the unit says. */
export const SAID = 19;

export const unitWords = ({ papers: { sheet } }: BenchScene): string =>
  `${amount(sheet.ratedCurrent)} A, ${sheet.outlet === 'tethered' ? 'tethered' : 'socket-outlet'}`;

export function unitFigure(scene: Scene): Figure {
  const { layout, position, now } = scene;
  const { columns, rows, top, bottom, view, terminals } = layout;
  if (view === 'outlet')
    return together(
      heading(layout, 4, 'unit'),
      shapes(path('enclosure', `M0 ${top}H${columns.unitRight}V${bottom}H0`)),
    );
  const { unitLeft: left, unitRight: right } = columns;
  const middle = (left + right) / 2;
  const changes = isChanged('cover', position, now) || isChanged('conductors', position, now);
  return together(
    heading(layout, left, 'unit', unitWords(scene), ...(changes ? ['at the lock'] : [])),
    shapes(rect('enclosure', left, top, right - left, bottom - top)),
    face(scene, middle),
    cover(scene),
    [...terminals.keys()].some((t) => partOf(t) === 'unit')
      ? labels(
          view === 'whole'
            ? label(middle - 14, bottom + 16, 'exposed metal', { anchor: 'end' })
            : label(middle, rows.N + 54, 'exposed metal', { anchor: 'middle' }),
        )
      : EMPTY,
  );
}

function face({ layout: { top }, says }: Scene, middle: number): Figure {
  return says === null
    ? EMPTY
    : labels(
        label(middle, top + 22, 'says', { anchor: 'middle' }),
        label(middle, top + 44, says, { anchor: 'middle', bold: true, size: SAID }),
      );
}

function cover({ layout, position, now, acts }: Scene): Figure {
  const { columns, bottom } = layout;
  const { unitLeft: left, unitRight: right } = columns;
  const { thing, state } = handText('cover', position);
  const isClosed = position.cover === 'closed';
  return together(
    shapes(
      path('conductor', `M${left} ${bottom - LID}H${right}`),
      ...dashedIf(
        isChanged('cover', position, now),
        ...lid(left + 6, bottom - LID + 6, right - left - 12, LID - 12, isClosed),
      ),
    ),
    labels(
      label((left + right) / 2, bottom - LID / 2 + 4, `${thing} `, {
        anchor: 'middle',
        state: { text: state, acts },
      }),
    ),
  );
}
