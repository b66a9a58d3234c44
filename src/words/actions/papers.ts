/** Words of the test action `papers`. */
import type { ActionWords } from '../actionWords.ts';
import { milliamps, num } from '../values.ts';

export const papers: ActionWords = {
  title: 'Papers and the unit’s sheet',
  purpose: 'Know what was designed before you look at what was built.',
  lines: {
    'open-pen': {
      text: 'has a named measure against a broken PEN conductor',
      why: 'A vehicle outdoors on a PME earth can become live if the PEN breaks. Something must guard against that.',
      otherwise: 'papers and sheet that name no open-PEN measure, on a PME supply',
    },
    window: {
      text: 'relies on a voltage window to notice a broken PEN of three phases',
      why: 'Balanced loads on three lines hold the neutral in its place when the PEN breaks. Line to neutral looks normal, and the window sees nothing.',
      otherwise: 'a sheet that names a voltage window, for a unit on three phases',
    },
    'at-origin': {
      text: 'has a residual device at its origin',
      why: 'On TT a fault current returns through soil: a few amperes, far too little for a breaker. The unit’s own residual device does not see the cable that feeds the unit.',
      otherwise: 'papers that name a breaker at the origin, and no residual device',
    },
    'touch-voltage': {
      text: (v) =>
        `keeps its electrode’s resistance × ${milliamps(num(v, 'rated'))} mA at ${num(v, 'touchVoltage')} V or less`,
      why: 'A fault just too small for the device can last for days. All that time the vehicle’s body stands at this voltage to the ground.',
      otherwise: (v) => {
        const [rated, volts] = [num(v, 'rated'), 1.2 * num(v, 'touchVoltage')];
        return `a product above the limit, such as ${(volts / rated).toFixed(0)} Ω × ${milliamps(rated)} mA = ${volts.toFixed(0)} V`;
      },
    },
    'over-rating': {
      text: 'is set to draw more current than its breaker’s rating',
      why: (v) =>
        `The unit is set to ${num(v, 'setCurrent')} A and may draw that for hours; the breaker is rated ${num(v, 'rating')} A. Above its rating, breaker and cable heat until the breaker trips.`,
      otherwise: 'a set current that is higher than the rating, such as 40 A on a B32',
    },
    additional: {
      text: (v) =>
        `has a residual device of ${milliamps(num(v, 'rated'))} mA or less, type A, F or B, that opens every live conductor`,
      why: 'A shock is some tens of milliamperes through a person, and no breaker feels that. Types A, F and B feel it even when a rectifier has chopped the current.',
      otherwise:
        'no such device in the papers, or one with a higher rating, of type AC, or with too few poles',
    },
    direct: {
      text: 'has protection against smooth d.c.: a d.c. detector or a type B device',
      why: 'A faulty charger in a vehicle can leak smooth d.c. It magnetises the core of a type A device, which may then miss the current through a person.',
      otherwise: 'a type A or F device in the papers, with no d.c. detector beside it',
    },
    'type-ac': {
      text: 'relies on a residual device of type AC',
      why: 'A type AC device feels pure a.c. alone. A vehicle’s rectifier can leak half-waves or d.c., and the device may stay closed.',
      otherwise: 'type AC named for a residual device in the papers',
    },
    'cable-carries': {
      text: 'has a cable that, as it is laid, carries the breaker’s rating',
      why: 'The papers give the cable’s length and areas. Thermal insulation, or other cables beside it, let it carry less, and you see them only on the spot.',
    },
    'own-circuit': {
      text: 'feeds nothing but the unit',
      why: 'Papers tell what was planned. A light or a socket that was added later shows itself when the circuit is off.',
    },
    'as-fitted': {
      text: 'has fitted the devices that its papers name',
      why: 'Papers tell what was meant. Another device may have been fitted, because it was the one in the van.',
    },
    offer: {
      text: 'offers no more current than it is set to',
      why: 'The setting is a number on the sheet. The offer is a duty on the pilot, and a fault can make that duty too large.',
    },
  },
};
