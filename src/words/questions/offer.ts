/** Words of the questions on what the pilot says. */

import type { Values } from '../../verification/testAction.ts';
import type { QuestionWords } from '../questionWords.ts';
import { num, str } from '../values.ts';

const STATE: Readonly<Record<string, string>> = {
  A: 'no vehicle (A)',
  B: 'connected (B)',
  C: 'asks for supply (C)',
  D: 'asks and wants ventilation (D)',
};

const CODED: Readonly<Record<string, string>> = {
  13: '13 A',
  20: '20 A',
  32: '32 A',
  63: '63 A',
  gap: 'between two sizes: the maker decides',
  none: 'nothing plugged in, no supply',
  invalid: 'an error, no supply',
};

/** With a minus sign, one digit after the point. */
const volts = (v: Values): string => `about ${num(v, 'volts').toFixed(1).replace('-', '−')} V`;

const BRANCHES = 'Up to 51 A the duty is I ÷ 0.6 in per cent; above 51 A it is I ÷ 2.5 + 64.';

const percentBranch = (percent: number): string =>
  percent > 85 ? `Above 85 %: I = ${percent} × 2.5 − 160.` : `From 10 to 85 %: I = ${percent} × 0.6.`;

/** Of an offer that a cable would allow: what it needs, or why the unit offers less. */
const ofCable = (v: Values, amps: number, ohms: string): string =>
  num(v, 'answer') === amps
    ? `The cable carries ${amps} A, but the unit is rated ${num(v, 'rated')} A.`
    : `That would need ${ohms} between PP and PE.`;

