/**
 * Figures that whoever set the job puts in the place of the standard's, in words: value, source and reason. A limit is told
 * by what is read; a figure that a line states, by that line.
 */
import { actionNamed } from '../verification/actions.ts';
import { onPapers } from '../verification/onPapers.ts';
import type { Limit, Papers } from '../verification/testAction.ts';
import { lineText } from './actions.ts';
import { amountText } from './amounts.ts';
import { testTitle } from './testTitles.ts';

interface Line {
  readonly term: string;
  readonly text: string;
}

/** One line each; what no test here has was refused before. */
export function ownLimitLines(papers: Papers): readonly Line[] {
  return (papers.own ?? []).flatMap(({ limit: name, source, why }): readonly Line[] => {
    const [test = '', id = ''] = name.split('/');
    const action = actionNamed(test);
    if (action === undefined) return [];
    const { limits, expectations } = onPapers(action, papers);
    const limit = limits.find((one) => one.id === id);
    const line = expectations.find(({ states }) => states?.some((one) => one.id === id));
    const text = limit ? sideText(limit) : line && lineText(test, line);
    return [{ term: testTitle(test), text: `${text} (${source}). ${why}` }];
  });
}

const sideText = ({ kind, limit, unit, quantity }: Limit): string =>
  `${quantity.replace('-', ' ')}: ${kind === 'most' ? 'at most' : 'at least'} ${amountText(limit, unit)}`;
