/**
 * The bench upright, as a phone shows it while a test is set up: origin, unit, cable and plug, stand-in, one under the
 * other, everything that a hand can move with a finger's target. The conductors are one line with their number.
 */
import type { Figure, Shape } from './figure.ts';
import { dashedIf, EMPTY, joint, label, labels, path, rect, shapes, together } from './figure.ts';
import type { Hand, HandTargets } from './hands.ts';
import { handText, isChanged } from './hands.ts';
import type { Shown } from './layout.ts';
import { oddLines } from './oddWords.ts';
import type { BenchScene } from './scene.ts';
import { amount } from './scene.ts';
import { vehicleCircuit } from './standIn.ts';
import { cross, lid } from './symbols.ts';
import { SAID, unitWords } from './unit.ts';

const WIDTH = 320;
const LEFT = 8;
const RIGHT = WIDTH - LEFT;

/** Down the page, in drawing units. */
const Y = {
  origin: 4,
  /** Where the tails of a next point part, and the origin's box under them. */
  tails: 6,
  beside: 11,
  originFoot: 90,
  run: 102,
  unit: 114,
  lid: 154,
  unitFoot: 199,
  standIn: 246,
  foot: 316,
};
/** So wide are the lines of what is out of the ordinary. */
const ODD_ROOM = WIDTH - LEFT - 10;
/** The line through main switch and breaker, and where the circuit comes to the unit. */
const LINE = 40;
const DROP = 226;
const CABLE = [150, 158] as const;
/** As far as the tails of the next point are drawn. */
const NEXT = 240;

export const UPRIGHT_HANDS: HandTargets = new Map([
  ['main-switch', { left: 0, top: 0, width: 208, height: 46 }],
  ['circuit', { left: 0, top: 46, width: 208, height: 46 }],
  ['conductors', { left: 210, top: 68, width: 108, height: 45 }],
  ['cover', { left: LEFT, top: Y.lid, width: RIGHT - LEFT, height: 45 }],
  ['plug', { left: 130, top: 200, width: RIGHT - 130, height: 46 }],
  ['request', { left: 100, top: 247, width: RIGHT - 100, height: 68 }],
]);

export function uprightLayout({ position }: BenchScene): Shown {
  const odd = oddLines(position, ODD_ROOM).length;
  return {
    view: 'upright',
    width: WIDTH,
    height: Y.foot + 2 + (odd === 0 ? 0 : 2) + 14 * odd,
    terminals: new Map(),
  };
}

export const uprightFigure = (scene: BenchScene): Figure =>
  together(origin(scene), run(scene), unit(scene), cable(scene), standIn(scene));

const words = (scene: BenchScene, hand: Hand, x: number, y: number, anchor: 'start' | 'middle' = 'start') => {
  const { thing, state } = handText(hand, scene.position);
  return label(x, y, `${thing} `, { anchor, state: { text: state, acts: scene.acts } });
};

/** A make contact in an upright line. */
const contact = (top: number, foot: number, closed: boolean): Shape =>
  path('contact', `M${LINE} ${foot}${closed ? `V${top}` : `L${LINE - 9} ${top + 3}`}`);

function origin(scene: BenchScene): Figure {
  const { papers, position, now } = scene;
  const { breaker, residualDevice } = papers.site.circuit;
  const isOn = position.supply === 'on';
  const isAlone = papers.site.nextPoint === undefined;
  const top = isAlone ? Y.origin : Y.beside;
  // What is said of the origin begins under the name of the next point.
  const said = (line: number, text: string, bold = false) =>
    label(RIGHT, 14 * (line + (isAlone ? 0 : 1)), text, { anchor: 'end', bold });
  return together(
    isAlone ? EMPTY : nextPoint,
    shapes(
      rect('box', 18, top, 2 * (LINE - 18), Y.originFoot - top),
      path('conductor', `M${LINE} 0V14M${LINE} 36V56M${LINE} 78V${Y.run}`),
      ...dashedIf(isChanged('main-switch', position, now), contact(14, 36, position.main === 'on')),
      ...dashedIf(isChanged('circuit', position, now), contact(56, 78, isOn)),
      cross(LINE, 56),
      ...(residualDevice === null ? [] : [path('ring', `M${LINE - 9} 45a9 4 0 1 0 18 0a9 4 0 1 0 -18 0`)]),
    ),
    labels(
      words(scene, 'main-switch', 76, 28),
      words(scene, 'circuit', 76, 72),
      said(1, 'origin', true),
      said(2, `${breaker.type}${breaker.rating}, ${breaker.poles}-pole`),
      ...(residualDevice === null
        ? []
        : [
            said(
              3,
              `type ${residualDevice.type}${residualDevice.delay === 'S' ? ' S' : ''} ${amount(1000 * residualDevice.rated)} mA`,
            ),
          ]),
    ),
  );
}

