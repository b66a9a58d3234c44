/**
 * The title block of the class on paper: of what work it is, whose, when and how many, and how its marks were made. Each
 * page has the first of it in its margin too.
 */
import { useMemo } from 'react';
import type { Class } from '../../../desk/class.ts';
import { jobTitles } from '../../../desk/class.ts';
import type { Marked } from '../../../desk/collect.ts';
import type { Giving } from '../../../desk/giving.ts';
import type { PartName } from '../../../scenario/tasks.ts';
import { dayText } from '../../format/dates.ts';
import type { PageTitle } from '../../parts/pageTitle.ts';
import { TRAINING_RECORD, usePageTitle } from '../../parts/pageTitle.ts';
import { TitleBlock } from '../../parts/TitleBlock.tsx';

interface Props {
  readonly made: Class;
  readonly givings: readonly Giving[];
}

export function ClassBlock({ made, givings }: Props) {
  const marked = made.rows.flatMap(({ row }) => (row.kind === 'marked' ? [row] : []));
  const own = givings.filter(({ giving }) =>
    made.rows.some(({ row }) => 'giving' in row && row.giving === giving),
  );
  const jobs = jobTitles(made.rows).join('; ');
  const groups = each(own, ({ group }) => group).join('; ');
  const words = each(own, ({ word }) => word).join('; ');
  const today = dayText(Date.now());
  const rows = [
    ['work', jobs === '' ? 'none that could be marked' : jobs],
    ['group', groups === '' ? '–' : groups],
    ['word', words === '' ? '–' : words],
    [
      'given out',
      each(own, ({ tutor }) => (tutor?.at === undefined ? '' : dayText(tutor.at))).join('; ') || '–',
    ],
    ['collected', today],
    ['how many', countText(made, marked.length)],
    ['how marks are made', marksText(marked)],
  ] as const;
  const first = ['The class', groups, jobs, words === '' ? '' : `word ${words}`, `collected ${today}`]
    .filter((text) => text !== '')
    .join(' · ');
  usePageTitle(useMemo((): PageTitle => ({ first, second: TRAINING_RECORD }), [first]));
  return (
    <div className="class-block only-printed">
      <TitleBlock framed rows={rows} trainingOnly={TRAINING_RECORD} />
    </div>
  );
}

const each = <T,>(list: readonly T[], of: (one: T) => string): readonly string[] =>
  [...new Set(list.map(of))].filter((text) => text !== '');

function countText({ rows, counted }: Class, marked: number): string {
  const refused = rows.filter(({ row }) => row.kind === 'refused').length;
  return `${rows.length === 1 ? '1 file' : `${rows.length} files`}, ${marked} marked, ${counted} counted${refused === 0 ? '' : `, ${refused} not marked`}`;
}

/** Of jobs that weigh alike their points; what they are for stands on the page `How marks are made`. */
function marksText(marked: readonly Marked[]): string {
  const weighed = each(marked, ({ marks: { weights, pass } }) =>
    [
      (Object.entries(weights) as [PartName, number][])
        .filter(([, points]) => points > 0)
        .map(([part, points]) => `${part} ${points}`)
        .join(', '),
      `passed from ${pass}, with every hurdle and gate met`,
    ].join('; '),
  );
  const [only, ...others] = weighed;
  const points =
    only === undefined
      ? ''
      : others.length === 0
        ? ` Points: ${only}.`
        : ' Each job weighs its parts as it says.';
  return `Each log was acted out again on the tutor’s own copy of the job; nothing was taken from a file.${points} The page “How marks are made” has each sum.`;
}
