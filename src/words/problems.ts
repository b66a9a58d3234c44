/** What is wrong with a file. Most of it is worded where the file is checked, for whoever writes one. */
import type { Problem } from '../scenario/problem.ts';
import { impossibleText } from './impossible.ts';
import { unsafeActText } from './unsafeActs.ts';

export function problemText({ message }: Problem): string {
  if (typeof message === 'string') return message;
  switch (message.id) {
    case 'impossible':
      return impossibleText(message.why);
    case 'unsafe-handover':
      return `an unsafe act: ${unsafeActText(message.act)}`;
    case 'kept-unread':
      return 'cannot be read here either; kept as it is';
  }
}

export const inWords = (problems: readonly Problem[]): readonly Problem<string>[] =>
  problems.map((problem) => ({ ...problem, message: problemText(problem) }));
