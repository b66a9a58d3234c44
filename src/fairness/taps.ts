/**
 * Taps that each test takes of a fluent person on a phone, at practice, as `npm run bench -- taps` counts them on a
 * sound single-phase site, tethered, on its own or a combined earth. A test that is only on other sites has the count of
 * the one that is most like it, which is named beside it.
 */
export const TAPS: Readonly<Record<string, number>> = {
  papers: 16,
  instruments: 30,
  isolate: 12,
  'prove-dead': 25,
  inspect: 13,
  'pe-circuit': 16,
  'pe-outlet': 28,
  'r1r2-polarity': 23,
  'insulation-circuit': 20,
  'insulation-unit': 17,
  'insulation-outlet': 29,
  'poles-open': 17,
  coding: 13,
  // As ze.
  electrode: 29,
  // As pe-circuit.
  'earths-apart': 16,
  'make-good': 14,
  ze: 29,
  pfc: 20,
  'supply-volts': 35,
  energise: 29,
  'state-a': 14,
  'state-b': 24,
  // Both counted on a three-phase site.
  'coding-sizes': 47,
  'coding-in-use': 34,
  // As state-d.
  hold: 19,
  'state-c': 21,
  'c-to-b': 27,
  unplug: 32,
  // As unplug.
  release: 32,
  'state-d': 19,
  limit: 31,
  // As limit.
  'next-point': 31,
  sharing: 31,
  loop: 29,
  'volt-drop': 29,
  // As residual-rated.
  'residual-origin': 35,
  'residual-half': 22,
  'residual-rated': 35,
  'residual-five': 20,
  'residual-ramp': 22,
  'half-wave': 40,
  'dc-ramp': 24,
  'dc-step': 24,
  'residual-again': 26,
  'open-pen': 38,
  'pilot-short': 29,
  'pilot-open': 34,
  diode: 28,
  'diode-in-c': 21,
  'pe-open': 31,
  recovery: 40,
  'supply-return': 22,
  stop: 28,
  // As supply-return.
  'lost-line': 22,
  finish: 20,
};
