/** Words of the test action `instruments`. */
import type { ActionWords } from '../actionWords.ts';

export const instruments: ActionWords = {
  purpose:
    'Prove the detector, null the leads, and see that the tester reads a known resistor right, and 0 with its leads joined.',
  lines: {
    nulled: {
      text: 'shows 0.00 Ω, within its last digits, with both nulled leads on one terminal',
      why: 'A pair of leads has 0.05 to 0.10 Ω of its own. What nulling leaves over is added to every conductor that you measure.',
      otherwise: 'a reading that stays at 0.05 Ω or more with the leads joined',
    },
    'insulation-joined': {
      text: 'shows 0.00 MΩ, within its last digits, with both insulation leads on one terminal',
      why: 'Joined leads are a short circuit, and the tester has to show it. With a broken lead no current flows, so everything reads over-range and seems to pass.',
      otherwise: 'an over-range reading, as with the leads in the air',
    },
    'known-ohm': {
      text: 'shows within a tenth of 1 Ω on the known resistor of 1 Ω',
      why: 'The resistor is known, so what it reads tells of the tester alone. A tester whose scale has drifted reads everything wrong by the same factor, insulation too, and still shows 0 with its leads joined.',
      otherwise: 'a reading well above 1 Ω, such as 1.5 Ω',
    },
    fuse: {
      text: 'blows its fuse while you check it with both leads on one terminal',
      why: 'Both leads are on one earthed terminal, with no voltage between them. The fuse blows only if a lead meets something live.',
      otherwise: 'a blown fuse, and a tester that reads nothing from then on',
    },
    dead: {
      text: 'is dead at the terminals where you will work',
      why: 'A proving unit shows that the detector works. The detector has not been on those terminals yet.',
    },
  },
  stops: {
    nulled:
      'a tester that does not read 0 Ω with its own leads joined falsifies every reading of a conductor: replace it first',
    'insulation-joined':
      'a tester that does not read 0 MΩ with its own leads joined would pass damaged insulation: replace it first',
    'known-ohm':
      'a tester that reads a known resistor wrong falsifies every reading, and may pass damaged insulation: replace it first',
  },
};
