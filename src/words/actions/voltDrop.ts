/** Words of the test action `volt-drop`. */
import type { ActionWords } from '../actionWords.ts';
import { is, num } from '../values.ts';

export const voltDrop: ActionWords = {
  title: 'Volts lost under load',
  purpose:
    'Let a current flow, and see that it loses no more volts on its way than its conductors make of it.',
  lines: {
    'more-than-sum': {
      text: 'loses more volts between origin and outlet than the load makes of its conductors',
      why: 'What is lost beyond that is lost in a joint or a contact, as heat.',
    },
    'stays-on': {
      text: 'goes on supplying while the load is drawn',
      why: 'No more is drawn than it offers.',
    },
    warm: {
      text: 'keeps its joints cool at full current for hours',
      why: 'The load was on for a minute: heat takes longer.',
    },
  },
  figures: {
    lost: {
      text: (v) => `loses from origin to outlet with ${num(v, 'amps')} A, about`,
      why: (v) =>
        `${num(v, 'amps')} A through ${is(v, 'both') ? 'line and neutral' : 'the line alone, the neutral carries nothing'} of circuit and cable: ${num(v, 'ohms').toFixed(3)} Ω.`,
    },
  },
};
