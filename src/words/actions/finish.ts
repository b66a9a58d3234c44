/** Words of the test action `finish`. */
import { GREATEST_UNLOCK_AFTER_UNPLUGGING } from '../../laws/timing.ts';
import type { ActionWords } from '../actionWords.ts';
import { pilotAtRest } from '../pilotWords.ts';
import { below, unlessWithin } from '../rangeWords.ts';

const UNLOCK = `${GREATEST_UNLOCK_AFTER_UNPLUGGING} s`;

export const finish: ActionWords = {
  purpose: 'Leave the unit dead at its outlet and ready for the next user.',
  lines: {
    voltage: {
      text: 'leaves voltage on its outlet with nothing plugged in',
      why: 'The contactor has opened and closed many times in these tests, and a pole may have welded since. The next person takes hold of this connector.',
      otherwise: 'voltage from a line to PE at the outlet, 230 V if a pole is closed',
    },
    ready: {
      text: 'shows ready on its display',
      why: 'Every simulated fault is gone and was cleared. A unit that is still latched refuses the next vehicle.',
      otherwise: 'a fault still shown, or a dark display',
    },
    'twelve-volts': {
      text: (v) => `holds the pilot at ${pilotAtRest(v)}`,
      why: 'With no vehicle, no current flows through the pilot’s 1 kΩ. A lower voltage means that something still loads the pilot, and the unit would look for a vehicle.',
      otherwise: (v) =>
        `another voltage, such as ${below(v, 'high', 0.6, 1)} V${unlessWithin(v, 'high', 9, ', or about 9 V as with a vehicle connected')}`,
    },
    plug: {
      text: 'keeps hold of a plug after the vehicle has gone',
      why: `The lock lets go within ${UNLOCK} of unplugging. If the lock stays engaged, the cable is trapped and somebody will pull at it.`,
      otherwise: `a plug that is still held ${UNLOCK} after the vehicle has gone`,
    },
    'next-test': {
      text: 'stays safe until its next test is due, with nobody looking at it',
      why: 'Readings tell how the unit is today. A knock, a driven-over cable or damp can make it unsafe tomorrow, so users must report damage.',
    },
  },
};
