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
  title: 'Papers and the unit’s sheet',
  purpose: 'Know what was meant before looking at what was made.',
  lines: {
    'open-pen': {
      text: 'has a measure named against an open PEN conductor',
      why: 'The vehicle stands out of doors on the supply’s own combined conductor.',
    },
    window: {
      text: 'relies on a voltage window against an open PEN conductor of three phases',
      why: 'Balanced lines hold the neutral in its place with the PEN open: there is nothing to see.',
    },
    'at-origin': {
      text: 'has a residual device at its origin',
      why: 'Through two electrodes no overcurrent device clears a fault, and the unit’s own cannot see the cable that feeds it.',
    },
    'touch-voltage': {
      text: (v) =>
        `keeps its electrode’s resistance × ${1000 * num(v, 'rated')} mA at ${num(v, 'touchVoltage')} V or less`,
      why: 'A fault too small for the device to see may stand for good.',
    },
    'over-rating': {
      text: 'takes more than its overcurrent device is rated for',
      why: (v) =>
        `The unit is set to ${num(v, 'setCurrent')} A and may take that for hours; the device is rated ${num(v, 'rating')} A.`,
    },
    additional: {
      text: (v) =>
        `has a residual device of ${1000 * num(v, 'rated')} mA or less, type A, F or B, that opens every live conductor`,
      why: 'Each connecting point has its own, in the unit or before it.',
    },
    direct: {
      text: 'is protected against smooth d.c., by a detector or a type B device',
      why: 'D.c. from a vehicle blinds the other types.',
    },
    'type-ac': {
      text: 'rests on a type AC device',
      why: 'It answers to pure a.c. alone; a charger does not keep to that.',
    },
    'cable-carries': {
      text: 'has a breaker rated no higher than its cable carries as it is laid',
      why: (v) =>
        `A breaker above that lets the cable overheat and never opens. ${str(v, 'table')}, method ${str(v, 'method')}, ${num(v, 'lineArea')} mm²: ${carried(v)}; the breaker is ${str(v, 'type')}${num(v, 'rating')}.`,
    },
    'volts-lost': {
      text: 'loses no more of its voltage along the cable than its unit can spare',
      why: (v) =>
        `A long thin cable turns volts into heat before they reach the unit. ${num(v, 'perAmpereMetre')} mV/A/m × ${amperes(num(v, 'current'))} × ${num(v, 'length')} m = ${num(v, 'lost').toFixed(2)} V, ${(100 * num(v, 'share')).toFixed(1)} % (${num(v, 'most')} V at most)${is(v, 'isDeclared') ? `; of 216.2 V there are ${num(v, 'left').toFixed(1)} V left, and the unit needs ${num(v, 'leastVoltage')} V` : ''}.`,
    },
    'stands-fault': {
      text: 'has a protective conductor that stands the heat of an earth fault until it is cleared',
      why: (v) =>
        `A conductor too small burns open in the fault, and the case stays live. ${protective(v)}; it has ${num(v, 'protectiveArea')} mm².`,
    },
    'breaks-current': {
      text: 'has a breaker that breaks the greatest current its supply can drive',
      why: (v) =>
        `A breaker that cannot quench the arc of a short circuit bursts. ${kiloamperes(num(v, 'flows'))} may flow at the origin; the breaker breaks ${kiloamperes(num(v, 'breakingCapacity'))}${is(v, 'isDeclared') ? `, and its consumer unit is declared for ${kiloamperes(num(v, 'capacity'))} with it` : ''}.`,
    },
    'service-carries': {
      text: 'asks no more of its service than the service is rated for',
      why: (v) =>
        `A unit takes its full current for hours, so that it gets no diversity. House ${amperes(num(v, 'house'))} + unit ${amperes(num(v, 'point'))}${is(v, 'isCurtailed') ? `, kept to ${num(v, 'curtailedTo')} A by the unit` : ''} = ${amperes(num(v, 'asked'))} on a service of ${num(v, 'rating')} A.`,
    },
    'fault-device': {
      text: 'has the residual device at its origin on which its fault protection rests',
      why: 'The unit’s own device sees only what lies beyond it: a fault in the cable that feeds the unit would not be cleared.',
    },
    'direct-adds': {
      text: 'lets more smooth d.c. stand behind the shared residual device than that device bears',
      why: (v) =>
        `Each unit lets up to 6 mA stand, and they add up until the device no longer trips. ${num(v, 'points')} × ${milliamps(num(v, 'each'))} mA = ${milliamps(num(v, 'points') * num(v, 'each'))} mA behind a type ${str(v, 'type')} device, which bears ${milliamps(num(v, 'bears'))} mA.`,
    },
    'laid-so': {
      text: 'has its cable laid as its papers say',
      why: 'The papers tell how it was to be laid; how it lies is to be seen on the spot.',
    },
    'own-circuit': { text: 'feeds nothing else', why: 'What hangs on the circuit is found by isolating it.' },
    'as-fitted': { text: 'has the devices fitted that the papers name', why: 'Papers tell what was meant.' },
    offer: {
      text: 'offers no more than it is set to',
      why: 'The setting is on the sheet; the offer is measured.',
    },
  },
  advice: {
    'not-selective': (v) =>
      `The ${milliamps(num(v, 'rated'))} mA device at the origin may open with the unit’s own, or instead of it: only a delayed one (S) of three times the rating or more waits.`,
  },
};
