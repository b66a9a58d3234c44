/**
 * The bench's calendar: what day and minute it is at a moment of bench time, from the scenario's clock, and when the
 * default charging hours next change.
 */
import type { Weekday } from '../laws/chargingHours.ts';
import { isPeakHour, PEAK_HOURS, WEEKDAYS } from '../laws/chargingHours.ts';
import type { Microseconds } from '../laws/quantities.ts';
import { microseconds } from '../laws/quantities.ts';

const MINUTE: Microseconds = microseconds(60);
const DAY = 1440;
/** Days before the month in a year that begins in March, so that the leap day comes last. */
const DAYS_BEFORE = [306, 337, 0, 31, 61, 92, 122, 153, 184, 214, 245, 275] as const;

/** Days since a Monday long ago, by the Gregorian calendar; integers alone, so that every engine agrees. */
function dayNumber(year: number, month: number, day: number): number {
  const y = month < 3 ? year - 1 : year;
  const leaps = Math.floor(y / 4) - Math.floor(y / 100) + Math.floor(y / 400);
  // 1 March of year 0 was a Wednesday.
  return 365 * y + leaps + (DAYS_BEFORE[month - 1] ?? 0) + day + 1;
}

/** Weekday and minutes after midnight at a moment; the clock is written as 2026-03-10T10:00. */
export function timeAt(clock: string, now: Microseconds): { weekday: Weekday; minutes: number } {
  const [year = 0, month = 1, day = 1, hour = 0, minute = 0] = clock.split(/[-T:]/).map(Number);
  const passed = hour * 60 + minute + now / MINUTE;
  const days = dayNumber(year, month, day) + Math.floor(passed / DAY);
  return { weekday: WEEKDAYS[days % 7] as Weekday, minutes: passed - DAY * Math.floor(passed / DAY) };
}

export function isPeakAt(clock: string, now: Microseconds): boolean {
  const { weekday, minutes } = timeAt(clock, now);
  return isPeakHour(weekday, minutes);
}

/** The next moment after now at which a day's hours begin or end, or midnight. */
export function nextEdge(clock: string, now: Microseconds): Microseconds {
  const { minutes } = timeAt(clock, now);
  const edges = [...PEAK_HOURS.flatMap(({ least, greatest }) => [least, greatest]), DAY];
  const next = edges.find((edge) => edge > minutes) ?? DAY;
  return now + Math.max(1, Math.round((next - minutes) * MINUTE));
}
