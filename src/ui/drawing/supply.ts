/** The supply as far as the origin: the source's windings, its earth, and the way of earthing the installation. */
import type { Figure, Label } from './figure.ts';
import { EMPTY, joint, label, labels, path, shapes, together } from './figure.ts';
import { heading } from './layout.ts';
import type { Scene } from './scene.ts';
import { earthSymbol, winding } from './symbols.ts';

const EARTH = 'distributor’s earth';
const OFF = 'earthing conductor off';
const HOUSE = 'house’s earth';
const NEXT = 'next point';
/** Between the conductors that rise to the next point, how far over the first row they rise, and their name below it. */
const RISERS = { apart: 5, over: 9, name: 16 };

export function supplyFigure(scene: Scene): Figure {
  const { papers, layout } = scene;
  const { columns, lives, rows } = layout;
  const { star, coil, incoming } = columns;
  const first = rows[lives[0] ?? 'N'];
  const earthing = papers.site.earthing;
  const stops = lives.slice(1).map((x) => joint(star, rows[x]));
  return together(
    heading(
      layout,
      4,
      'supply',
      papers.site.house === undefined ? earthing : `${earthing}, house PME`,
      papers.site.phases === 1 ? '1 phase' : '3 phases',
    ),
    shapes(
      path('conductor', `M${star} ${first}V${rows.PE + 22}`),
      earthSymbol(star, rows.PE + 22),
      ...stops,
      ...lives.flatMap((x) =>
        x === 'N'
          ? [path('conductor', `M${star} ${rows.N}H${incoming}`)]
          : [
              path('conductor', `M${star} ${rows[x]}H${coil[0]}M${coil[1]} ${rows[x]}H${incoming}`),
              winding(coil[0], coil[1], rows[x]),
            ],
      ),
    ),
    papers.site.nextPoint === undefined ? EMPTY : nextPointFigure(scene),
    earthing === 'TN-S' ? separate(scene) : earthing === 'TN-C-S' ? combined(scene) : ownElectrode(scene),
  );
}

/** Where the tails of the next point part, before the main switch: each conductor rises from its row. */
function nextPointFigure({ layout: { columns, lives, rows } }: Scene): Figure {
  const top = rows[lives[0] ?? 'N'] - RISERS.over;
  const left = columns.met - 18;
  const xs = lives.map((_, i) => left + RISERS.apart * i);
  return together(
    shapes(
      ...lives.flatMap((x, i) => [
        joint(xs[i] ?? left, rows[x]),
        path('conductor', `M${xs[i] ?? left} ${rows[x]}V${top}m-2 4l2 -4l2 4`),
      ]),
    ),
    labels(label(left - 4, rows[lives[0] ?? 'N'] + RISERS.name, NEXT, { anchor: 'end' })),
  );
}

/** A gap in the earthing conductor where the trainee has taken it off, just before the main earthing terminal. */
const lastBit = ({ removed }: Scene, what: 'earthing-conductor' | 'electrode', from: string, x: number) =>
  removed.includes(what) ? `${from}H${x - 20}m0 0l4 -8` : `${from}H${x}`;

function separate(scene: Scene): Figure {
  const { columns, rows } = scene.layout;
  const { star, met } = columns;
  return together(
    shapes(
      joint(star, rows.PE),
      path('earth', lastBit(scene, 'earthing-conductor', `M${star} ${rows.PE}`, met)),
    ),
    labels(besideEarth(scene)),
    taken(scene, 'earthing-conductor'),
  );
}

function combined(scene: Scene): Figure {
  const { layout } = scene;
  const { columns, rows } = layout;
  const { parting, met, coil } = columns;
  return together(
    shapes(
      joint(parting, rows.N),
      path('earth', lastBit(scene, 'earthing-conductor', `M${parting} ${rows.N}V${rows.PE}`, met)),
    ),
    labels(
      label((coil[0] + coil[1]) / 2, rows.N - 5, 'PEN', { anchor: 'middle' }),
      layout.view === 'whole'
        ? label(parting + 14, (layout.terminals.get('earthing')?.y ?? rows.PE) + 5, EARTH)
        : besideEarth(scene),
    ),
    taken(scene, 'earthing-conductor'),
  );
}

function ownElectrode(scene: Scene): Figure {
  const { columns, rows } = scene.layout;
  const { met } = columns;
  const isOff = scene.removed.includes('electrode');
  return together(
    scene.papers.site.house === undefined ? EMPTY : houseEarth(scene),
    shapes(
      path('earth', isOff ? `M${met} ${rows.PE + 18}V${rows.PE + 22}` : `M${met} ${rows.PE}V${rows.PE + 22}`),
      earthSymbol(met, rows.PE + 22),
    ),
    labels(label(met + 16, rows.PE + 16, isOff ? 'electrode, off' : 'electrode')),
  );
}

/** The house's earth, which parts from the neutral and ends at a terminal of its own. */
function houseEarth({ layout }: Scene): Figure {
  const { columns, rows, view } = layout;
  const { parting, star, coil } = columns;
  const y = layout.terminals.get('house')?.y ?? rows.PE;
  return together(
    shapes(joint(parting, rows.N), path('earth', `M${parting} ${rows.N}V${y}`)),
    labels(
      label((coil[0] + coil[1]) / 2, rows.N - 5, 'PEN', { anchor: 'middle' }),
      view === 'whole' ? label(parting + 14, y + 5, HOUSE) : label(star + 16, rows.PE + 16, 'house'),
    ),
  );
}

const taken = (scene: Scene, what: 'earthing-conductor'): Figure =>
  scene.layout.view === 'whole' && scene.removed.includes(what)
    ? labels(label(scene.layout.columns.star + 16, scene.layout.rows.PE + 33, OFF))
    : EMPTY;

/** In a part there is room for one line. */
const besideEarth = ({ layout: { columns, rows, view }, removed }: Scene): Label =>
  label(
    columns.star + 16,
    rows.PE + 16,
    view !== 'whole' && removed.includes('earthing-conductor') ? OFF : EARTH,
  );
