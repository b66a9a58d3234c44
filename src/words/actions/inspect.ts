/** Words of the test action `inspect`. */
import type { ActionWords } from '../actionWords.ts';
import { is } from '../values.ts';

export const inspect: ActionWords = {
  title: 'Inspection, inside and outside',
  purpose: 'See what no instrument shows, before any is used.',
  lines: {
    enclosure: {
      text: 'is whole, dry, tight at its glands, and IP44 or better out of doors',
      why: 'Water inside is shock and corrosion to come.',
    },
    terminals: {
      text: 'shows loose, heated or corroded terminals',
      why: 'A joint that is not tight heats under load, and burns in time.',
    },
    'protective-devices': {
      text: 'has the devices that its papers name, and none in the neutral alone or in PE',
      why: 'What the design rests on has to be what is fitted.',
    },
    outlet: {
      text: (v) =>
        is(v, 'socket')
          ? 'shows damaged contacts, a slack lid, a bent lock pin or a missing shutter at its socket'
          : 'shows a cracked connector or burnt contacts',
      why: 'Fingers and rain reach what should be closed in.',
    },
    cable: {
      text: (v) =>
        is(v, 'socket')
          ? 'has a cable that is cut, crushed or strained'
          : 'has a tether that is cut, crushed or hangs by its conductors',
      why: 'The protective conductor may be what parts first.',
    },
    position: {
      text: 'is guarded against vehicles or out of their way, its outlet 0.5 to 1.5 m up',
      why: 'It would be run into, or stooped for in the wet.',
    },
    labels: {
      text: 'has its circuit, its earthing and its test notice labelled',
      why: 'The next one to isolate goes by the labels.',
    },
    'inside-devices': {
      text: 'has devices that work',
      why: 'They are there and of the right type; whether they act is a test.',
    },
  },
};
