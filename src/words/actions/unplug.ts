/** Words of the test action `unplug`. */
import type { ActionWords } from '../actionWords.ts';

export const unplug: ActionWords = {
  title: 'Vehicle goes (C to A, then B to A)',
  purpose: 'Time how soon the outlet is dead when the pilot is lost, and show that the session ends.',
  stops: {
    voltage: 'the outlet is live with nothing connected: isolate and keep people away',
  },
  lines: {
    'off-in-time': {
      text: 'is dead on every pole within 100 ms',
      why: 'The pilot parts first, so that nobody bares a live contact.',
    },
    voltage: {
      text: 'puts voltage on the outlet with nothing connected',
      why: 'Supply is allowed only while a vehicle asks for it.',
    },
    'twelve-volts': {
      text: 'takes the pilot back to 11.4 to 12.6 V',
      why: 'Nothing loads its 1 kΩ any more. It may go on oscillating for a while.',
    },
    'session-ends': {
      text: 'says that it is ready for the next vehicle',
      why: 'The unit’s sheet says that unplugging ends the session.',
    },
    'earth-lost': {
      text: 'switches off when a connected vehicle loses PE',
      why: 'Everything parted together here; PE alone is a set-up of its own.',
    },
  },
  limits: {
    opening: {
      text: 'time from the vehicle’s going to a dead outlet',
      sum: 'C2 to A: supply off within 100 ms',
    },
  },
};
