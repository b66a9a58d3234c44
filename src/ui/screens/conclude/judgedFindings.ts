/** Every line and limit that the trainee judged, as something a verdict can rest on; the last judgement counts. */

import type { Run } from '../../../attempt/record/run.ts';
import { entriesAbout } from '../../../attempt/record/run.ts';
import { isJudgedAsSaid } from '../../../attempt/record/truth.ts';
import { onPapers } from '../../../verification/onPapers.ts';
import type { TestAction } from '../../../verification/testAction.ts';
import { limitText, lineText } from '../../../words/actions.ts';
import { JUDGED_WORDS, LIMIT_WORDS } from '../../../words/answers.ts';
import { testTitle } from '../../../words/testTitles.ts';

export interface JudgedFinding {
  readonly key: string;
  readonly test: string;
  readonly id: string;
  readonly title: string;
  readonly text: string;
  readonly judged: string;
  /** Judged to be as the trainee said that it should be, or within its limit. What is right is not told here. */
  readonly isAsSaid: boolean;
}

export function judgedFindings(
  { attempt, papers }: Run,
  actions: readonly TestAction[],
): readonly JudgedFinding[] {
  return actions.flatMap((action) => {
    const judgement = entriesAbout(attempt, 'judgement', action.id).at(-1);
    if (judgement === undefined) return [];
    const prediction = entriesAbout(attempt, 'prediction', action.id).at(-1);
    const saidOf = (line: string) => prediction?.lines.find((one) => one.id === line)?.answer;
    const frame = { test: action.id, title: testTitle(action.id) };
    const lines = action.expectations(papers).flatMap((line): JudgedFinding[] => {
      const { id } = line;
      const judged = judgement.lines.find((one) => one.id === id)?.judged;
      const key = `${action.id} ${id}`;
      return judged === undefined
        ? []
        : [
            {
              ...frame,
              key,
              id,
              text: lineText(action.id, line),
              judged: JUDGED_WORDS[judged],
              isAsSaid: isJudgedAsSaid(saidOf(id), judged),
            },
          ];
    });
    const limits = onPapers(action, papers).limits.flatMap((limit): JudgedFinding[] => {
      const { id } = limit;
      const words = judgement.limits.filter((one) => one.id === id).map(({ judged }) => judged);
      const worst = words.find((word) => word === 'outside') ?? words.find((word) => word === 'too-close');
      const judged = worst ?? words[0];
      const key = `${action.id} ${id}`;
      return judged === undefined
        ? []
        : [
            {
              ...frame,
              key,
              id,
              text: limitText(action.id, limit),
              judged: LIMIT_WORDS[judged],
              isAsSaid: judged === 'within',
            },
          ];
    });
    return [...lines, ...limits];
  });
}
