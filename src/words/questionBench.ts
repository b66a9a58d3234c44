/** The bench of a question in words: what is told of it, and how it stands. */
import type { Question } from '../quiz/question.ts';
import type { ShownState, ShownWords } from '../quiz/shown.ts';
import { causeTitle } from './causeTitles.ts';
import { stemText } from './questions.ts';

export const BENCH_OF_QUESTION = 'See it on the bench';

export const shownWords = (question: Question): ShownWords => ({
  title: 'On the bench',
  brief: stemText(question),
  by: 'a colleague, this morning',
});

/** Of a cause that the question has not in its unit, but is about. */
const ONLY_HERE: Readonly<Record<string, string>> = {
  'ruled-out': 'This unit has what the reading ruled out',
  'go-on-or-stop': 'This unit has a cause that breaks the line',
  'best-next-test': 'Of the four causes this unit has',
};

const AFTER_REPAIR = 'The repair is done, and this test is due.';

/** How it stands, beside the first step. */
export function shownText({ kind }: Question, { causes = [] }: ShownState): string {
  const titles = causes.map(({ fault }) => `“${causeTitle(fault)}”`).join(' and ');
  const has =
    titles !== ''
      ? `${ONLY_HERE[kind] ?? 'This unit has'}: ${titles}.`
      : kind === 'due-after-repair'
        ? AFTER_REPAIR
        : 'Nothing is wrong with it.';
  return `It stands as the question shows it. ${has} None of this counts.`;
}
