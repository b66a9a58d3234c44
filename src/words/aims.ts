/** The twelve aims in words: the question, and what is done to answer it. */
import type { AimId } from '../scenario/aims.ts';

interface AimWords {
  readonly question: string;
  /**
   * What it takes at practice on a single-phase site, to the next minute: 1.2 s a tap (`npm run bench -- taps`), its lines
   * read twice at 250 words a minute, and a minute and a half to begin and to conclude.
   */
  readonly minutes: number;
  readonly line: string;
}

export const AIM_WORDS: Readonly<Record<AimId, AimWords>> = {
  design: {
    question: 'Is the design right?',
    minutes: 3,
    line: 'Read the papers and hold breaker, cable and load against the wiring rules.',
  },
  dead: {
    question: 'Is it dead?',
    minutes: 4,
    line: 'Prove the instruments, lock the circuit off, and prove every pair dead.',
  },
  earth: {
    question: 'Is the earth there?',
    minutes: 4,
    line: 'Measure the protective conductor up to the outlet, and the earth that it leads to.',
  },
  insulation: {
    question: 'Does the insulation hold?',
    minutes: 4,
    line: 'Test the circuit, the unit and the outlet at the voltage that each withstands.',
  },
  wiring: {
    question: 'Is it wired right?',
    minutes: 5,
    line: 'Inspect the unit, and find out by the leads where each conductor goes.',
  },
  supply: {
    question: 'Is the supply right?',
    minutes: 8,
    line: 'Measure the supply at its origin, switch it on, and see what a disturbed supply does.',
  },
  'outlet-dead': {
    question: 'Is the outlet dead?',
    minutes: 3,
    line: 'Read every pair of the outlet with no vehicle there, and after unplugging one.',
  },
  offer: {
    question: 'Does it offer the right current?',
    minutes: 4,
    line: 'Read the pilot, and hold the current that it offers against unit, cable and setting.',
  },
  'lets-go': {
    question: 'Does it supply, and let go in time?',
    minutes: 6,
    line: 'Ask for supply and end it again. Time how long the contacts take to open.',
  },
  clears: {
    question: 'Would a fault clear?',
    minutes: 4,
    line: 'Measure the earth fault loop at the outlet, and the volts that the cable loses.',
  },
  leakage: {
    question: 'Does it trip on leakage?',
    minutes: 8,
    line: 'Let a.c. and d.c. leak to earth, and read at what current and when it trips.',
  },
  refuses: {
    question: 'Does it refuse what it must?',
    minutes: 9,
    line: 'Short and open the pilot, take its diode out, break PE: the unit has to open and stay open.',
  },
};

/** The question with what it takes. */
export const aimWithMinutes = (aim: AimId): string =>
  `${AIM_WORDS[aim].question} ${AIM_WORDS[aim].minutes} minutes`;
