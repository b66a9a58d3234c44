/**
 * How a coding resistor is read at every edge, and that every permitted resistor is read as its
 * rating.
 */

import { describe, expect, test } from 'vitest';
import {
  CABLE_CODINGS,
  CODING_TOLERANCE,
  codedCurrent,
  codingResistance,
  readCoding,
} from '../../src/laws/proximity.ts';
import { PROXIMITY_ROWS } from '../references/proximityRanges.ts';

test.each(PROXIMITY_ROWS)('$ohms ohms: $reading ($source)', ({ ohms, reading }) => {
  expect(readCoding(ohms)).toBe(reading);
});

describe('a coding resistor within its spread is read as its rating', () => {
  test.each(CABLE_CODINGS)('%i A', (coding) => {
    for (const spread of [-CODING_TOLERANCE, 0, CODING_TOLERANCE]) {
      expect(readCoding(codingResistance(coding) * (1 + spread))).toBe(coding);
    }
  });
});

test('100 Ω stand for 63 A on three phases and 70 A on one; all else for the same on both (IEC 61851-1:2017, Table B.2)', () => {
  expect(CABLE_CODINGS.map((coding) => codedCurrent(coding, 3))).toEqual([13, 20, 32, 63]);
  expect(CABLE_CODINGS.map((coding) => codedCurrent(coding, 1))).toEqual([13, 20, 32, 70]);
});
