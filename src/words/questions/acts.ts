/** Words of the questions on what to do. */
import type { UnsafeId } from '../../bench/unsafe.ts';
import type { Values } from '../../verification/testAction.ts';
import { REPORTS } from '../causes/reports.ts';
import { causeTitle } from '../causeTitles.ts';
import type { QuestionWords } from '../questionWords.ts';
import { UNSAFE_ACT_WORDS } from '../unsafeActs.ts';
import { str } from '../values.ts';
import { cameOut, siteOf, testOf } from './lines.ts';

const whyUnsafe = (v: Values): string => {
  const why = str(v, 'why');
  return why === ''
    ? 'Each act rests on the one before it: off and locked, then the cover, then proved dead where it is touched, and everything back before power.'
    : UNSAFE_ACT_WORDS[why as UnsafeId].why;
};

export const acts: Readonly<Record<string, QuestionWords>> = {
  'unsafe-act': {
    stem: () =>
      'Somebody did this at a unit that was on, in this order. Which act is the first that is unsafe?',
    choices: {
      'off-locked': 'switched off the circuit and locked it off',
      'off-not-locked': 'switched off the circuit, put no lock on',
      'open-cover': 'opened the cover of the unit',
      'close-cover': 'closed the cover of the unit',
      'prove-at-unit': 'proved dead at the unit’s terminals',
      'prove-at-board': 'proved dead at the board’s terminals',
      'prove-with-meter': 'tested for dead with a meter',
      'prove-before-only': 'tested for dead, detector proved only before',
      'prove-not-at-all': 'tested for dead, detector not proved',
      'unit-off': 'took the unit’s conductors off',
      'unit-on': 'put the unit’s conductors back',
      insulation: 'tested insulation, line to PE',
      continuity: 'tested continuity, line to PE',
      on: 'switched on again',
      voltage: 'read the voltage at the outlet',
      none: 'none of them is unsafe',
    },
    working: (v, answer) => [
      str(v, 'why') === ''
        ? 'Carried out on the bench in this order, no act is unsafe.'
        : `“${answer}”: ${UNSAFE_ACT_WORDS[str(v, 'why') as UnsafeId].act}.`,
    ],
    why: whyUnsafe,
  },
  'go-on-or-stop': {
    stem: (v) => `${siteOf(v)} In the test ${testOf(v)} ${cameOut(v, false)}. Do you go on testing?`,
    choices: {
      'go-on': 'write it down and go on',
      stop: 'stop here and report it',
    },
    mistakes: {
      'go-on': 'The next test would put power on what this one has found, or lean on it.',
      stop: 'The unit may not go into service, and yet the tests that are left can be done safely and tell more.',
    },
    working: () => [],
    why: '',
  },
  'whom-to-tell': {
    stem: (v) =>
      `You found this: “${causeTitle(str(v, 'cause'))}”. You tell the client. Who else has to be told?`,
    choices: {
      installer: 'the circuit’s installer',
      maker: 'the unit’s maker',
      distributor: 'the distributor',
      nobody: 'nobody else',
    },
    mistakes: {
      nobody: 'The client alone cannot have it mended.',
    },
    working: () => [],
    why: 'The installer answers for the fixed circuit, the maker for the unit, the distributor for the supply up to the intake. Whoever can put it right has to hear of it.',
  },
  'due-after-repair': {
    stem: (v) =>
      `${siteOf(v)} All tests were done; then this was put right: “${causeTitle(str(v, 'cause'))}”. Which of these tests has to be done again?`,
    working: (_, answer) => [`“${answer}” rests on what the repair has touched. The others do not.`],
    why: 'A reading is about what was there when it was taken. What a repair has moved or replaced is new, and only a new reading tells of it.',
  },
  'not-a-fault': {
    stem: () =>
      'Somebody reports what each of four units does. Which report is no fault, if the unit’s sheet says so?',
    choices: REPORTS,
    working: (_, answer) => [`A sound make may be such a unit: ${answer}. Its sheet says so.`],
    why: 'Sound makes differ, and the sheet says how. Who reports such a thing as a fault sends somebody out for nothing.',
  },
};
