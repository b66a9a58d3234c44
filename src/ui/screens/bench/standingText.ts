/** When the drawing was drawn and in which step: for its title block. */
import { benchTime } from '../../../words/benchTime.ts';
import type { Bench } from '../../flow/bench.ts';
import type { TestStep } from './TestCard.tsx';

const WORDS: Readonly<Record<Exclude<TestStep, 'observing'>, string>> = {
  'setting up': 'set up, not locked',
  predicting: 'set up, not locked',
  judging: 'judged',
  told: 'judged',
};

/** `since`: place in the log of the open test's prediction. */
export function standingText({ run }: Bench, step: TestStep | null, since: number): string {
  const { entries } = run.attempt;
  const now = benchTime(entries.at(-1)?.at ?? run.began);
  if (step === null) return `${now}, no test in hand`;
  return `${now}, ${step === 'observing' ? `locked ${benchTime(entries[since]?.at ?? 0)}` : WORDS[step]}`;
}
