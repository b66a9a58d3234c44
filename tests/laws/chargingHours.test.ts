/**
 * The default hours at every edge of the day and week, and the random delay.
 * Overrides are the unit's matter.
 */

import { expect, test } from 'vitest';
import { isPeakHour, RANDOM_DELAY, WEEKDAYS } from '../../src/laws/chargingHours.ts';

const at = (hours: number, minutes: number) => hours * 60 + minutes;
const REGULATION = 'SI 2021/1467, regulation 10';
const OWN_EDGE = 'SI 2021/1467, regulation 10; which side the edge belongs to is our reading';
const FROM_MEMORY = 'SI 2021/1467, regulation 10; weekdays only, from memory';

test.each([
  { day: 'Monday', minutes: at(0, 0), peak: false, source: REGULATION },
  { day: 'Monday', minutes: at(7, 59), peak: false, source: REGULATION },
  { day: 'Monday', minutes: at(8, 0), peak: true, source: OWN_EDGE },
  { day: 'Wednesday', minutes: at(10, 59), peak: true, source: REGULATION },
  { day: 'Wednesday', minutes: at(11, 0), peak: false, source: OWN_EDGE },
  { day: 'Thursday', minutes: at(15, 59), peak: false, source: REGULATION },
  { day: 'Thursday', minutes: at(16, 0), peak: true, source: OWN_EDGE },
  { day: 'Tuesday', minutes: at(17, 30), peak: true, source: REGULATION },
  { day: 'Friday', minutes: at(21, 59), peak: true, source: REGULATION },
  { day: 'Friday', minutes: at(22, 0), peak: false, source: OWN_EDGE },
  { day: 'Friday', minutes: at(23, 59), peak: false, source: REGULATION },
  { day: 'Saturday', minutes: at(17, 30), peak: false, source: FROM_MEMORY },
  { day: 'Sunday', minutes: at(9, 0), peak: false, source: FROM_MEMORY },
] as const)('$day, minute $minutes: peak $peak ($source)', ({ day, minutes, peak }) => {
  expect(isPeakHour(day, minutes)).toBe(peak);
});

test('a week has five times nine peak hours', () => {
  let minutes = 0;
  for (const day of WEEKDAYS) {
    for (let minute = 0; minute < 1440; minute += 1) if (isPeakHour(day, minute)) minutes += 1;
  }
  expect(minutes / 60).toBe(5 * 9);
});

test('a minute outside the day is refused', () => {
  for (const minutes of [-1, 1440, Number.NaN])
    expect(() => isPeakHour('Monday', minutes)).toThrow(RangeError);
});

test('the random delay is 600 s as delivered and can reach 1800 s (SI 2021/1467, regulation 11)', () => {
  expect(RANDOM_DELAY).toEqual({ default: 600, capability: 1800 });
});
