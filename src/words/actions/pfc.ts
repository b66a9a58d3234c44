/** Words of the test action `pfc`. */
import type { Values } from '../../verification/testAction.ts';
import type { ActionWords } from '../actionWords.ts';
import { aboutOhms, ohms } from '../rangeWords.ts';
import { is, num } from '../values.ts';

const sum = (v: Values): string => {
  const multiple = num(v, 'multiple');
  const times = multiple === 1 ? '' : `${multiple} × `;
  const breaks = num(v, 'breakingCapacity') / 1000;
  const most = is(v, 'isDeclared')
    ? 'the most for which the consumer unit is declared with this device in it'
    : 'the most that the device can break';
  return `at least ${num(v, 'limit').toFixed(3)} Ω (${times}${num(v, 'voltage')} V ÷ ${breaks} kA, ${most})`;
};

export const pfc: ActionWords = {
  purpose: 'Show that the device can break the greatest current that the supply can drive there.',
  stops: {
    'no-return':
      'neutral or earth is open, so metal may stand at a voltage: do not energise, tell the distributor',
  },
  lines: {
    joined: {
      text: (v) =>
        `reads ${ohms(num(v, 'joined'))} Ω or less from line to earth, almost as low as to neutral`,
      why: 'The current should return through two electrodes and the ground. So low a reading means a metal path from earth to neutral, and a broken neutral then makes the case live.',
      otherwise: 'a reading near the one to neutral, often around 1 Ω',
    },
    'earth-way': {
      text: (v) =>
        `reads at most ${ohms(num(v, 'greatest'))} Ω from line to earth (papers ${ohms(num(v, 'loop'))} + ${num(v, 'allowance')})`,
      why: 'Everything is connected, so pipes and steel may share the current and lower the reading. A poor joint raises it, and a fault then clears late.',
      otherwise: 'a higher reading, often 1 or 2 Ω, or more where the current returns through the ground',
    },
    alike: {
      text: (v) =>
        `reads the same from line to neutral as from line to earth (within ${num(v, 'allowance')} Ω and the tester’s uncertainty)`,
      why: 'On the supply’s side one PEN conductor is both neutral and earth, so both currents return the same way. A difference comes from a joint that only one of them passes.',
      otherwise: 'one reading well above the other, often by 1 or 2 Ω',
    },
    'neutral-way': {
      text: (v) =>
        `reads ${aboutOhms(num(v, 'loop'), num(v, 'least'), num(v, 'greatest'))} from line to neutral`,
      why: 'A short circuit flows out through the line and back through the neutral of the supply. A lower loop drives more current than the device may be able to break, and a higher one drops more volts under load.',
      otherwise: 'a higher reading, often by 1 Ω, or tens of ohms where the ground is the only way back',
    },
    'no-return': {
      text: 'gives no reading from line to neutral or to earth, as the test current has no way back',
      why: 'There is voltage but no path, so neutral or earth is open. Metal that should be earthed may then be live.',
      otherwise: 'the tester refusing on one of the two: no return for the test current',
    },
    'at-outlet': {
      text: 'has devices that can break the fault current at its outlet',
      why: 'This loop ends at the origin. The cable to the unit adds resistance, so less current flows at the outlet, and how much less is not measured here.',
    },
  },
  figures: {
    current: {
      text: 'drives into a short circuit from line to neutral at the origin about',
      why: (v) =>
        `${num(v, 'voltage')} V ÷ ${ohms(num(v, 'loop'))} Ω.${is(v, 'threePhase') ? ' A short circuit of all three lines draws twice that.' : ''}`,
    },
  },
  limits: {
    'capacity-neutral': { text: 'least loop impedance from line to neutral', sum },
    'capacity-earth': { text: 'least loop impedance from line to earth', sum },
  },
};
