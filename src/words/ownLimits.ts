/** Limits that whoever set the job puts in the place of the standard's, in words: value, source and reason. */
import { actionNamed } from '../verification/actions.ts';
import { onPapers } from '../verification/onPapers.ts';
import type { Limit, Papers } from '../verification/testAction.ts';
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
    const limit = action && onPapers(action, papers).limits.find((one) => one.id === id);
    if (limit === undefined) return [];
    return [{ term: testTitle(test), text: `${sideText(limit)} (${source}). ${why}` }];
  });
}

const sideText = ({ kind, limit, unit, quantity }: Limit): string =>
  `${quantity.replace('-', ' ')}: ${kind === 'most' ? 'at most' : 'at least'} ${amountText(limit, unit)}`;
