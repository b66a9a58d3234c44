/** The vehicle stand-in drawn as its circuit (IEC 61851-1:2017 Annex A), each part as the trainee has set it. */
import { VEHICLE } from '../../laws/pilotLevels.ts';
import type { Position } from '../flow/position.ts';
import { leakageText, loadText } from '../words/settings.ts';
import type { Figure } from './figure.ts';
import { EMPTY, joint, label, labels, path, rect, shapes, together } from './figure.ts';
import { namesAt } from './layout.ts';
import type { Scene } from './scene.ts';
import { contact, diode, resistor } from './symbols.ts';

/** The second branch runs this far above the pilot's row. */
const BRANCH = 27;

const kiloOhms = (ohms: number): string => (ohms < 1000 ? `${ohms} Ω` : `${ohms / 1000} kΩ`);

export function standInFigure(scene: Scene): Figure {
  const { layout, position, now } = scene;
  const { columns, rows, top, bottom } = layout;
  const { standInLeft: left, standInRight: right } = columns;
  const isChanged = position.plugged !== now.plugged || position.state !== now.state;
  return together(
    labels(
      label(left, 16, 'vehicle stand-in', { bold: true }),
      label(left, 30, `${position.plugged ? 'plugged in' : 'unplugged'}, state ${position.state}`),
      ...(isChanged ? [label(left, 44, 'at the lock')] : []),
      ...namesAt(layout)
        .filter((name) => name !== 'CP' && name !== 'PE')
        .map((name) =>
          label(
            left + (name === 'PP' && position.pilot === 'shorted-to-earth' ? 22 : 9),
            rows[name] + 4,
            name,
          ),
        ),
    ),
    shapes(rect('box', left, top, right - left, bottom - top)),
    pilotCircuit(scene),
    earthReturn(scene),
    setWords(position, left, bottom),
  );
}

function pilotCircuit({ layout, position }: Scene): Figure {
  const { columns, rows } = layout;
  const { standInLeft: left, standInRight: right } = columns;
  const y = rows.CP;
  const branch = y - BRANCH;
  const diodeAt = left + 24;
  const node = left + 66;
  const rail = right - 14;
  const isAsking = position.state === 'C' || position.state === 'D';
  return together(
    // Open, the first contact is where the pilot is interrupted; in state A nothing is connected behind the diode.
    shapes(
      position.pilot === 'open'
        ? path('contact', `M${left} ${y}h4l12 -8M${left + 18} ${y}H${diodeAt}`)
        : path('conductor', `M${left} ${y}H${diodeAt}`),
      diode(diodeAt, y),
      position.state === 'A'
        ? path('contact', `M${diodeAt + 12} ${y}h8l11 -8M${node - 8} ${y}H${node}`)
        : path('conductor', `M${diodeAt + 12} ${y}H${node}`),
      ...(position.diode === 'shorted'
        ? [path('conductor', `M${diodeAt - 4} ${y}v-11h20v11`), joint(diodeAt - 4, y), joint(diodeAt + 16, y)]
        : []),
      path('conductor', `M${node} ${y}V${branch}h8M${rail} ${branch}V${rows.PE}`),
      contact(node + 8, node + 27, branch, isAsking),
      path('conductor', `M${node + 27} ${branch}h4`),
      joint(node, y),
      joint(rail, y),
      joint(rail, rows.PE),
    ),
    resistor(node, rail, y, kiloOhms(VEHICLE.permanent), true),
    resistor(node + 31, rail, branch, kiloOhms(position.state === 'D' ? VEHICLE.stateD : VEHICLE.stateC)),
    labels(label(node + 17, branch + 14, 'S2', { anchor: 'middle' })),
    position.pilot === 'shorted-to-earth'
      ? shapes(
          path('conductor', `M${left + 16} ${y}V${rows.PE}`),
          joint(left + 16, y),
          joint(left + 16, rows.PE),
        )
      : EMPTY,
  );
}

function earthReturn({ layout, position }: Scene): Figure {
  const { columns, rows } = layout;
  const { standInLeft: left, standInRight: right } = columns;
  const rail = right - 14;
  const y = rows.PE;
  return position.earth === 'sound'
    ? shapes(path('earth', `M${left} ${y}H${rail}`))
    : shapes(
        path('contact', `M${left + 30} ${y}h4l16 -9`),
        path('earth', `M${left} ${y}h32M${left + 54} ${y}H${rail}`),
      );
}

/** What is set out of the ordinary, in words: its symbol alone would be missed. */
function setWords(
  { pilot, diode: diodeSet, earth, load, leakage }: Position,
  x: number,
  bottom: number,
): Figure {
  const odd = [
    ...(pilot === 'sound' ? [] : [pilot === 'open' ? 'CP open' : 'CP to PE']),
    ...(diodeSet === 'sound' ? [] : ['diode shorted']),
    ...(earth === 'sound' ? [] : ['PE open']),
    ...(load === 0 ? [] : [loadText(load)]),
    ...(leakage === null ? [] : [leakageText(leakage)]),
  ];
  return labels(...odd.map((text, i) => label(x, bottom + 16 + 14 * i, `set: ${text}`, { bold: true })));
}
