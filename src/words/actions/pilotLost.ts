/** Words of what losing the pilot and losing PE at the vehicle have in common. */
import type { LimitWords, LineWords } from '../actionWords.ts';

/** `lost` completes "supplies while …". */
export const lossLines = (lost: string, whyOff: string): Readonly<Record<string, LineWords>> => ({
  'off-in-time': { text: 'takes the voltage away within 100 ms', why: whyOff },
  voltage: { text: `supplies while ${lost}`, why: 'It may not close before the pilot is whole again.' },
  'as-unplugged': {
    text: 'has 11.4 to 12.6 V on the pilot, as with nothing plugged in',
    why: 'Nothing loads the pilot: the unit cannot tell this from an unplugging, and need show no fault.',
  },
  'offers-again': {
    text: 'offers again once it is mended, as to a new vehicle',
    why: 'Nothing has latched that its sheet tells of.',
  },
});

export const lossLimit = (text: string): LimitWords => ({
  text,
  sum: 'pilot loop open: supply off within 100 ms',
});
