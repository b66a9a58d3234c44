/** Words of the test action `finish`. */
import type { ActionWords } from '../actionWords.ts';

export const finish: ActionWords = {
  title: 'Leaving it',
  purpose: 'Leave the unit dead at its outlet, ready, and as its papers have it.',
  lines: {
    voltage: {
      text: 'leaves voltage on its outlet with nothing connected',
      why: 'The contactor has worked many times by now: once more it has to be open.',
    },
    ready: { text: 'says that it is ready', why: 'Every fault was taken away and cleared.' },
    'twelve-volts': { text: 'holds the pilot steady at 11.4 to 12.6 V', why: 'Nothing is connected.' },
    plug: { text: 'keeps a plug', why: 'The next user finds an empty outlet.' },
    'next-test': { text: 'stays as good until it is tested next', why: 'A verification is of the day.' },
  },
};
