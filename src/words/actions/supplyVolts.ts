/** Words of the test action `supply-volts`. */
import type { ActionWords } from '../actionWords.ts';
import { is, num } from '../values.ts';
import { threeLines } from './threeLines.ts';

export const supplyVolts: ActionWords = {
  title: 'Supply voltage and rotation at the origin',
  purpose: 'Know the supply before the unit is held to account for it, at rest and as a load is switched.',
  stops: {
    'neutral-lifted': 'the neutral is not where it should be: do not energise, tell the distributor',
    'earth-lifted': 'the earthing terminal stands at a voltage: do not energise, tell the distributor',
  },
  lines: {
    ...threeLines('', 'What is documented here is to be kept to the outlet.'),
    'line-to-neutral': {
      text: (v) => `reads ${num(v, 'least')} to ${num(v, 'greatest')} V from line to neutral`,
      why: '230 V + 10 % − 6 % at the supply terminals.',
    },
    'line-to-earth': {
      text: 'reads the same from line to earth as from line to neutral, within some volts',
      why: 'The source’s star point is earthed.',
    },
    'neutral-lifted': {
      text: (v) =>
        `has more than ${is(v, 'joined') ? 'nothing' : `${num(v, 'few')} V`} between neutral and earth`,
      why: (v) =>
        is(v, 'joined')
          ? 'They are joined here.'
          : 'Load current in the neutral makes some volts; line voltage there would be a crossed or a broken conductor.',
    },
    'earth-lifted': {
      text: (v) => `has more than ${num(v, 'few')} V between its main earthing terminal and true earth`,
      why: 'Whoever stands on the ground and touches the vehicle has that across them.',
    },
    swings: {
      text: (v) =>
        `loses more, or gains, than its loop makes of a load of ${num(v, 'amps')} A that is switched on`,
      why: 'A voltage that follows the loads is the sign of a neutral or a PEN conductor that is parting.',
    },
    'pen-whole': {
      text: 'shows a whole PEN conductor by the nought between neutral and earth',
      why: 'They are joined here: it stays nought with the PEN open.',
    },
    'all-loads': {
      text: 'keeps its voltage with everything on that it will ever feed',
      why: 'One load was switched, for a moment.',
    },
  },
};
