/** What the browser's tab and history call each page. */

import { QUESTIONS_NAME } from './next.ts';

const NAME = 'Charge point trainer';

/** Pages by their addresses; the first page has the trainer's own name. */
export const PAGE_TITLES: Readonly<Record<string, string>> = {
  '/jobs': 'Scenarios',
  '/desk': 'Set work',
  '/desk/change': 'Change one thing',
  '/first-run': 'First run',
  '/first-minute': 'First minute',
  '/shown': 'Worked run',
  '/questions': QUESTIONS_NAME,
  '/questions/bench': 'On the bench',
  '/record': 'My record',
  '/sources': 'Sources',
  '/words': 'Words',
  '/desk/marks': 'How marks are made',
  '/give': 'Give out',
  '/give/': 'Given out',
  '/collect': 'Collect',
  '/accessibility': 'Accessibility',
};

/** The most particular part first: that is what a narrow tab shows. */
export const pageTitle = (...parts: readonly (string | undefined)[]): string =>
  [...parts.filter((part) => part !== undefined), NAME].join(' · ');
