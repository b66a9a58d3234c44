/** The bench's calendar: weekdays against the engine's own, and the edges of SI 2021/1467 reg. 10 at and beside each. */
import { describe, expect, test } from 'vitest';
import { hoursFrom } from '../../src/bench/hours.ts';

const HOUR = 3600e6;
const DAY = 24 * HOUR;

test('nine in the morning is peak from Monday to Friday, on every day from 1999 to 2101', () => {
  const wrong: string[] = [];
  for (let at = Date.UTC(1999, 0, 1); at < Date.UTC(2101, 0, 1); at += 86_400_000) {
    const day = new Date(at);
    const isWeekday = day.getUTCDay() >= 1 && day.getUTCDay() <= 5;
    const date = day.toISOString().slice(0, 10);
    if (hoursFrom(`${date}T09:00`).isPeak(0) !== isWeekday) wrong.push(date);
  }
  expect(wrong).toEqual([]);
});

describe('a Friday and what comes after', () => {
  const { isPeak } = hoursFrom('2026-03-13T00:00');

  test.each([
    { hours: 7.999, peak: false },
    { hours: 8, peak: true },
    { hours: 10.999, peak: true },
    { hours: 11, peak: false },
    { hours: 16, peak: true },
    { hours: 21.999, peak: true },
    { hours: 22, peak: false },
    // Saturday and Sunday, then Monday.
    { hours: 24 + 9, peak: false },
    { hours: 48 + 17, peak: false },
    { hours: 72 + 7.999, peak: false },
    { hours: 72 + 8, peak: true },
    // The Sunday, Saturday and Thursday before.
    { hours: -24 + 9, peak: true },
  ])('$hours h after midnight: peak $peak', ({ hours, peak }) => {
    expect(isPeak(hours * HOUR)).toBe(peak);
  });

  test('the clock’s own hour and minute count', () => {
    expect(hoursFrom('2026-03-13T07:30').isPeak(0.5 * HOUR)).toBe(true);
    expect(hoursFrom('2026-03-13T07:30').isPeak(0.499 * HOUR)).toBe(false);
  });
});

describe('the next edge', () => {
  test.each([
    { clock: '00:00', minutes: 480 },
    { clock: '07:59', minutes: 1 },
    { clock: '08:00', minutes: 180 },
    { clock: '10:30', minutes: 30 },
    { clock: '12:00', minutes: 240 },
    { clock: '16:00', minutes: 360 },
    { clock: '22:00', minutes: 120 },
    { clock: '23:59', minutes: 1 },
  ])('at $clock: in $minutes min', ({ clock, minutes }) => {
    const { nextEdge } = hoursFrom(`2026-03-10T${clock}`);
    expect(nextEdge(0)).toBe(minutes * 60e6);
    // The same a day later, and on the bench's clock then.
    expect(nextEdge(DAY)).toBe(DAY + minutes * 60e6);
  });
});
