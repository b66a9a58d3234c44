/**
 * Taps that each test takes of a fluent person on a phone, at practice, as `npm run bench -- taps` counts them on a
 * sound single-phase site, tethered, on a combined earth; a test that is only on other sites on one of those, which is
 * named beside it, or as the one that is most like it.
 */
export const TAPS: Readonly<Record<string, number>> = {
  papers: 14,
  instruments: 30,
  isolate: 12,
  'prove-dead': 25,
  inspect: 13,
  'pe-circuit': 16,
  'pe-outlet': 28,
  'r1r2-polarity': 23,
  'insulation-circuit': 19,
  'insulation-unit': 16,
  'insulation-outlet': 30,
  'poles-open': 17,
  coding: 13,
  // On an electrode.
  electrode: 24,
  // On a rod beside the house’s earth.
  'earths-apart': 17,
  'make-good': 14,
  ze: 29,
  pfc: 20,
  'supply-volts': 34,
  energise: 29,
  'state-a': 13,
  'state-b': 23,
  // Both on a three-phase site.
  'coding-sizes': 47,
  'coding-in-use': 34,
  // On a three-phase socket.
  hold: 17,
  'state-c': 21,
  'c-to-b': 27,
  unplug: 28,
  // On a three-phase socket.
  release: 25,
  'state-d': 19,
  limit: 27,
  // On a site with two points on one service.
  'next-point': 30,
  // As limit.
  sharing: 27,
  loop: 28,
  'volt-drop': 25,
  // As residual-rated.
  'residual-origin': 30,
  'residual-half': 21,
  'residual-rated': 30,
  'residual-five': 19,
  'residual-ramp': 22,
  'half-wave': 36,
  'dc-ramp': 24,
  'dc-step': 22,
  'residual-again': 21,
  'open-pen': 34,
  'pilot-short': 27,
  'pilot-open': 28,
  diode: 26,
  'diode-in-c': 20,
  'pe-open': 28,
  recovery: 33,
  'supply-return': 22,
  stop: 26,
  // On a three-phase site.
  'lost-line': 31,
  finish: 19,
};
