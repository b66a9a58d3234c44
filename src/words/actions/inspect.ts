/** Words of the test action `inspect`. */
import type { ActionWords } from '../actionWords.ts';
import { is } from '../values.ts';

export const inspect: ActionWords = {
  purpose: 'Find with your eyes what no instrument shows, before you use any.',
  lines: {
    enclosure: {
      text: 'has a whole, dry enclosure with tight glands, and IP44 or better outdoors',
      why: 'Water runs in along a loose gland, bridges live parts and corrodes joints. Whoever touches the wet unit may get a shock.',
      otherwise: 'a gland that turns by hand, a water mark, or a plate that says less than IP44',
    },
    terminals: {
      text: 'shows loose, heated or corroded terminals',
      why: 'A loose joint has resistance, and the charging current heats it for hours. The insulation browns, then burns.',
      otherwise: 'a screw that turns by hand, or a browned sleeve',
    },
    'protective-devices': {
      text: 'has the protective devices that its papers name, and none in the neutral alone or in PE',
      why: 'A slower breaker or a type AC device looks much the same, but clears a fault late or never. A fuse in the neutral alone leaves the line live when it blows.',
      otherwise: 'a type, rating or number of poles on a device that differs from the papers',
    },
    outlet: {
      text: (v) =>
        is(v, 'socket')
          ? 'has damaged contacts, a slack lid, a bent lock pin or a missing shutter at its socket-outlet'
          : 'has a cracked connector or burnt contacts',
      why: 'Fingers and rain reach the contacts through a crack or an open lid. A burnt contact has resistance, and heats more with each charge.',
      otherwise: (v) =>
        is(v, 'socket')
          ? 'a lid that hangs open, a bent pin or a darkened contact'
          : 'a crack through the shell, or a darkened contact',
    },
    cable: {
      text: (v) =>
        is(v, 'socket')
          ? 'has a cable that is cut, crushed or strained'
          : 'has a tether that is cut, crushed or hanging by its conductors',
      why: 'Without a clamp every pull goes into the conductors, until one parts. If that one is the protective conductor (PE), the vehicle has no earth.',
      otherwise: (v) =>
        is(v, 'socket')
          ? 'a cut in the sheath, or a flattened stretch'
          : 'a cut in the sheath, a flattened stretch, or a tether that pulls out of the unit some way',
    },
    position: {
      text: 'stands guarded or out of the way of vehicles, with its outlet 0.5 to 1.5 m above the ground',
      why: 'A vehicle that rolls into the unit breaks its case open, and live parts lie bare. An outlet near the ground is splashed and driven over.',
      otherwise: 'a unit in line with the bay with no post before it, or an outlet too low or too high',
    },
    labels: {
      text: 'has labels for its circuit and its earthing, and the notice to press the test button',
      why: 'Whoever isolates next finds the right breaker by its label. The notice has somebody press the residual device’s test button every six months, so that the device does not seize.',
      otherwise: 'a circuit that is missing from the schedule, or no test notice',
    },
    'inside-devices': {
      text: 'has residual devices that trip in time',
      why: 'A look shows the type and the rating. A seized device looks as good as a sound one, and only a test current shows whether it opens.',
    },
  },
};
