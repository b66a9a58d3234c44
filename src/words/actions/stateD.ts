/** Words of the test action `state-d`. */
import { GREATEST_VENTILATION } from '../../laws/timing.ts';
import type { ActionWords } from '../actionWords.ts';
import { above, below } from '../rangeWords.ts';
import { range } from '../values.ts';

const ON = `${GREATEST_VENTILATION} s`;

export const stateD: ActionWords = {
  purpose: 'Show that a vehicle that needs ventilation is supplied only where the unit’s sheet declares it.',
  stops: {
    voltage: 'the unit supplies a vehicle whose gas could gather indoors and explode: isolate',
  },
  lines: {
    supplies: {
      text: `supplies every line within ${ON} when the vehicle asks for ventilation (D)`,
      why: 'Some batteries give off gas while they charge. This unit’s sheet declares ventilation, so it starts the fan and closes its contactor.',
      otherwise: `no voltage from a line to neutral at the outlet ${ON} after the request`,
    },
    fault: {
      text: (v) => `brings the pilot’s positive peak outside its range for D (${range(v, 'high', 'V')})`,
      why: 'The vehicle’s 2.74 kΩ and 270 Ω in parallel and the unit’s 1 kΩ divide the 12 V of the pilot. Far from 3 V the unit mistakes the request for another state.',
      otherwise: (v) => `a peak such as ${below(v, 'high', 0.29, 1)} or ${above(v, 'high', 0.52, 1)} V`,
    },
    voltage: {
      text: 'supplies a vehicle that asks for ventilation (D)',
      why: 'Some batteries give off explosive gas while they charge. This unit’s sheet declares no ventilation, so nothing would carry the gas away.',
      otherwise: `about 230 V from a line to PE at the outlet ${ON} after the request`,
    },
    high: {
      text: (v) =>
        `brings the pilot’s positive peak to about 3 V (${range(v, 'high', 'V')}), oscillating or steady`,
      why: 'The vehicle’s 2.74 kΩ and 270 Ω in parallel and the unit’s 1 kΩ divide the 12 V of the pilot. Far from 3 V the unit mistakes the request for another state.',
      otherwise: (v) =>
        `a peak outside that range, such as ${below(v, 'high', 0.29, 1)} or ${above(v, 'high', 0.52, 1)} V`,
    },
    'air-moves': {
      text: 'stands in a place with enough fresh air for such a vehicle',
      why: 'The pilot says what the vehicle asks for, and the outlet what the unit does. Neither shows whether air moves in the room.',
    },
  },
};
