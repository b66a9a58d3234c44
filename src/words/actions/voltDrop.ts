/** Words of the test action `volt-drop`. */
import type { ActionWords } from '../actionWords.ts';
import { is, num } from '../values.ts';

export const voltDrop: ActionWords = {
  purpose: 'Let a current flow, and show that it drops no more volts on its way than the cables explain.',
  lines: {
    'more-than-sum': {
      text: 'drops more volts between origin and outlet than its cables explain',
      why: 'The extra volts are lost in a bad joint or contact, where they turn into heat. At 30 A, 3 V lost in one joint make 90 W, enough to char insulation.',
      otherwise: 'some volts more: a joint of 1 Ω drops 1 V for every ampere',
    },
    'stays-on': {
      text: 'goes on supplying while the load is drawn',
      why: 'The vehicle draws no more than it is offered, so no contact or device has a reason to open.',
      otherwise: 'no voltage at the outlet while the load is on, perhaps with a fault shown',
    },
    warm: {
      text: 'keeps its joints cool at full current for hours',
      why: 'The load was on for a minute at most. Joints and cables take far longer to reach their temperature.',
    },
  },
  figures: {
    lost: {
      text: (v) => `drops from origin to outlet at ${num(v, 'amps')} A about`,
      why: (v) =>
        `${num(v, 'amps')} A × ${num(v, 'ohms').toFixed(3)} Ω, ${is(v, 'both') ? 'through line and neutral of circuit and cable' : 'through the line of circuit and cable: three equal lines leave no current in the neutral'}.`,
    },
  },
};
