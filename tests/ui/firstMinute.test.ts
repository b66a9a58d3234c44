// The first minute's readings come from the bench: one pair shows next to nothing, another the whole voltage, on a unit with
// a stuck line pole and on no sound one; none of them is typed into the page.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import file from '../../scenarios/first-run/no-vehicle.json';
import { toItsEnd } from '../../src/bench/toItsEnd.ts';
import type { Pair } from '../../src/ui/screens/firstRun/minute.ts';
import { moved, readBetween, startingMinute } from '../../src/ui/screens/firstRun/minute.ts';

const voltsAt = (pair: Pair): number => readBetween(toItsEnd(startingMinute()), pair).reading.value ?? 0;

test('it says ready, and only one of the pairs tells', () => {
  expect(toItsEnd(startingMinute()).seen.indicator).toBe('ready');
  expect(voltsAt(['L1', 'N'])).toBeLessThan(5);
  // The file's own voltage at the origin, nothing flowing; two-pole detector, ±3 % and 3 digits (IEC 61557, from memory).
  expect(Math.abs(voltsAt(['L1', 'PE']) - file.site.voltage)).toBeLessThan(0.03 * file.site.voltage + 3);
});

test('a touched pin moves the lead that was put on first', () => {
  expect(moved(['L1', 'N'], 'PE')).toEqual(['N', 'PE']);
  expect(moved(['N', 'PE'], 'L1')).toEqual(['PE', 'L1']);
  expect(moved(['L1', 'N'], 'L1')).toEqual(['L1', 'N']);
});

test('no figure in volts is written in the page', () => {
  for (const name of ['FirstMinute.tsx', 'Pins.tsx', 'minute.ts'])
    expect(
      readFileSync(join(import.meta.dirname, '../../src/ui/screens/firstRun', name), 'utf8'),
      name,
    ).not.toMatch(/\d\s?V\b/u);
});
