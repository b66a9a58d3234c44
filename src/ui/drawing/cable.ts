/** From the unit to the vehicle stand-in: the tether, or the customer's cable, which goes with the stand-in. */
import type { Figure } from './figure.ts';
import { EMPTY, label, labels, path, shapes, together } from './figure.ts';
import type { Conductor } from './layout.ts';
import { namesAt } from './layout.ts';
import type { Scene } from './scene.ts';
import { amount } from './scene.ts';
import { dimension, uprightResistor } from './symbols.ts';

/** How far the resistor that codes a plug stands from the plug's contacts: at the unit, at the far end, and there in a part's view. */
const PLUG = 34;
const FAR_PLUG = 26;
const NEAR_FAR_PLUG = 16;

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
  const heading = view === 'outlet' ? columns.unitRight + 12 : columns.unitRight + 10;
  const coding = isTether ? sheet.cable.coding : position.coding;
  const isChanged = !isTether && position.coding !== now.coding;
  const size = `${amount(sheet.cable.length)} m, ${amount(sheet.cable.area)} mm²`;
  const title = isTether ? 'tether' : view === 'whole' ? 'customer’s cable' : 'cable';
  return together(
    labels(label(heading, 16, title, { bold: true })),
    view === 'whole'
      ? labels(label(heading, 30, codingWords(coding, isChanged)))
      : labels(
          label(heading, 30, `${amount(sheet.cable.length)} m`),
          label(heading, 44, `${amount(sheet.cable.area)} mm²`),
        ),
    hangs
      ? shapes(
          ...conductors.map((x) => path(x === 'PE' ? 'earth' : 'conductor', `M${from} ${rows[x]}H${to}`)),
        )
      : EMPTY,
    view === 'whole' && to - from > 90
      ? together(
          shapes(dimension(from, to, rows.N + 25)),
          labels(label((from + to) / 2, rows.N + 19, size, { anchor: 'middle' })),
        )
      : EMPTY,
    names(scene),
    plugs(scene, outletX),
  );
}

const codingWords = (coding: number | null, isChanged: boolean): string =>
  `${coding === null ? 'no coding' : `coded ${coding} A`}${isChanged ? ', at the lock' : ''}`;

/** The names where conductors leave the unit; at the far end they stand in the stand-in. */
function names({ papers, layout }: Scene): Figure {
  const { columns, rows } = layout;
  const isTether = papers.sheet.outlet === 'tethered';
  const x = columns.unitRight + 10;
  const shown = namesAt(layout).filter((name) => name !== 'PP' || !isTether);
  return labels(...shown.map((name) => label(x, rows[name] - 5, name)));
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
  const back = view === 'whole' ? FAR_PLUG : NEAR_FAR_PLUG;
  const farEnd =
    isTether || position.plugged
      ? plug(outletX, outletX - back)
      : plug(columns.cableStart, columns.cableStart + back);
  return together(
    view === 'unit' ? EMPTY : farEnd,
    !isTether && position.plugged ? plug(columns.unitRight, columns.unitRight + PLUG) : EMPTY,
  );
}
