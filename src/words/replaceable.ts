/** What of a job a tutor may replace, in words, as it is chosen from a list: a limit by its own, an end of a line by the line's. */
import type { Replaceable } from '../verification/replaceable.ts';
import { inForce, kindOf } from '../verification/replaceable.ts';
import { limitSum, limitText, lineText } from './actions.ts';
import { amountText } from './amounts.ts';

export const replaceableText = (one: Replaceable): string =>
  'limit' in one
    ? limitText(one.test, one.limit)
    : `${lineText(one.test, one.line)}: ${kindOf(one.figure) === 'most' ? 'its upper end' : 'its lower end'}`;

export const sideOf = (kind: 'most' | 'least'): string => (kind === 'most' ? 'at most' : 'at least');

/** What is in force. */
export const replaceableSum = (one: Replaceable): string =>
  'limit' in one
    ? limitSum(one.test, one.limit)
    : `${sideOf(kindOf(one.figure))} ${amountText(inForce(one.line, one.figure), one.figure.unit)}`;