export const offer: Readonly<Record<string, QuestionWords>> = {
  'state-of-level': {
    stem: (v) => `The pilot’s positive peak reads ${num(v, 'volts').toFixed(2)} V. Which state is that?`,
    choices: STATE,
    working: (v) => [
      'A: 11.4 to 12.6 V. B: 8.37 to 9.59 V. C: 5.47 to 6.53 V. D: 2.59 to 3.28 V.',
      `${num(v, 'volts').toFixed(2)} V lies in the range of ${str(v, 'state')}.`,
    ],
    why: 'The vehicle’s resistors pull the positive peak down through the unit’s 1 kΩ. More load on the pilot means a lower peak, and the unit reads what the vehicle wants from it.',
  },
  'level-of-state': {
    stem: (v) =>
      `Without a vehicle the pilot peaks at ${num(v, 'open').toFixed(1)} V behind 1 kΩ. A vehicle puts ${num(v, 'load')} Ω and a diode of 0.7 V on it (${str(v, 'state')}). What is the positive peak now?`,
    mistakes: {
      'diode-forgotten':
        'That leaves the diode out: 0.7 V of the peak drop across it, not across the resistors.',
      'halves-crossed': 'That is the drop across the unit’s 1 kΩ. The pilot is read across the vehicle.',
      'no-load': 'That is the peak without a vehicle. The vehicle’s resistors pull it down.',
    },
    working: (v, answer) => [
      `V = 0.7 + (${num(v, 'open').toFixed(1)} − 0.7) × ${num(v, 'load')} ÷ (1000 + ${num(v, 'load')}) = ${answer}`,
    ],
    why: 'The diode takes 0.7 V, and the rest divides between the unit’s 1 kΩ and the vehicle’s resistors.',
  },
  'low-half': {
    stem: (v) =>
      `A vehicle ${str(v, 'state') === 'B' ? 'is connected (B)' : 'asks for supply (C)'}. Its diode is ${str(v, 'diode')}. What is the pilot’s negative peak while the pilot oscillates?`,
    choices: {
      sound: volts,
      shorted: volts,
      none: volts,
      'as-open': (v) => volts(v).replace('about ', 'about +'),
    },
    working: (v, answer) =>
      str(v, 'diode') === 'sound'
        ? [
            'The diode blocks in the negative half: nothing flows, nothing drops in the 1 kΩ.',
            `The whole of it shows: ${answer}.`,
          ]
        : [
            'With the diode shorted, the vehicle’s resistors load the negative half too.',
            `−12 V divide between 1 kΩ and the vehicle: ${answer}.`,
          ],
    why: 'The diode is how the unit tells a vehicle from water or a resistor: only a diode leaves the negative peak at −12 V.',
  },
  'source-resistance': {
    stem: (v) =>
      `The pilot peaks at ${num(v, 'open').toFixed(2)} V with no vehicle, and at ${num(v, 'loaded').toFixed(2)} V with ${num(v, 'load')} Ω and a diode of ${num(v, 'drop')} V. What is the resistance of the pilot’s source?`,
    mistakes: {
      'diode-forgotten': 'That puts the whole peak across the resistor. The diode takes 0.7 V of it.',
      'load-for-source': 'That is the vehicle’s resistor, not the unit’s.',
      'loaded-over-lost': 'That is upside down: the volts lost drop in the source.',
    },
    working: (v, answer) => [
      `Current: (${num(v, 'loaded').toFixed(2)} − ${num(v, 'drop')}) V ÷ ${num(v, 'load')} Ω.`,
      `Lost in the source: ${num(v, 'open').toFixed(2)} − ${num(v, 'loaded').toFixed(2)} V.`,
      `R = lost volts ÷ current = ${answer}; right is ${num(v, 'least')} to ${num(v, 'greatest')} Ω.`,
    ],
    why: 'The same current flows through the source and the vehicle. What the peak loses drops in the source, so a wrong source shifts every level and the unit may misread what a vehicle asks.',
  },
  'duty-of-current': {
    stem: (v) => `At which duty does the pilot offer ${num(v, 'amps')} A?`,
    mistakes: {
      'amperes-for-percent': 'That takes amperes for per cent. 32 A are 53.3 %, not 32 %.',
      'times-not-over':
        'That multiplies by 0.6. Amperes are 0.6 times the per cent, so per cent are amperes divided by 0.6.',
      'other-branch': 'That is the other branch: they meet at 51 A.',
    },
    working: (v, answer) => [
      BRANCHES,
      num(v, 'amps') <= 51
        ? `${num(v, 'amps')} ÷ 0.6 = ${answer}`
        : `${num(v, 'amps')} ÷ 2.5 + 64 = ${answer}`,
    ],
    why: 'The share of each millisecond that the pilot is high tells the vehicle how much it may draw. A wrong duty overloads the cable or starves the car, and nothing trips.',
  },
  'current-of-duty': {
    stem: (v) =>
      `The pilot has a duty of ${num(v, 'percent')} %. How much may the vehicle draw, in each line?`,
    mistakes: {
      'percent-for-amperes': 'That takes per cent for amperes. 53.3 % are 32 A.',
      'over-not-times': 'That divides by 0.6. Up to 85 % each per cent is 0.6 A.',
      'other-branch': 'That is the other branch: they meet at 85 %.',
    },
    working: (v, answer) => [percentBranch(num(v, 'percent')), `I = ${answer}`],
    why: 'The vehicle draws what it reads from the duty. It cannot know what breaker or cable is behind the unit.',
  },
  'duty-band': {
    stem: (v) => `The pilot has a duty of ${num(v, 'percent')} %. What does a vehicle make of that?`,
    choices: {
      'not-allowed': 'it may not charge',
      'digital-link': 'it asks over a digital link',
      '6-A': 'it may draw 6 A',
      '80-A': 'it may draw 80 A',
    },
    working: () => [
      '3 to 7 %: digital link. 8 to under 10 %: 6 A. Above 96 up to 97 %: 80 A.',
      'Below 3 %, between 7 and 8 %, and above 97 %: not allowed.',
    ],
    why: 'The ends of the scale are kept free, so that a drifted or broken pilot is never read as a large offer.',
  },
  'current-of-times': {
    stem: (v) =>
      `The pilot is high for ${num(v, 'high')} µs of each ${num(v, 'period')} µs. How much does it offer, in each line?`,
    mistakes: {
      'percent-for-amperes': 'That is the duty in per cent. Amperes are 0.6 times as many.',
      'low-for-high': 'That takes the low time. The offer is in the time that the pilot is high.',
      'high-over-low':
        'That divides the high time by the low time. The duty is the high time over the whole period.',
    },
    working: (v, answer) => [
      `${num(v, 'high')} µs ÷ ${num(v, 'period')} µs = ${((100 * num(v, 'high')) / num(v, 'period')).toFixed(1)} %`,
      `× 0.6 = ${answer}`,
    ],
    why: 'Only the share of the period counts. A frequency that is a little off changes both times alike.',
  },
  'least-of-limits': {
    stem: (v) =>
      `A socket-outlet on ${num(v, 'phases') === 1 ? 'one phase' : 'three phases'}: unit rated ${num(v, 'unit')} A, set to ${num(v, 'setting')} A; cable coded for ${num(v, 'cable')} A; the site’s load limit leaves ${num(v, 'limit')} A. What does a correct unit offer, in each line?`,
    mistakes: {
      'least-below-six': 'Less than 6 A cannot be offered: the pilot has no duty for it.',
      'greatest-of-all': 'That is the largest of them. Each of them is a limit, so the lowest counts.',
      'unit-alone': 'That is the unit’s rating alone. The other three limit it too.',
      'cable-alone': 'That is the cable’s coding alone. The other three limit it too.',
      'limit-forgotten': 'That leaves the site’s limit out.',
    },
    working: (v, answer) => [
      `The lowest of ${num(v, 'unit')}, ${num(v, 'setting')}, ${num(v, 'cable')} and ${num(v, 'limit')} A is ${Math.min(num(v, 'unit'), num(v, 'setting'), num(v, 'cable'), num(v, 'limit'))} A.`,
      answer === '0 A'
        ? 'The pilot has no duty for less than 6 A, so nothing is offered.'
        : `That is 6 A or more, so the pilot can offer it: ${answer}.`,
    ],
    why: 'Every part of the path carries the same current: the weakest decides. Below 6 A the pilot stays steady and the vehicle waits.',
  },
  'coding-of-ohms': {
    stem: (v) =>
      `A plug reads ${num(v, 'ohms')} Ω between proximity (PP) and PE. What does a unit make of it?`,
    choices: CODED,
    working: () => [
      '13 A: 1100 to 2460 Ω. 20 A: 400 to 936 Ω. 32 A: 164 to 308 Ω. 63 A: 80 to 140 Ω.',
      'Above 4500 Ω: nothing plugged in. Below 60 Ω: an error.',
    ],
    why: 'The resistor in the plug tells what the cable carries. Between the ranges a reading could be either, so the standard leaves the threshold to the maker.',
  },
  'coding-with-contact': {
    stem: (v) =>
      `A cable is coded ${num(v, 'ohms')} Ω (${num(v, 'coding')} A). A dirty contact adds ${num(v, 'contact')} Ω at the proximity contact (PP). What does the unit make of it?`,
    choices: CODED,
    working: (v) => [
      `${num(v, 'ohms')} + ${num(v, 'contact')} = ${num(v, 'ohms') + num(v, 'contact')} Ω`,
      '13 A: 1100 to 2460 Ω. 20 A: 400 to 936 Ω. 32 A: 164 to 308 Ω. 63 A: 80 to 140 Ω. Above 4500 Ω: none.',
    ],
    why: 'Added ohms make a large cable look like a smaller one, or like none: the car charges slowly or not at all, and nothing is dangerous. Less resistance would be: a small cable would pass for a large one.',
  },
  'high-time': {
    stem: (v) =>
      `The pilot runs at 1000 Hz. How long is it high in each period when it offers ${num(v, 'amps')} A?`,
    mistakes: {
      'low-for-high': 'That is the time for which the pilot is low.',
      'amperes-for-percent': 'That takes amperes for per cent of the period. 32 A are 53.3 %, not 32 %.',
      'times-not-over': 'That multiplies by 0.6. Per cent are amperes divided by 0.6.',
    },
    working: (v, answer) => [
      num(v, 'amps') <= 51
        ? `Duty: ${num(v, 'amps')} ÷ 0.6 = ${(num(v, 'amps') / 0.6).toFixed(1)} %`
        : `Duty: ${num(v, 'amps')} ÷ 2.5 + 64 = ${(num(v, 'amps') / 2.5 + 64).toFixed(1)} %`,
      `That share of a period of 1 ms: ${answer}`,
    ],
    why: 'The vehicle times the high part against the whole period. A pilot that is high for too long lets it draw more than cable and breaker carry.',
  },
  'uncoded-plug': {
    stem: (v) =>
      `A socket-outlet rated ${num(v, 'rated')} A. Between proximity (PP) and PE the plug in it has ${
        str(v, 'read') === 'none' ? 'no resistor at all' : `${str(v, 'read')} Ω`
      }. What does a correct unit do when the vehicle asks?`,
    choices: {
      'no-supply': 'no supply',
      '13-A': 'it offers 13 A',
      '16-A': 'it offers 16 A',
      '20-A': 'it offers 20 A',
      '32-A': 'it offers 32 A',
    },
    mistakes: {
      'no-supply': 'A coded plug is to be supplied. Only above 4500 Ω is there none for the unit.',
      '13-A': 'That would need 1100 to 2460 Ω between PP and PE.',
      '16-A': (v) =>
        num(v, 'rated') === 16 && num(v, 'answer') > 0
          ? 'That is the unit’s own rating. The cable is coded for less.'
          : 'No plug is coded for 16 A.',
      '20-A': (v) => ofCable(v, 20, '400 to 936 Ω'),
      '32-A': (v) => ofCable(v, 32, '164 to 308 Ω'),
    },
    working: (v, answer) => [
      '13 A: 1100 to 2460 Ω. 20 A: 400 to 936 Ω. 32 A: 164 to 308 Ω. Above 4500 Ω: no plug.',
      num(v, 'answer') === 0
        ? `Nothing tells what the cable carries, so ${answer}.`
        : `The cable carries ${num(v, 'answer')} A and the unit ${num(v, 'rated')} A, so ${answer}.`,
    ],
    why: 'The unit cannot see the cable. Without the resistor it would have to guess, and a thin cable would burn: so it waits.',
  },
};
