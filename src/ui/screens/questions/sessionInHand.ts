/** The session in hand as it is kept; where this device keeps nothing, as this page has it as long as it is open. */
import { keepSession } from '../../../store/keepQuestions.ts';
import type { Card, KeptQuestions } from '../../../store/questionRecord.ts';
import { NO_QUESTIONS } from '../../../store/questionRecord.ts';
import { keptQuestions } from '../../../store/questions.ts';

let unkept: KeptQuestions | null = null;

interface InHand {
  readonly kept: KeptQuestions;
  readonly isKept: boolean;
}

export const readInHand = (): Promise<InHand> =>
  keptQuestions().then(
    (kept) => (unkept === null ? { kept, isKept: true } : { kept: unkept, isKept: false }),
    () => ({ kept: unkept ?? NO_QUESTIONS, isKept: false }),
  );

/** Resolves to whether it could be kept. */
export const keepInHand = (now: KeptQuestions, changed: readonly Card[]): Promise<boolean> =>
  now.session === null
    ? Promise.resolve(false)
    : keepSession(now.session, changed).then(
        () => {
          unkept = null;
          return true;
        },
        () => {
          unkept = now;
          return false;
        },
      );
