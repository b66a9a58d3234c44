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

export interface Hours {
  /** Whether the default charging hours forbid charging at a moment. */
  readonly isPeak: (now: Microseconds) => boolean;
  /** The next moment after now at which a day's hours begin or end, or midnight. */
  readonly nextEdge: (now: Microseconds) => Microseconds;
}

/** The calendar of a bench whose time 0 is at this clock, written as 2026-03-10T10:00. */
export function hoursFrom(clock: string): Hours {
  const [year = 0, month = 1, day = 1, hour = 0, minute = 0] = clock.split(/[-T:]/).map(Number);
  const firstDay = dayNumber(year, month, day);
  const firstMinute = hour * 60 + minute;
  const daysPassed = (now: Microseconds): number => Math.floor((firstMinute + now / MINUTE) / DAY);
  const minutesAt = (now: Microseconds): number => firstMinute + now / MINUTE - DAY * daysPassed(now);
  return {
    isPeak: (now) => isPeakHour(WEEKDAYS[(firstDay + daysPassed(now)) % 7] as Weekday, minutesAt(now)),
    nextEdge: (now) => {
      const minutes = minutesAt(now);
      const next = EDGES.find((edge) => edge > minutes) ?? DAY;
      return now + Math.max(1, Math.round((next - minutes) * MINUTE));
    },
  };
}

/** Minutes after midnight at which the hours of some day begin or end. */
const EDGES = [...PEAK_HOURS.flatMap(({ least, greatest }) => [least, greatest]), DAY];
