/** Words of the test action `state-d`. */
import type { ActionWords } from '../actionWords.ts';

export const stateD: ActionWords = {
  title: 'Vehicle asks for ventilation (D)',
  purpose: 'Show that a vehicle that needs ventilation is supplied only where the sheet declares it.',
  stops: {
    voltage: 'the unit supplies a vehicle that needs ventilation and has none: isolate',
  },
  lines: {
    supplies: {
      text: 'supplies every line within 3 s of being asked',
      why: 'The unit’s sheet declares ventilation, which the unit then switches on.',
    },
    fault: {
      text: 'takes the pilot out of 2.59 to 3.28 V',
      why: 'Outside it the unit could take the vehicle for another state.',
    },
    voltage: {
      text: 'supplies',
      why: 'No ventilation is declared on its sheet, and the vehicle says that it needs it.',
    },
    high: {
      text: 'takes the high half of the pilot to 2.59 to 3.28 V, oscillating or steady',
      why: 'The stand-in’s 270 Ω against the unit’s 1 kΩ give that, at the corners of their tolerances.',
    },
    'air-moves': {
      text: 'moves air when it switches its ventilation on',
      why: 'The command says nothing of the fan: that is looked at by itself.',
    },
  },
};
