/** Words of the questions on insulation, on what trips, and on how soon a unit lets go. */
import type { QuestionWords } from '../questionWords.ts';
import { is, num, str } from '../values.ts';

const WHAT: Readonly<Record<string, string>> = {
  circuit: 'a 230 V circuit, the unit’s conductors off',
  'with-electronics': 'a 230 V circuit from which the electronics of the unit cannot be taken',
  selv: 'a circuit of safety extra-low voltage (SELV)',
};

const BAND: Readonly<Record<string, string>> = {
  'too-early': 'it trips too early',
  'in-its-band': 'as it should be',
  'too-late': 'it trips too late',
};

const HOW_SOON: Readonly<Record<string, string>> = {
  'stops-asking': 'The vehicle stops asking (C to B). How soon does the unit have to be off?',
  unplugged: 'Somebody pulls the plug while the unit supplies. How soon does the unit have to be off?',
  'earth-lost': 'PE to the vehicle breaks while the unit supplies. How soon does the unit have to be off?',
  'pilot-to-earth':
    'The pilot is shorted to PE while the unit supplies. How soon does the unit have to be off?',
  asks: 'A vehicle asks (B to C), and all is well. How soon does the unit have to supply it?',
  'unlock-after-unplugging':
    'The vehicle has been unplugged (B to A). How soon does the socket-outlet’s lock have to let the plug go?',
};

const TIMES: Readonly<Record<number, string>> = {
  1: 'its rated current',
  2: 'twice its rated current',
  5: 'five times its rated current',
};