/** Where its tails part, before the main switch: over the words that are touched, its name beside their reach. */
const nextPoint = together(
  shapes(joint(LINE, Y.tails), path('conductor', `M${LINE} ${Y.tails}H${NEXT}m-4 -2l4 2l-4 2`)),
  labels(label(RIGHT, Y.tails + 4, 'next point', { anchor: 'end' })),
);

/** The circuit, live conductors and PE, to the unit's terminals. */
function run({ papers, position, now, acts }: BenchScene): Figure {
  const { length, lineArea } = papers.site.circuit;
  const count = papers.site.phases === 1 ? 2 : 4;
  const isOn = position.unit === 'connected';
  const { thing, state } = handText('conductors', position);
  const end = `M${DROP} ${Y.unit - (isOn ? 0 : 7)}V${Y.run}`;
  return together(
    shapes(
      path('conductor', `M${LINE} ${Y.run}H${DROP}M${68} ${Y.run + 4}l8 -8`),
      path('earth', `M${LEFT} ${Y.origin}V${Y.unit - 5}H${DROP + 10}`),
      ...dashedIf(
        isChanged('conductors', position, now),
        path('conductor', end),
        path('conductor', `M${DROP + 10} ${Y.unit - 5}V${Y.unit - (isOn ? 0 : 3)}`),
      ),
    ),
    labels(
      label(LEFT + 4, 106, 'PE'),
      label(79, 98, String(count)),
      label(96, 98, `${amount(length)} m, ${amount(lineArea)} mm²`),
      label(RIGHT, 87, thing, { anchor: 'end' }),
      label(RIGHT, 101, '', { anchor: 'end', state: { text: state, acts } }),
    ),
  );
}

function unit(scene: BenchScene): Figure {
  const { position, now, says } = scene;
  return together(
    shapes(
      rect('enclosure', LEFT, Y.unit, RIGHT - LEFT, Y.unitFoot - Y.unit),
      path('conductor', `M${LEFT} ${Y.lid}H${RIGHT}`),
      ...dashedIf(
        isChanged('cover', position, now),
        ...lid(LEFT + 6, Y.lid + 4, RIGHT - LEFT - 12, Y.unitFoot - Y.lid - 9, position.cover === 'closed'),
      ),
    ),
    labels(
      label(LEFT + 8, Y.unit + 14, `unit, ${unitWords(scene)}`),
      words(scene, 'cover', WIDTH / 2, Y.lid + 26, 'middle'),
    ),
    says === null
      ? EMPTY
      : labels(label(LEFT + 8, Y.unit + 34, `says “${says}”`, { bold: true, size: SAID })),
  );
}

/** The tether with the plug that goes into the stand-in, or a customer's cable with the one that goes into the unit. */
function cable(scene: BenchScene): Figure {
  const { papers, position, now } = scene;
  const { sheet } = papers;
  const isTether = sheet.outlet === 'tethered';
  const coding = isTether ? sheet.cable.coding : position.coding;
  const height = 11;
  const top = isTether
    ? position.plugged
      ? Y.standIn - height
      : Y.unitFoot + 4
    : position.plugged
      ? Y.unitFoot
      : Y.standIn - height - 4;
  return together(
    shapes(
      ...CABLE.map((x) =>
        path('conductor', isTether ? `M${x} ${Y.unitFoot}V${top}` : `M${x} ${top + height}V${Y.standIn}`),
      ),
      ...dashedIf(
        isChanged('plug', position, now),
        rect('symbol', CABLE[0] - 12, top, CABLE[1] - CABLE[0] + 24, height),
      ),
    ),
    labels(
      words(scene, 'plug', 186, 227),
      label(LEFT + 8, 220, `${isTether ? 'tether' : 'cable'}, ${amount(sheet.cable.length)} m`),
      label(LEFT + 8, 234, coding === null ? 'no coding' : `coded ${coding} A`),
    ),
  );
}

function standIn(scene: BenchScene): Figure {
  const { position } = scene;
  const place = { left: LEFT + 30, rail: RIGHT - 20, y: 295, earthY: 308, values: 'beside' } as const;
  return together(
    shapes(rect('box', LEFT, Y.standIn, RIGHT - LEFT, Y.foot - Y.standIn)),
    vehicleCircuit(place, scene),
    labels(
      label(LEFT + 8, Y.standIn + 14, `stand-in, ${position.state}`, { bold: true }),
      label(LEFT + 8, place.y + 4, 'CP'),
      label(LEFT + 8, place.earthY + 4, 'PE'),
      ...oddLines(position, ODD_ROOM).map((text, i) =>
        label(LEFT + 8, Y.foot + 14 + 14 * i, text, { bold: true }),
      ),
    ),
  );
}
