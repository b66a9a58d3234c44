/** Words of the test action `make-good`. */
import type { ActionWords } from '../actionWords.ts';

export const makeGood: ActionWords = {
  title: 'Making good before power',
  purpose: 'Links out, conductors back, cover on, and nobody within reach of the first switch-on.',
  lines: {
    'link-in': {
      text: 'has a temporary link left in',
      why: 'The first switch-on would be a dead short to earth.',
    },
    'conductors-back': {
      text: 'has every conductor back on that was taken off, earthing conductor and electrode first',
      why: 'Without its earth nothing would clear a fault.',
    },
    'cover-on': { text: 'has its cover fixed', why: 'Behind it the terminals will be live.' },
    'right-way': {
      text: 'has every conductor back where it was',
      why: 'That they are on is seen; that they are on the right terminals is measured.',
    },
  },
};
