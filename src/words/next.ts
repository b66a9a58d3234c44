/** What is next in words: the one reason, and what an aim's job came to. */
import type { DueTopics } from '../store/comesBack.ts';
import type { JobResult } from '../store/jobResults.ts';
import type { Why } from '../store/next.ts';

export const QUESTIONS_NAME = 'Five minutes of questions';

/** `day`: how a day is written, ms since 1970. */
export function whyText(why: Why, day: (at: number) => string): string {
  switch (why.what) {
    case 'goal':
      return `Your goal: ${why.text}`;
    case 'sure and wrong':
      return `You would have signed for an answer that was wrong, on ${day(why.at)}.`;
    case 'left out':
      return `You left out ${why.tests === 1 ? 'one of its tests' : `${why.tests} of its tests`}, on ${day(why.at)}.`;
    case 'due':
      return dueText(why, day);
    case 'not tried':
      return 'You have not tried it yet.';
    case 'longest ago':
      return why.days === 0
        ? 'Of all twelve you did this one first today.'
        : `You last did it ${why.days === 1 ? 'yesterday' : `${why.days} days ago`}, longest ago of all twelve.`;
  }
}

/** How many topics come back, and why. */
export function dueText({ topics, wrong, assessment }: DueTopics, day: (at: number) => string): string {
  const why = wrong === 0 ? '' : `, ${wrong === topics ? '' : `${wrong} `}for an answer that was wrong`;
  const back = `${topics === 1 ? 'One topic comes' : `${topics} topics come`} back today${why}.`;
  return assessment === null ? back : `${back} Your assessment is on ${day(assessment)}.`;
}

export const NOT_TRIED = 'not tried';

/** `2 of 3`: tests wholly right, of those done. */
export const resultText = ({ right, done }: JobResult): string =>
  done === 0 ? 'no test done' : `${right} of ${done}`;
