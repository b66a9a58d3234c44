/** Words of the test action `dc-ramp`. */
import { DIRECT_BAND } from '../../laws/residualLimits.ts';
import type { ActionWords } from '../actionWords.ts';
import { milliamps } from '../values.ts';

const LEAST = `${milliamps(DIRECT_BAND.least)} mA`;
const GREATEST = `${milliamps(DIRECT_BAND.greatest)} mA`;
const STOP = 'the d.c. detector does not trip as it must, so d.c. can blind other devices: lock off';

export const dcRamp: ActionWords = {
  purpose: 'Show that the d.c. detector acts before a residual device upstream is blinded.',
  stops: {
    'trips-positive': STOP,
    'trips-negative': STOP,
  },
  lines: {
    'trips-positive': {
      text: `trips between ${milliamps(DIRECT_BAND.least)} and ${GREATEST} of rising positive smooth d.c.`,
      why: `Above ${GREATEST}, smooth d.c. magnetises the iron core of a type A device. That device may then miss the current through a person.`,
      otherwise: `no trip up to ${GREATEST}, or a trip below ${LEAST}`,
    },
    'trips-negative': {
      text: `trips between ${milliamps(DIRECT_BAND.least)} and ${GREATEST} of rising negative smooth d.c.`,
      why: 'A vehicle’s d.c. can leak from either pole of its battery. A detector that feels one polarity alone misses the other one altogether.',
      otherwise: `no trip up to ${GREATEST}, perhaps after a good trip on the positive ramp, or a trip below ${LEAST}`,
    },
    upstream: {
      text: 'trips the residual device at its origin during the d.c. ramp',
      why: `Up to ${GREATEST} of d.c. a type A device neither trips nor is blinded. The unit’s detector acts first, and the device upstream stays closed.`,
      otherwise: 'the residual device at the origin off after the ramp, and the unit dark',
    },
    early: {
      text: `trips below ${LEAST} of smooth d.c.`,
      why: 'Healthy vehicles leak a little d.c. A detector that trips on so little ends charges for no reason.',
      otherwise: 'a tripping current such as 2 mA, right at the start of the ramp',
    },
    'step-time': {
      text: `opens within 10 s when ${GREATEST} of smooth d.c. comes all at once`,
      why: 'A slow rise finds the current at which the detector trips, not its time. The time needs the whole current at once.',
    },
  },
  limits: {
    'direct-current': {
      text: 'greatest d.c. tripping current',
      sum: `at most ${GREATEST}, the rated current of the d.c. detector`,
    },
  },
};
