/** Words of the test action `insulation-outlet`. */
import type { ActionWords } from '../actionWords.ts';
import { is, megohms, num } from '../values.ts';

export const insulationOutlet: ActionWords = {
  purpose: 'Measure the insulation of the outlet and its cable, at a voltage that the unit’s sheet allows.',
  stops: {
    'outlet-to-earth':
      'insulation of the outlet to earth is too low, a risk of shock: do not energise (BS 7671 643.1, EAWR reg. 4)',
    'outlet-lives':
      'insulation between the outlet’s live conductors is too low: do not energise (BS 7671 643.1)',
  },
  lines: {
    'outlet-to-earth': {
      text: 'reads under 1.0 MΩ from the outlet’s live conductors to PE',
      why: 'With the contactor open, only insulation lies between the outlet and PE. Through water or a crushed cable, current leaks to whoever holds the connector.',
      otherwise: 'a reading such as 0.20 MΩ, in a worn tether perhaps only while you flex it',
    },
    'outlet-lives': {
      text: (v) => `reads at least ${megohms(num(v, 'least'))} MΩ from line to neutral of the outlet`,
      why: (v) =>
        is(v, 'bleeds')
          ? 'By its sheet a part across each open pole lets a little current through. The tester reads two of them in series, which is less than insulation alone.'
          : 'The contactor’s open poles cut the unit’s electronics off. Only insulation is left between line and neutral, and a leak there would heat the connector.',
      otherwise:
        'a lower reading, as with damaged insulation, or with closed poles and the unit’s electronics behind them',
    },
    'circuit-insulated': {
      text: 'has good insulation between its own conductors',
      why: 'The contactor is open, so a reading at the outlet ends at its poles. A damaged cable behind them changes nothing.',
    },
  },
  limits: {
    insulation: {
      text: 'least insulation resistance',
      sum: (v) =>
        `at least ${megohms(num(v, 'minimum'))} MΩ at ${num(v, 'testVoltage')} V d.c. or as the sheet allows (equipment connected)`,
    },
  },
};
