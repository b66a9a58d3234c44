/** When what was asked comes back, in words. */
import { comesBack } from '../../store/comesBack.ts';
import type { Card } from '../../store/questionRecord.ts';
import { dayMonthText } from './dates.ts';

const DAY = 86_400_000;

/** When it is asked again. */
export function backText(card: Pick<Card, 'due' | 'last'>, assessment: number | null, now: number): string {
  const due = comesBack(card, assessment, now);
  const days = Math.ceil((due - now) / DAY);
  if (days <= 0) return 'now';
  return days === 1 ? 'tomorrow' : `in ${days} days, on ${dayMonthText(due)}`;
}
