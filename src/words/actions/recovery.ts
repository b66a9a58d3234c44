/** Words of the test action `recovery`. */
import type { ActionWords } from '../actionWords.ts';

export const recovery: ActionWords = {
  title: 'Clearing what has tripped or latched',
  purpose: 'Show that a fault clears as the unit’s sheet says, and in no other way.',
  lines: {
    'after-short': {
      text: 'offers again after a shorted pilot, cleared as its sheet says',
      why: 'Nothing else may be needed, and the usual order follows.',
    },
    'after-trip': {
      text: 'supplies again after a residual trip, reset as its sheet says',
      why: 'Nothing else may be needed, and the usual order follows.',
    },
    'by-itself': { text: 'closes by itself after a residual trip', why: 'Somebody has to look first.' },
    ready: { text: 'is ready at the end', why: 'Everything was restored and cleared.' },
    'every-cause': {
      text: 'clears after every other fault as its sheet says',
      why: 'Two of its causes were tried; each has its own line on the sheet.',
    },
  },
};
