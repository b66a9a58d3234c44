/** The least of rating, setting, load limit and coding is offered, and nothing below 6 A (IEC 61851-1:2017 6.3.1.6, Table A.7). */
import { describe, expect, test } from 'vitest';
import { offeredCurrent } from '../../src/unit/offer.ts';
import { SHEET } from '../bench/build.ts';

const tethered = { ...SHEET, ratedCurrent: 32, setCurrent: 32 };
const socket = { ...tethered, outlet: 'socket' } as const;

describe('what limits it', () => {
  test.each([
    { what: 'nothing but the rating', sheet: tethered, coding: 'none', limit: null, amps: 32 },
    { what: 'the setting', sheet: { ...tethered, setCurrent: 16 }, coding: 'none', limit: null, amps: 16 },
    {
      what: 'a rating under the setting',
      sheet: { ...tethered, ratedCurrent: 16 },
      coding: 'none',
      amps: 16,
    },
    { what: 'load management', sheet: tethered, coding: 'none', limit: 10, amps: 10 },
    { what: 'more left than it is rated for', sheet: tethered, coding: 'none', limit: 40, amps: 32 },
    { what: 'a cable of 13 A', sheet: socket, coding: 13, limit: null, amps: 13 },
    { what: 'a cable of 20 A', sheet: socket, coding: 20, limit: null, amps: 20 },
    { what: 'a cable of more than the rating', sheet: socket, coding: 63, limit: null, amps: 32 },
    { what: 'load management under the cable', sheet: socket, coding: 20, limit: 8, amps: 8 },
    // No power outside the coding ranges (Annex B).
    { what: 'no plug', sheet: socket, coding: 'none', limit: null, amps: 0 },
    { what: 'a shorted coding', sheet: socket, coding: 'invalid', limit: null, amps: 0 },
    // A tether was chosen to the rating and codes nothing.
    { what: 'a tether, whatever is read', sheet: tethered, coding: 'invalid', limit: null, amps: 32 },
  ] as const)('$what: $amps A', ({ sheet, coding, amps, ...row }) => {
    expect(offeredCurrent(sheet, coding, 'limit' in row ? row.limit : null)).toBe(amps);
  });
});

describe('6 A is the least that a pilot can say: 10 % (Table A.7)', () => {
  test.each([
    { left: 6, amps: 6 },
    { left: 6.01, amps: 6.01 },
    { left: 5.99, amps: 0 },
    { left: 0, amps: 0 },
  ])('$left A left: $amps A offered', ({ left, amps }) => {
    expect(offeredCurrent(tethered, 'none', left)).toBe(amps);
    expect(offeredCurrent({ ...tethered, setCurrent: left }, 'none', null)).toBe(amps);
    expect(offeredCurrent({ ...socket, ratedCurrent: left }, 32, null)).toBe(amps);
  });
});
