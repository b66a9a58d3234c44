/** The vehicle stand-in drawn as its circuit (IEC 61851-1:2017 Annex A), each part as the trainee has set it. */
import { VEHICLE } from '../../laws/pilotLevels.ts';
import type { Figure } from './figure.ts';
import { dashedIf, EMPTY, joint, label, labels, path, rect, shapes, together } from './figure.ts';
import { handText, isChanged } from './hands.ts';
import { heading, NOTCH, namesAt } from './layout.ts';
import { oddLines } from './oddWords.ts';
import type { BenchScene, Scene } from './scene.ts';
import { contact, diode, resistor } from './symbols.ts';

/** The second branch runs this far above the pilot's row. */
const BRANCH = 27;

const kiloOhms = (ohms: number): string => (ohms < 1000 ? `${ohms} Ω` : `${ohms / 1000} kΩ`);

export function standInFigure(scene: Scene): Figure {
  const { layout, position, now } = scene;
  const { columns, rows, top, bottom, lineYs, instrument, view, width } = layout;
  const { standInLeft: left, standInRight: right } = columns;
  const corner = left + NOTCH + 4;
  const changes = isChanged('plug', position, now) || isChanged('request', position, now);
  return together(
    heading(
      layout,
      left,
      'vehicle stand-in',
      `${position.plugged ? 'plugged in' : 'unplugged'}, state ${position.state}`,
      ...(changes ? ['at the lock'] : []),
    ),
    labels(
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
    shapes(
      view === 'whole'
        ? rect('box', left, top, right - left, bottom - top)
        : path('box', `M${left} ${top}h${NOTCH}V${rows.CP - BRANCH - 22}H${right}V${bottom}H${left}z`),
    ),
    vehicleCircuit({ left, rail: right - 14, y: rows.CP, earthY: rows.PE, values: 'under' }, scene),
    labels(
      // Where there is no room below it, the corner that the instrument stands in has some.
      ...(lineYs.length > 0
        ? oddLines(position, width - left - 2).map((text, i) =>
            label(left, bottom + 16 + 14 * i, text, { bold: true }),
          )
        : oddLines(position, width - corner - 2, 5).map((text, i) =>
            label(corner, instrument.y + 42 + 13 * i, text, { bold: true }),
          )),
    ),
  );
}

interface Place {
  /** Where pilot and PE come in, and the rail that joins the branches to PE. */
  readonly left: number;
  readonly rail: number;
  readonly y: number;
  readonly earthY: number;
  /** Where there is room for the value of the branch that is always in. */
  readonly values: 'under' | 'beside';
}

/** The pilot's two branches and the way back to PE. */
export const vehicleCircuit = (place: Place, scene: BenchScene): Figure =>
  together(pilotCircuit(place, scene), branches(place, scene), earthReturn(place, scene));

const DIODE = 24;
const NODE = 66;

/** As far as the node of the two branches: open, the first contact is where the pilot is interrupted. */
function pilotCircuit({ left, y, earthY }: Place, { position, now }: BenchScene): Figure {
  const diodeAt = left + DIODE;
  const node = left + NODE;
  const pilotChanges = position.pilot !== now.pilot;
  const vehicleComes = (position.state === 'A') !== (now.state === 'A');
  return together(
    shapes(
      ...dashedIf(
        pilotChanges,
        position.pilot === 'open'
          ? path('contact', `M${left} ${y}h4l12 -8M${left + 18} ${y}H${diodeAt}`)
          : path('conductor', `M${left} ${y}H${diodeAt}`),
      ),
      diode(diodeAt, y),
      // In state A nothing is connected behind the diode.
      ...dashedIf(
        vehicleComes,
        position.state === 'A'
          ? path('contact', `M${diodeAt + 12} ${y}h8l11 -8M${node - 8} ${y}H${node}`)
          : path('conductor', `M${diodeAt + 12} ${y}H${node}`),
      ),
    ),
    position.diode === 'shorted'
      ? shapes(
          ...dashedIf(
            now.diode !== 'shorted',
            path('conductor', `M${diodeAt - 4} ${y}v-11h20v11`),
            joint(diodeAt - 4, y),
            joint(diodeAt + 16, y),
          ),
        )
      : EMPTY,
    position.pilot === 'shorted-to-earth'
      ? shapes(
          ...dashedIf(pilotChanges, path('conductor', `M${left + 16} ${y}V${earthY}`)),
          joint(left + 16, y),
          joint(left + 16, earthY),
        )
      : EMPTY,
  );
}

function branches({ left, rail, y, earthY, values }: Place, { position, now, acts }: BenchScene): Figure {
  const node = left + NODE;
  const branch = y - BRANCH;
  const isAsking = position.state === 'C' || position.state === 'D';
  const { thing, state } = handText('request', position);
  const permanent = kiloOhms(VEHICLE.permanent);
  return together(
    shapes(
      path('conductor', `M${node} ${y}V${branch}h8M${rail} ${branch}V${earthY}`),
      ...dashedIf(isChanged('request', position, now), contact(node + 8, node + 27, branch, isAsking)),
      path('conductor', `M${node + 27} ${branch}h4`),
      joint(node, y),
      joint(rail, y),
      joint(rail, earthY),
    ),
    resistor(node, rail, y, values === 'under' ? permanent : '', true),
    values === 'under'
      ? EMPTY
      : labels(label((node + rail) / 2 + 53, y - 4, permanent, { anchor: 'middle' })),
    resistor(node + 31, rail, branch, kiloOhms(position.state === 'D' ? VEHICLE.stateD : VEHICLE.stateC)),
    labels(label(node + 5, branch + 14, `${thing} `, { state: { text: state, acts } })),
  );
}

const earthReturn = ({ left, rail, earthY: y }: Place, { position, now }: BenchScene): Figure =>
  position.earth === 'sound'
    ? shapes(path('earth', `M${left} ${y}H${rail}`))
    : shapes(
        ...dashedIf(now.earth !== position.earth, path('contact', `M${left + 30} ${y}h4l16 -9`)),
        path('earth', `M${left} ${y}h32M${left + 54} ${y}H${rail}`),
      );
