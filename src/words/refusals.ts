/**
 * Why the bench did not do what it was asked, why an instrument showed no figure, why a cause cannot be on an
 * installation or be put right there. Each ends "not done: …" or "no reading: …"; no sentence of its own.
 */
import type { Reading } from '../bench/reading.ts';
import type { Refusal } from '../bench/refusal.ts';
import type { Impossible, Never } from '../faults/impossible.ts';
import { PLACE_WORDS } from './terminals.ts';

type Plain = Exclude<Refusal['id'], 'voltage-on-leads' | 'not-live' | 'never-put-right'>;

const REFUSAL_WORDS: Readonly<Record<Plain, string>> = {
  'cover-closed': 'cover closed',
  'not-isolated': 'the circuit is not isolated',
  'supply-off': 'the supply is off',
  'plug-held': 'the plug is held',
  'no-such-link': 'a link goes from a line to PE or N at the origin',
  'no-electrode': 'this site has no electrode of its own',
  'no-earthing-conductor': 'this site has no distributor’s earth',
  'no-arrester': 'this unit has no arrester',
  'battery-low': 'the tester’s battery is too low',
  'fuse-open': 'the tester’s fuse is open',
  'no-voltage': 'no voltage between the leads',
  'no-return': 'no return for the test current',
  'one-line': 'this site has one line',
  'a-line-dead': 'a line is missing',
};

const NEVER_WORDS: Readonly<Record<Never, string>> = {
  'line-unknown': 'line is 1, 2 or 3',
  'line-absent': 'this site has one line: line is 1',
  'one-line': 'this site has one line',
  'no-socket': 'this unit has no socket-outlet',
  'no-tether': 'this unit has no tether',
  'no-residual-device': 'this unit has no residual current device of its own',
  'no-ac-device': 'the unit has no a.c. device as it is',
  'no-direct-detector': 'this unit has no d.c. detector',
  'no-device-at-origin': 'this circuit has no residual device at its origin',
  'no-open-pen-measure': 'this unit has no open-PEN measure, or the site no PEN',
  'no-service-sensor': 'this unit has no sensor on the service',
  'no-electrode': 'this site has no electrode of its own',
  'no-earthing-conductor': 'a TT site has no earthing conductor from the distributor',
  'no-pen': 'this site is not supplied by a PEN',
  'no-second-earth': 'this site has one earth alone',
  'no-arrester': 'this unit has no arrester',
  'electrode-decides': 'on TT the electrode decides',
  'three-phases': 'on three phases it would destroy the unit at once',
  'no-line-watched': 'this unit has one line, or goes on without another',
  'slower-breaker-opens': 'here every slower type still opens in time, or a residual device does',
  'ventilation-declared': 'ventilation is declared here',
  'breaker-stays-open': 'this unit’s device opens a breaker, which stays open',
  'no-trip-kept': 'no trip of this unit’s contactor waits for its reset button',
  'customer-cable-amps': 'amps is 13 or 20',
  'no-breaker-too-large': 'no breaker of up to 63 A is too large for this cable',
  'no-breaker-too-small': 'no breaker is rated lower than this unit is set to',
  'cable-carries-more': 'every cable that is tabled here carries more than the unit is set to',
  'no-greater-rating': 'a residual device of so high a rating has no greater one beside it',
  'opens-lines-only-anyway': 'the device at the origin opens the lines alone by its papers',
  'earth-crossed-with-it': 'on this site the earth is taken from the neutral, and would be crossed with it',
  'neutral-would-show': 'here an open PEN would move line to neutral out of its limits',
  'nothing-to-bond': 'nothing of this building leads to the ground by itself',
  'delayed-by-design': 'the device at the origin is a delayed one',
  'no-conductor-too-small':
    'on so short a run no conductor loses too much, or the unit’s maker allows for it',
  'cable-carries-in-insulation': 'this cable carries enough even inside insulation',
  'protective-stands-fault': 'here even the smallest protective conductor stands the fault',
  'service-kept-within': 'this unit keeps the service within its limit, or is far smaller than it',
  'designers-to-alter': 'the design has to be altered first: that is the designer’s to do',
  distributors: 'it belongs to the distributor',
};

export const impossibleText = (why: Impossible): string => NEVER_WORDS[why];

export function refusalText(refusal: Refusal): string {
  switch (refusal.id) {
    case 'voltage-on-leads':
      return `voltage on the leads: ${refusal.volts} V`;
    case 'not-live':
      return `${PLACE_WORDS[refusal.place]} not live`;
    case 'never-put-right':
      return NEVER_WORDS[refusal.why];
    default:
      return REFUSAL_WORDS[refusal.id];
  }
}

/** The reading with the reason of a refusal in words, as the command line prints it. */
export const readingInWords = (reading: Reading) => ({
  ...reading,
  ...(reading.reason === undefined ? {} : { reason: refusalText(reading.reason) }),
});
