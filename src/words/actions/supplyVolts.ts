/** Words of the test action `supply-volts`. */
import type { ActionWords } from '../actionWords.ts';
import { above, below } from '../rangeWords.ts';
import { threeLines } from '../threeLines.ts';
import { is, num, range } from '../values.ts';

export const supplyVolts: ActionWords = {
  purpose: 'Know the supply, at rest and as a load is switched, before the unit is judged on it.',
  stops: {
    'unit-window':
      'the supply is outside the window of the unit’s open-PEN measure, which rightly lets nothing through: tell the distributor',
    'neutral-lifted':
      'the neutral stands at a voltage, so it may be broken or crossed: do not energise, tell the distributor',
    'earth-lifted':
      'the earthing terminal stands at a voltage, and so does all earthed metal: do not energise, tell the distributor',
  },
  lines: {
    ...threeLines(
      'at the origin',
      'This order is written down here, and the outlet has to keep it. A motor on swapped lines runs backwards.',
    ),
    'line-to-neutral': {
      text: (v) => `reads about 230 V from line to neutral (${range(v, 'line-to-neutral', 'V')})`,
      why: 'The distributor may deliver 230 V + 10 % − 6 % here, at the supply terminals. Outside that, equipment fails early or switches itself off. A reading beyond by no more than its uncertainty and the last digit does not show that.',
      otherwise: (v) =>
        `a voltage outside that range, such as ${below(v, 'line-to-neutral', 16.2)} or ${above(v, 'line-to-neutral', 7)} V`,
    },
    'unit-window': {
      text: (v) =>
        `reads ${num(v, 'least')} to ${num(v, 'greatest')} V from line to neutral, the window of the unit’s open-PEN measure`,
      why: 'Outside this window the measure opens, and that is right. The unit then gives no supply, and nothing of it can be tested.',
      otherwise: 'a voltage outside that window, and a fault on the unit’s display',
    },
    'line-to-earth': {
      text: (v) =>
        `reads the same from line to earth as from line to neutral (within ${num(v, 'few')} V and the meter’s uncertainty)`,
      why: 'The neutral is earthed at the source, so both readings end at nearly the same potential. A difference means that a current lifts the neutral or the earth.',
      otherwise: 'two readings that differ by tens of volts, or no voltage to earth',
    },
    'neutral-lifted': {
      text: (v) => `shows more than ${num(v, 'most')} V between neutral and earth`,
      why: (v) =>
        is(v, 'joined')
          ? 'On PME neutral and earth are joined at the intake, so the meter reads 0 V. A voltage between them means that a joint there is poor or open.'
          : 'Load current drops some volts along the neutral. Line voltage there means a crossed or a broken conductor.',
      otherwise: (v) =>
        is(v, 'joined')
          ? 'some volts between neutral and earth, and more as loads come on'
          : 'tens of volts between neutral and earth, up to 230 V',
    },
    'earth-lifted': {
      text: (v) => `has more than ${num(v, 'few')} V between its earthing terminal (MET) and true earth`,
      why: 'All earthed metal stands at the voltage of this terminal. Whoever stands on the ground and touches the vehicle has that voltage across the body.',
      otherwise: 'tens of volts from the earthing terminal to true earth, up to 230 V',
    },
    swings: {
      text: (v) =>
        `lets its voltage drop by more than ${num(v, 'most').toFixed(1)} V, or rise, when a load of ${num(v, 'amps')} A is switched on`,
      why: 'The load’s current drops a few volts in line and neutral of the supply. A neutral or PEN that is parting adds many more, and may push another line up.',
      otherwise: 'a drop of 10 V or more, or a line that rises while another one falls',
    },
    'pen-whole': {
      text: 'has a whole PEN conductor, as 0 V between neutral and earth shows',
      why: 'Neutral and earth are joined at the intake, so the same voltage reaches both. They read 0 V between them with the PEN broken, too.',
    },
    'all-loads': {
      text: 'keeps its voltage within limits with every load on',
      why: 'One load was on, for a moment. More current drops more volts, and how many was not measured.',
    },
  },
};
