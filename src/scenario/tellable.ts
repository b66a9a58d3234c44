/**
 * Whether the tests that a scenario allows, with what is handed over, can tell what a verdict is about. Legal where they
 * cannot, and then the right verdict is another one than whoever made the scenario may think.
 */
import { faultsAmong } from '../faults/catalogue.ts';
import type { Problem } from './problem.ts';
import type { Scenario } from './scenario.ts';
import { verify } from './verify.ts';

/** What is asked, and the right answers to it where the tests cannot tell, and where they find nothing. */
const ASKED = {
  verify: {
    question: 'whether the unit may go into service',
    untold: 'could not finish',
    sound: 'fit for service',
  },
  aim: { question: 'what this aim asks', untold: 'cannot tell', sound: 'nothing wrong' },
  find: { question: 'what is behind the symptom', untold: 'cannot tell', sound: 'nothing wrong' },
} as const;

export function verdictWarnings(scenario: Scenario): readonly Problem[] {
  const { conclusion } = verify(scenario);
  const { question, untold, sound } = ASKED[scenario.task];
  const hasFault = faultsAmong(scenario.faults).length > 0;
  if (conclusion === 'could not finish')
    return [
      {
        path: 'allowed',
        message: `these tests cannot tell ${question}: the right verdict is '${untold}'${
          hasFault ? ', and no cause can be found' : ''
        }`,
      },
    ];
  return conclusion === 'sound' && hasFault
    ? [
        {
          path: 'faults',
          message: `no test that is allowed shows it: the right verdict is '${sound}'`,
        },
      ]
    : [];
}
