/** Words of the questions on what to do. */
import type { UnsafeId } from '../../bench/unsafe.ts';
import type { Values } from '../../verification/testAction.ts';
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

/** What somebody says of a unit: what a sound make may do, and what no sound unit does. */
const REPORTS: Readonly<Record<string, string>> = {
  'start-delay': 'waits some minutes before it supplies',
  'keeps-default-hours': 'charges outside set hours only when told to',
  'waits-for-authorisation': 'waits until somebody authorises it',
  'held-by-load-sharing': 'offers nothing while the house draws much',
  'offer-cut-by-load-sharing': 'offers less while the house draws much',
  'customers-small-cable': 'offers 20 A through a cable coded for 20 A',
  'set-by-installer': 'offers 16 A though it is rated 32 A',
  'ventilation-refused': 'refuses a vehicle that asks for ventilation',
  'bleed-across-poles': 'shows a ghost voltage at its open outlet',
  'arrester-clamps': 'reads low at 500 V while its arrester is in',
  'device-at-the-board': 'has no residual device, the board has it',
  'goes-on-without-a-line': 'goes on with two lines when one is lost',
  'plug-free-until-supplied': 'holds its plug only while it supplies',
  'earth-pole-open-unpowered': 'opens PE to the outlet without a supply',
  'open-pen-acts-at-once': 'goes off at a short dip of the supply',
  'steel-beside-earth': 'has a PE that reads below its copper',
  'delayed-device-ahead': 'trips before the delayed device at the board',
  'trip-clears-with-supply': 'is ready once the supply was off and on',
  'slow-to-start': 'takes half a minute to start',
  'line-pole-welded': 'has a live line at its outlet without a vehicle',
  'opens-slowly': 'takes a third of a second to go off',
  'closes-slowly': 'takes five seconds to supply a vehicle',
  'supplies-in-b': 'supplies a vehicle that is only connected',
  'coding-ignored': 'offers 32 A through a cable coded for 20 A',
  'offer-too-high': 'offers 38 A though it is rated 32 A',
  'residual-dead': 'stays on at its rated residual current',
  'direct-trips-late': 'opens at 9 mA of smooth d.c.',
  'direct-trips-early': 'opens at 2 mA of smooth d.c.',
  'lock-not-home': 'lets its plug be pulled while it supplies',
  'lock-will-not-release': 'keeps the plug held after the vehicle has gone',
  'resets-itself': 'closes again by itself after a residual trip',
  'diode-not-checked': 'supplies a vehicle whose diode is shorted',
  'short-not-acted-on': 'supplies while its pilot is shorted to PE',
  'open-pen-late': 'opens ten seconds after the PEN is lost',
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
