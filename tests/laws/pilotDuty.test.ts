/**
 * Duty and current at every edge of both tables, and the way there and back. The step between 51
 * and 52.5 A is a known gap of the standard.
 */

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { currentForDuty, dutyForCurrent, greatestOffer, MISREAD_OFFERS } from '../../src/laws/pilotDuty.ts';
import { DUTY_ROWS, OFFER_ROWS } from '../references/pilotTables.ts';

test.each(OFFER_ROWS)('offer $amps A: $percent % ($source)', ({ amps, percent }) => {
  if (percent === null) expect(() => dutyForCurrent(amps)).toThrow(RangeError);
  else expect(dutyForCurrent(amps) * 100).toBeCloseTo(percent, 9);
});

test.each(DUTY_ROWS)('duty $percent %: $meaning ($source)', ({ percent, meaning }) => {
  const read = currentForDuty(percent / 100);
  if (typeof meaning === 'string') {
    expect(read).toEqual({ kind: meaning });
  } else {
    expect(read.kind).toBe('current');
    expect(read.kind === 'current' ? read.amps : Number.NaN).toBeCloseTo(meaning, 9);
  }
});

const readBack = (amps: number): number => {
  const meaning = currentForDuty(dutyForCurrent(amps));
  return meaning.kind === 'current' ? meaning.amps : Number.NaN;
};

test('an offer is read as it was made, 6 to 51 A and above 52.5 to 80 A', () => {
  const offers = fc.oneof(
    fc.double({ min: 6, max: 51, noNaN: true }),
    fc.double({ min: MISREAD_OFFERS.greatest + 1e-6, max: 80, noNaN: true }),
  );
  fc.assert(
    fc.property(offers, (amps) => {
      expect(readBack(amps)).toBeCloseTo(amps, 9);
    }),
  );
});

test('between 51 and 52.5 A the vehicle reads less, 50.6 to 51 A', () => {
  const offers = fc.double({ min: MISREAD_OFFERS.least + 1e-6, max: MISREAD_OFFERS.greatest, noNaN: true });
  fc.assert(
    fc.property(offers, (amps) => {
      expect(readBack(amps)).toBeGreaterThanOrEqual(50.6);
      expect(readBack(amps)).toBeLessThanOrEqual(51 + 1e-9);
    }),
  );
});

test('a vehicle is never told more than was offered', () => {
  fc.assert(
    fc.property(fc.double({ min: 6, max: 80, noNaN: true }), (amps) => {
      expect(readBack(amps)).toBeLessThanOrEqual(amps + 1e-9);
    }),
  );
});

test.each([
  { limits: [32, 20], offer: 20 },
  { limits: [16, 63, 10], offer: 10 },
  { limits: [6], offer: 6 },
  { limits: [5.9, 32], offer: 0 },
  { limits: [0], offer: 0 },
  { limits: [100, 90], offer: 80 },
])('limits of $limits A offer $offer A (IEC 61851-1:2017, 6.3.1.6)', ({ limits, offer }) => {
  expect(greatestOffer(...limits)).toBe(offer);
});
