/** Where questions on these topics are asked, to be answered and come back from. */
import type { AimId } from '../../scenario/aims.ts';

export const questionsLink = (topics: readonly AimId[], count: number, from: 'attempt' | 'record'): string =>
  `/questions?topics=${topics.join(',')}&count=${count}&from=${from}`;
