/** The whole drawing of one view as data, leads apart: what the component draws and the tests look at. */

import { cableFigure } from './cable.ts';
import type { Figure } from './figure.ts';
import { EMPTY, together } from './figure.ts';
import { circuitFigure, originFigure } from './origin.ts';
import type { Scene } from './scene.ts';
import { standInFigure } from './standIn.ts';
import { supplyFigure } from './supply.ts';
import { unitFigure } from './unit.ts';

export function planOf(scene: Scene): Figure {
  const { view } = scene.layout;
  const shows = (part: typeof view) => view === 'whole' || view === part;
  return together(
    shows('origin') ? together(supplyFigure(scene), originFigure(scene)) : EMPTY,
    shows('origin') || shows('unit') ? circuitFigure(scene) : EMPTY,
    shows('unit') || shows('outlet') ? together(cableFigure(scene), unitFigure(scene)) : EMPTY,
    shows('outlet') ? standInFigure(scene) : EMPTY,
  );
}