export const protection: Readonly<Record<string, QuestionWords>> = {
  'insulation-volts': {
    stem: (v) => `You test the insulation of ${WHAT[str(v, 'what')]}. At which test voltage?`,
    choices: { 50: '50 V', 250: '250 V', 500: '500 V', 1000: '1000 V' },
    working: () => [
      'Circuits up to 500 V: 500 V. SELV: 250 V. Where equipment would be harmed and cannot be taken off: 250 V.',
    ],
    why: 'A weak spot shows only at a voltage above the one it works at. Electronics do not survive that, so the maker’s instructions and 250 V come before the higher figure.',
  },
  'insulation-least': {
    stem: (v) => `You test the insulation of ${WHAT[str(v, 'what')]}. What is the least that passes?`,
    mistakes: {
      'selv-for-mains': 'That is the figure for SELV.',
      'mains-for-selv': 'That is the figure for 230 V circuits.',
      'two-megohms': 'That was a figure below which one looked closer. It is no limit.',
      kilohms: 'That is a thousand times too little: megohms were asked.',
    },
    working: () => ['230 V circuits: at least 1 MΩ, also where 250 V is applied. SELV: at least 0.5 MΩ.'],
    why: 'Good insulation reads hundreds of megohms. Near the limit there is moisture or a nick already, and it gets worse.',
  },
  'insulation-together': {
    stem: (v) =>
      `Alone one circuit reads ${num(v, 'first')} MΩ and another ${num(v, 'second')} MΩ. What do both read, tested together?`,
    mistakes: {
      'in-series': 'That adds them. Two leaks lie side by side, not one behind the other.',
      'the-lower': 'That takes the lower one. The other leaks too, so together they are below it.',
      mean: 'That is the mean. Two leaks together let through more than the worse one alone.',
    },
    working: (v, answer) => [`1 ÷ (1 ÷ ${num(v, 'first')} + 1 ÷ ${num(v, 'second')}) = ${answer}`],
    why: 'Each leak takes its own current, so together they let more through. A low reading of a whole board therefore says nothing of one circuit: part it until you find which.',
  },
  'residual-time': {
    stem: (v) =>
      `A ${num(v, 'milliamps')} mA residual device${str(v, 'delay') === 'S' ? ', delayed (S),' : ''} carries ${TIMES[num(v, 'multiple')]} to earth. Within which time does it have to trip?`,
    mistakes: {
      'other-kind': (v) =>
        str(v, 'delay') === 'S'
          ? 'That is the time of a device without delay. A delayed one (S) waits for the device behind it.'
          : 'That is the time of a delayed device (S), which waits for the device behind it.',
      'at-rated': 'That is the time at its rated current. More current has to trip it sooner.',
      'at-five-times': 'That is the time at five times its rated current.',
    },
    working: () => [
      'At its rated current, twice and five times that: 300, 150 and 40 ms. Delayed (S): 500, 200 and 150 ms.',
    ],
    why: 'The heart bears a larger current for a shorter time only. So the more leaks, the sooner the device has to open.',
  },
  'rising-alternating': {
    stem: (v) =>
      `You raise an a.c. residual current slowly. A ${num(v, 'rated')} mA device trips at ${num(v, 'milliamps')} mA. How do you judge that?`,
    choices: BAND,
    working: (v) => [
      `It may trip between ${num(v, 'least')} and ${num(v, 'greatest')} mA: half its rating to the whole of it.`,
    ],
    why: 'Below half its rating a device must stay: filters of sound equipment leak that much. Above its rating it lets more through than it was chosen for.',
  },
  'rising-direct': {
    stem: (v) =>
      `You raise smooth d.c. slowly. The unit’s d.c. detector opens at ${num(v, 'milliamps')} mA. How do you judge that?`,
    choices: BAND,
    working: () => ['A d.c. detector acts above 3 mA, and by 6 mA.'],
    why: 'More than 6 mA of smooth d.c. magnetises the core of a type A device upstream. That one is then blind to a.c., and nobody is told.',
  },
  'half-wave': {
    stem: (v) =>
      `You raise a half-wave current. A 30 mA device of type ${str(v, 'type')} trips at ${num(v, 'milliamps')} mA (r.m.s., from 0°). How do you judge that?`,
    choices: {
      'too-early': 'it trips too early',
      'in-its-band': 'as it should be',
      'nothing-asked': 'not asked of it',
    },
    working: (v) => [
      str(v, 'type') === 'AC'
        ? 'Type AC is made for full waves alone: the standard asks nothing of it at half-waves.'
        : 'Type A: 0.35 to 1.4 times its rating, so 10.5 to 42 mA.',
    ],
    why: 'A charger’s rectifier makes half-waves of a leak behind it. A type AC core does not see them, so it has no business at a charge point.',
  },
  'at-half-the-rating': {
    stem: (v) =>
      `A steady leakage of ${num(v, 'milliamps')} mA a.c. flows to earth behind a ${num(v, 'rated')} mA residual device. Should the device trip?`,
    working: (v) => [
      `Up to ${num(v, 'rated') / 2} mA it must not, from ${num(v, 'rated')} mA on it must. In between it may do either.`,
    ],
    why: 'Makers get half the range for spread. So a reading between half and the whole rating says nothing for or against the device.',
  },
  'direct-time': {
    stem: (v) =>
      `${num(v, 'milliamps')} mA of smooth d.c. suddenly leak to earth. Within which time does the unit’s d.c. detector have to open?`,
    choices: { 40: '0.04 s', 100: '0.10 s', 300: '0.30 s', 10000: '10.0 s' },
    working: () => ['6 mA: 10 s. 60 mA: 0.3 s. 200 mA: 0.1 s.'],
    why: 'Six milliamperes only blind another device, which takes its time. Much more is a fault that a person may be in.',
  },
  'who-trips': {
    stem: (v) =>
      `At the board sits a ${num(v, 'rated')} mA residual device, ${str(v, 'delay') === 'S' ? 'delayed (S)' : 'not delayed'}; in the unit a general one of 30 mA. A vehicle leaks 150 mA to earth. What trips?`,
    choices: {
      'unit-alone': 'the unit alone',
      'board-alone': 'the board’s device alone',
      either: 'either, or both',
    },
    working: (v) => [
      'For the unit to go alone, the board’s device has to be delayed and rated at least three times as much.',
      `Here: ${str(v, 'delay') === 'S' ? 'delayed' : 'not delayed'}, ${num(v, 'rated')} mA against 30 mA.`,
    ],
    why: 'The same leak flows through both. Without a delay the quicker of the two decides, and that differs from device to device.',
  },
  'how-soon': {
    stem: (v) => HOW_SOON[str(v, 'what')] ?? '',
    choices: { 100: '0.1 s', 3000: '3.0 s', 5000: '5.0 s', 10000: '10.0 s' },
    working: () => [
      'The vehicle stops asking, the plug is pulled, or PE is lost: 0.1 s. Another fault, or switching on: 3 s. The lock: 5 s.',
    ],
    why: 'Where contacts may part live, or a car’s body may become live, tenths of a second count. Elsewhere the unit may look twice before it acts.',
  },
  'which-pole': {
    stem: (v) =>
      `No vehicle (A). At a single-phase outlet a two-pole detector reads L–N ${num(v, 'lineNeutral')} V, L–PE ${num(v, 'lineEarth')} V, N–PE ${num(v, 'neutralEarth')} V. Which of the unit’s contacts stayed closed?`,
    choices: {
      none: 'none that these readings show',
      line: 'the line’s',
      both: 'the line’s and the neutral’s',
    },
    working: (v) => [
      num(v, 'lineEarth') === 0
        ? 'No voltage from L to PE: the line is open. A stuck neutral contact would read just so.'
        : num(v, 'lineNeutral') === 0
          ? 'Voltage from L to PE, none from L to N: the line is live, and N is open.'
          : 'Voltage from L to N too: both sides are joined to the supply.',
    ],
    why: 'An open neutral hangs on nothing: the detector itself pulls it to the other lead, so both of its pairs read 0 V. Whoever measures L–N alone then touches a live line.',
  },
  'one-pair': {
    stem: (v) =>
      `With a detector proved before and after you read 0 V ${
        {
          'line-neutral': 'from L to N alone',
          'neutral-earth': 'from N to PE alone',
          'all-three': 'from L to N, L to PE and N to PE',
        }[str(v, 'read')]
      }. Is the place dead?`,
    choices: { dead: 'it is dead', live: 'it is live', 'cant-tell': 'not proved' },
    working: () => ['Dead means: no voltage between any two conductors, nor from any of them to earth.'],
    why: 'One pair reads 0 V too when one of its two conductors is open. Only every pair together rules that out.',
  },
  'order-of-proving': {
    stem: () => 'You are to prove a circuit dead. In which order do you do this?',
    parts: {
      isolate: 'switch off every live pole',
      lock: 'lock it off and keep the key',
      'prove-before': 'with the lock on, prove the detector on a proving unit',
      'test-every-pair': 'test every pair of conductors where you will work',
      'prove-after': 'prove the detector on the proving unit again',
    },
    working: () => ['Off, locked, detector proved, every pair tested, detector proved again.'],
    why: 'The lock keeps anybody from switching on while you measure. A detector that died between its two proofs would have shown 0 V on live parts.',
  },
  'low-line-neutral': {
    stem: (v) =>
      `Insulation at 250 V, with the unit ${is(v, 'connected') ? 'connected' : 'taken off'}: line to neutral ${num(v, 'lineNeutral')} MΩ, line and neutral together to PE ${num(v, 'toEarth')} MΩ. What do you make of it?`,
    choices: {
      electronics: 'the unit’s electronics: take it off, test again',
      cable: 'the cable leaks between its conductors',
      'to-earth': 'something leaks to PE: find and mend it',
      good: 'good insulation: write it down',
    },
    mistakes: {
      electronics: (v) =>
        is(v, 'connected')
          ? 'Electronics lie between line and neutral alone. The reading to PE is low, too.'
          : 'The unit is taken off, and its electronics with it.',
      cable: (v) =>
        is(v, 'connected')
          ? 'As long as the unit is connected, its electronics lie beside the cable.'
          : 'The reading from line to neutral is far above the least.',
      'to-earth': 'The reading to PE is far above the least.',
      good: 'One of the readings is under the least.',
    },
    working: (v) => [
      `The least is ${num(v, 'least')} MΩ. Line to neutral ${num(v, 'lineNeutral')} MΩ, to PE ${num(v, 'toEarth')} MΩ.`,
      `The unit is ${is(v, 'connected') ? 'connected, so its electronics lie between line and neutral' : 'off, so nothing but the cable lies between line and neutral'}.`,
    ],
    why: 'Power supplies join line and neutral through some hundred kilohms. Nothing of a sound unit joins them to PE, so a low reading to PE is never the electronics.',
  },
};
