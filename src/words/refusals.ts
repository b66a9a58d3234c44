/**
 * Why the bench did not do what it was asked, why an instrument showed no figure. Each ends "not done: …" or
 * "no reading: …"; no sentence of its own.
 */
import type { Reading } from '../bench/reading.ts';
import type { Refusal } from '../bench/refusal.ts';
import { neverText } from './puttingRight.ts';
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
  'no-next-point': 'this site has no second charging point',
  'battery-low': 'the tester’s battery is too low',
  'fuse-open': 'the tester’s fuse is open',
  'no-voltage': 'no voltage between the leads',
  'no-return': 'no return for the test current',
  'one-line': 'this site has one line',
  'a-line-dead': 'a line is missing',
};

export function refusalText(refusal: Refusal): string {
  switch (refusal.id) {
    case 'voltage-on-leads':
      return `voltage on the leads: ${refusal.volts} V`;
    case 'not-live':
      return `${PLACE_WORDS[refusal.place]} not live`;
    case 'never-put-right':
      return neverText(refusal.why);
    default:
      return REFUSAL_WORDS[refusal.id];
  }
}

/** The reading with the reason of a refusal in words, as the command line prints it. */
export const readingInWords = (reading: Reading) => ({
  ...reading,
  ...(reading.reason === undefined ? {} : { reason: refusalText(reading.reason) }),
});
