/** From the unit to the vehicle stand-in: the tether, or the customer's cable, which goes with the stand-in. */
import type { Figure } from './figure.ts';
import { dashedIf, EMPTY, label, labels, path, rect, shapes, together } from './figure.ts';
import { handText, isChanged } from './hands.ts';
import type { Conductor } from './layout.ts';
import { heading, namesAt } from './layout.ts';
import type { Scene } from './scene.ts';
import { amount } from './scene.ts';
import { dimension, uprightResistor } from './symbols.ts';

/** How far the resistor that codes a plug stands from the plug's contacts: at the unit, at the far end, and there in a part's view. */
const PLUG = 34;
const FAR_PLUG = 26;
const NEAR_FAR_PLUG = { in: 24, out: 16 } as const;
/** Half as wide as a plug is. */
const BODY = 9;

export function cableFigure(scene: Scene): Figure {
  const { papers, layout, position, now } = scene;
  const { columns, rows, lives, view, outletX } = layout;
  const { sheet } = papers;
  const isTether = sheet.outlet === 'tethered';
  const isWhole = isTether || position.plugged;
  const hangs = isWhole || view !== 'unit';
  const from = isWhole ? columns.unitRight : columns.cableStart;
  const to = isTether && !position.plugged ? columns.tetherEnd : columns.standInLeft;
  const conductors: readonly Conductor[] = [...lives, 'CP', 'PE'];
  const x = view === 'outlet' ? columns.unitRight + 12 : columns.unitRight + 10;
  const coding = isTether ? sheet.cable.coding : position.coding;
  const codingChanges = !isTether && position.coding !== now.coding;
  const metres = `${amount(sheet.cable.length)} m`;
  const area = `${amount(sheet.cable.area)} mm²`;
  const title = isTether ? 'tether' : 'cable';
  return together(
    view === 'whole'
      ? heading(
          layout,
          x,
          title,
          coding === null ? 'no coding' : `coded ${coding} A`,
          ...(codingChanges ? ['at the lock'] : []),
        )
      : heading(layout, x, title, metres, area),
    view === 'unit' ? EMPTY : plugBody(scene),
    hangs
      ? shapes(
          ...conductors.map((x) => path(x === 'PE' ? 'earth' : 'conductor', `M${from} ${rows[x]}H${to}`)),
        )
      : EMPTY,
    view === 'whole' && to - from > 70
      ? together(
          shapes(dimension(from, to, rows.N + 25)),
          labels(
            label((from + to) / 2, rows.N + 19, metres, { anchor: 'middle' }),
            label((from + to) / 2, rows.N + 36, area, { anchor: 'middle' }),
          ),
        )
      : EMPTY,
    names(scene),
    plugs(scene, outletX),
  );
}

/** The names where conductors leave the unit; at the far end they stand in the stand-in. */
function names({ papers, layout, position }: Scene): Figure {
  const { columns, rows } = layout;
  const isTether = papers.sheet.outlet === 'tethered';
  // Beside a plug in the socket.
  const x = columns.unitRight + (isTether || !position.plugged ? 10 : 2 * BODY + 4);
  const shown = namesAt(layout).filter((name) => name !== 'PP' || !isTether);
  return labels(...shown.map((name) => label(x, rows[name] - 4, name)));
}

/**
 * The plug that a hand moves, and the word of its state: a tether's at the stand-in, of a customer's cable the one at the
 * unit. Out, it stands clear; in, the two meet.
 */
function plugBody({ papers, layout, position, now, acts }: Scene): Figure {
  const { columns, rows, lives, bottom, plugX, height, lineYs } = layout;
  const { unitRight, tetherEnd, cableStart, standInLeft } = columns;
  const isTether = papers.sheet.outlet === 'tethered';
  const [open, shut] = isTether ? [tetherEnd, standInLeft - BODY] : [cableStart, unitRight + BODY];
  const x = position.plugged ? shut : open;
  const first = rows[lives[0] ?? 'N'];
  const { thing, state } = handText('plug', position);
  const overhang = lineYs.length === 0 ? 9 : 14;
  return together(
    shapes(
      ...dashedIf(
        isChanged('plug', position, now),
        rect('symbol', x - BODY, first - overhang, 2 * BODY, rows.PE - first + 2 * overhang),
      ),
    ),
    labels(
      label(plugX, Math.min(bottom + 16, height - 4), `${thing} `, {
        anchor: 'middle',
        state: { text: state, acts },
      }),
    ),
  );
}

/** What codes a plug: a resistor from PP to PE inside it (IEC 61851-1:2017 Annex B). */
function plugs({ papers, layout, position }: Scene, outletX: number): Figure {
  const { columns, rows, view } = layout;
  const isTether = papers.sheet.outlet === 'tethered';
  const isCoded = isTether || position.coding !== null;
  const plug = (from: number, to: number) =>
    together(
      shapes(path('conductor', `M${from} ${rows.PP}H${to}`)),
      isCoded ? uprightResistor(to, rows.PP, rows.PE) : EMPTY,
    );
  const back = view === 'whole' ? FAR_PLUG : NEAR_FAR_PLUG[position.plugged ? 'in' : 'out'];
  const farEnd =
    isTether || position.plugged
      ? plug(outletX, outletX - back)
      : plug(columns.cableStart, columns.cableStart + back);
  return together(
    view === 'unit' ? EMPTY : farEnd,
    !isTether && position.plugged ? plug(columns.unitRight, columns.unitRight + PLUG) : EMPTY,
  );
}
