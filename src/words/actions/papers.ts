/** Words of the test action `papers`. */

import type { Values } from '../../verification/testAction.ts';
import type { ActionWords } from '../actionWords.ts';
import { is, milliamps, num, str } from '../values.ts';

const amperes = (amps: number): string => `${Number(amps.toFixed(1))} A`;
const kiloamperes = (amps: number): string => `${(amps / 1000).toFixed(1)} kA`;

/** The tabled current, the factors that are not 1, and what they make of it. */
function carried(v: Values): string {
  const factors = [
    [num(v, 'ambientFactor'), `in air of ${num(v, 'ambient')} °C`],
    [num(v, 'groupedFactor'), `${num(v, 'grouped')} circuits bunched`],
    [num(v, 'insulatedFactor'), `${num(v, 'insulated')} mm in insulation`],
  ] as const;
  const listed = factors.filter(([factor]) => factor !== 1);
  const product = listed.map(([factor, what]) => ` × ${factor} (${what})`).join('');
  return `${num(v, 'tabled')} A${product}${listed.length === 0 ? '' : ` = ${amperes(num(v, 'amps'))}`}`;
}

function protective(v: Values): string {
  if (is(v, 'tabled'))
    return `Table 54.7: ${num(v, 'withoutSum')} mm² beside lines of ${num(v, 'lineArea')} mm² needs no sum`;
  const current = num(v, 'current').toFixed(0);
  const energy = is(v, 'byClass')
    ? `${num(v, 'classEnergy')} A²s by its energy class`
    : `(${current} A)² × ${num(v, 'time')} s`;
  return `230 V ÷ ${num(v, 'loop').toFixed(2)} Ω = ${current} A; √(${energy}) ÷ ${num(v, 'k')} = ${num(v, 'needed').toFixed(2)} mm²`;
}

export const papers: ActionWords = {
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
      text: 'has a breaker rated no higher than its cable carries as it is laid',
      why: (v) =>
        `A breaker above that lets the cable overheat and never opens. ${str(v, 'table')}, method ${str(v, 'method')}, ${num(v, 'lineArea')} mm²: ${carried(v)}; the breaker is ${str(v, 'type')}${num(v, 'rating')}.`,
      otherwise: (v) => `a breaker above what the cable carries, such as a B63 on ${num(v, 'lineArea')} mm²`,
    },
    'volts-lost': {
      text: 'loses no more of its voltage along the cable than its unit can spare',
      why: (v) =>
        `A long thin cable turns volts into heat before they reach the unit. ${num(v, 'perAmpereMetre')} mV/A/m × ${amperes(num(v, 'current'))} × ${num(v, 'length')} m = ${num(v, 'lost').toFixed(2)} V, ${(100 * num(v, 'share')).toFixed(1)} % (${num(v, 'most')} V at most)${is(v, 'isDeclared') ? `; of 216.2 V there are ${num(v, 'left').toFixed(1)} V left, and the unit needs ${num(v, 'leastVoltage')} V` : ''}.`,
      otherwise: (v) => `more than ${num(v, 'most')} V lost by the sum`,
    },
    'stands-fault': {
      text: 'has a protective conductor that stands the heat of an earth fault until it is cleared',
      why: (v) =>
        `A conductor too small burns open in the fault, and the case stays live. ${protective(v)}; it has ${num(v, 'protectiveArea')} mm².`,
      otherwise: 'a needed area above the one in the papers, by the sum',
    },
    'breaks-current': {
      text: 'has a breaker that breaks the greatest current its supply can drive',
      why: (v) =>
        `A breaker that cannot quench the arc of a short circuit bursts. ${kiloamperes(num(v, 'flows'))} may flow at the origin; the breaker breaks ${kiloamperes(num(v, 'breakingCapacity'))}${is(v, 'isDeclared') ? `, and its consumer unit is declared for ${kiloamperes(num(v, 'capacity'))} with it` : ''}.`,
      otherwise: 'a prospective current above the figure that the breaker and its enclosure are declared for',
    },
    'service-carries': {
      text: 'asks no more of its service than the service is rated for',
      why: (v) =>
        `A unit takes its full current for hours, so no diversity is allowed for it. House ${amperes(num(v, 'house'))}${num(v, 'next') === 0 ? '' : ` + next point ${amperes(num(v, 'next'))}`} + unit ${amperes(num(v, 'point'))}${is(v, 'isCurtailed') ? `, kept to ${num(v, 'curtailedTo')} A by the unit` : ''} = ${amperes(num(v, 'asked'))} on a service of ${num(v, 'rating')} A.`,
      otherwise: 'loads that add up to more than the service’s rating, with nothing that curtails the unit',
    },
    'fault-device': {
      text: 'has the residual device at its origin on which its fault protection rests',
      why: 'The unit’s own device sees only what lies beyond it: a fault in the cable that feeds the unit would not be cleared.',
      otherwise: 'papers that trust a residual device for fault protection, and name none at the origin',
    },
    'direct-adds': {
      text: 'may send more smooth d.c. through the shared residual device than that device bears',
      why: (v) =>
        `Each unit’s detector lets up to 6 mA flow on, and the currents of all units add up in the shared device until it no longer trips. ${num(v, 'points')} × ${milliamps(num(v, 'each'))} mA = ${milliamps(num(v, 'points') * num(v, 'each'))} mA through a type ${str(v, 'type')} device, which bears ${milliamps(num(v, 'bears'))} mA.`,
      otherwise: 'a sum of smooth d.c. above what the shared device bears, such as 12 mA where it bears 6 mA',
    },
    'laid-so': {
      text: 'has its cable laid as its papers say',
      why: 'Papers tell how the cable was meant to lie. Thermal insulation, or other cables beside it, let it carry less, and you see them only on the spot.',
    },
    'own-circuit': {
      text: 'feeds nothing but the unit',
      why: 'Papers tell what was planned. A light or a socket that was added later shows only when the circuit is switched off, and it goes off too.',
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
  advice: {
    'not-selective': (v) =>
      `The ${milliamps(num(v, 'rated'))} mA device at the origin may open with the unit’s own, or instead of it: only a delayed one (S) of three times the rating or more waits.`,
  },
};
