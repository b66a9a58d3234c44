/**
 * Figures that whoever set the job puts in the place of the standard's, in words: value, source and reason. A limit is told
 * by what is read; a figure that a line states, by that line.
 */
import { actionNamed } from '../verification/actions.ts';
import type { Replaceable } from '../verification/onPapers.ts';
import { replaceableIn } from '../verification/onPapers.ts';
import type { Papers } from '../verification/testAction.ts';
import { limitSum, limitText, lineText } from './actions.ts';
import { amountText } from './amounts.ts';
import { testTitle } from './testTitles.ts';

interface Line {
  readonly term: string;
  readonly text: string;
}

/** One line each; what no test here has was refused before. */
export function ownLimitLines(papers: Papers): readonly Line[] {
  return (papers.own ?? []).flatMap(({ limit: name, source, why }): readonly Line[] => {
    const action = actionNamed(name.split('/')[0] ?? '');
    const one = action && replaceableIn(action, papers).find((other) => other.name === name);
    if (one === undefined) return [];
    return [{ term: testTitle(one.test), text: `${inForceText(one)} (${source}). ${why}` }];
  });
}

function inForceText(one: Replaceable): string {
  if ('limit' in one) {
    const { kind, limit, unit, quantity } = one.limit;
    return `${quantity.replace('-', ' ')}: ${sideOf(kind)} ${amountText(limit, unit)}`;
  }
  const { kind, value, unit, usual } = one.figure;
  const instead = `in place of ${amountText(usual, unit)}`;
  return `${lineText(one.test, one.line)}: ${sideOf(kind)} ${amountText(value, unit)}, ${instead}`;
}

export const sideOf = (kind: 'most' | 'least'): string => (kind === 'most' ? 'at most' : 'at least');

/** What can be replaced, as it is chosen by: a limit by its own words, an end of a line by the line's. */
export const replaceableText = (one: Replaceable): string =>
  'limit' in one
    ? limitText(one.test, one.limit)
    : `${lineText(one.test, one.line)}: ${one.figure.kind === 'most' ? 'its upper end' : 'its lower end'}`;

/** What is in force. */
export const replaceableSum = (one: Replaceable): string =>
  'limit' in one
    ? limitSum(one.test, one.limit)
    : `${sideOf(one.figure.kind)} ${amountText(one.figure.value, one.figure.unit)}`;
