/** Words of the test action `supply-return`. */
import type { ActionWords } from '../actionWords.ts';

export const supplyReturn: ActionWords = {
  title: 'Supply goes and comes back',
  purpose: 'Show that nothing closes as the supply returns before everything has been checked afresh.',
  stops: {
    voltage: 'the outlet is live while the unit starts: isolate and keep people away',
  },
  lines: {
    voltage: { text: 'puts voltage on the outlet while it starts', why: 'It has not yet checked anything.' },
    'comes-back-closed': {
      text: 'comes back with its contactor closed',
      why: 'The contactor was heard to open when the supply went, and may close only after the start-up.',
    },
    'permission-again': {
      text: 'supplies without the permission that its sheet asks for',
      why: 'What was given before the supply went does not outlast it; a random delay starts afresh.',
    },
    'supplies-again': {
      text: 'supplies again after its start-up, once everything is checked',
      why: 'The vehicle still asks.',
    },
    'brown-out': {
      text: 'rides through a dip of the supply',
      why: 'The supply was off for 10 s, not low for a moment.',
    },
  },
};
