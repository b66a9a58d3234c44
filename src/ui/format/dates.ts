/** Days and times of this device, as people write them. */

const MOMENT = new Intl.DateTimeFormat('en-GB', {
  day: 'numeric',
  month: 'short',
  year: 'numeric',
  hour: '2-digit',
  minute: '2-digit',
});
const DAY = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', year: 'numeric' });

/** `3 Sept 2026, 14:05`. */
export const momentText = (moment: number): string => MOMENT.format(moment);

const TIME = new Intl.DateTimeFormat('en-GB', { hour: '2-digit', minute: '2-digit' });

/** `14:05` of today, and with its day of any other. */
export const sinceText = (moment: number, now: number): string =>
  dayText(moment) === dayText(now) ? TIME.format(moment) : momentText(moment);

/** `3 Sept 2026`. */
export const dayText = (moment: number): string => DAY.format(moment);

const DAY_MONTH = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short' });

/** `3 Sept`. */
export const dayMonthText = (moment: number): string => DAY_MONTH.format(moment);
