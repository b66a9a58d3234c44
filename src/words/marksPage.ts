/** How marks are made, on one page: the parts, what stands in the way of a pass, and what never costs anything. */
import type { PartName } from '../scenario/tasks.ts';

interface PartWords {
  readonly name: string;
  readonly asks: string;
  readonly sum: string;
}

export const MARKED_PARTS: Readonly<Record<PartName, PartWords>> = {
  prediction: {
    name: 'Prediction',
    asks: 'Does the trainee say beforehand what a correct unit should and should not do?',
    sum: 'Lines and figures that are right, kind by kind, less what guessing would get: one answer to everything earns nothing. Filled-in lines are not marked, and their points go to the other parts.',
  },
  observation: {
    name: 'Observation',
    asks: 'Is what was typed what the instrument showed?',
    sum: 'Readings typed as shown, of those that were taken.',
  },
  judgement: {
    name: 'Judgement',
    asks: 'Does the trainee say rightly what the unit did, and whether a figure is within its limit?',
    sum: 'The mean of two shares: of what was right, how much was accepted; of what was wrong, how much was rejected. Each is judged against the figure that was typed, so a misreading costs once.',
  },
  record: {
    name: 'Record',
    asks: 'Would a colleague understand the record?',
    sum: 'Entries with unit, sign of “more than”, test voltage, polarity and what tripped; and a true reason for each test left out.',
  },
  diagnosis: {
    name: 'Diagnosis',
    asks: 'Is the cause found?',
    sum: 'In full for the cause, for what no allowed test could tell from it, and for what the tutor accepts; half for the right block. By share with several causes. Nothing where no test that was done speaks for it. Where nothing is wrong, by the share of the tests that were done.',
  },
  reasons: {
    name: 'Reasons for the verdict',
    asks: 'Does the trainee know why, what comes next, whom to tell and which tests are repeated?',
    sum: 'Findings two fifths; what next, whom to tell and tests to repeat a fifth each. Without repeats: findings half, the other two a quarter each.',
  },
};

export const HURDLES_TEXT = [
  'the right verdict, judged by what the allowed tests could show',
  'judgement at least 60 %; at least half of what was wrong rejected, and at least half said rightly both of what the unit did and of what it did not',
  'diagnosis at least half',
  'prediction at least half, with guessing taken off, where it was asked',
  'observation at least half, and half of the readings with a figure other than 0',
] as const;

export const GATES_TEXT = [
  'a critical unsafe act: each is published beforehand, and proved by doing the attempt once more',
  'a unit that is not sound called fit for service',
] as const;

export const NEVER_COSTS = [
  'How sure somebody was. It is told, and never marked.',
  'Time, and the number of tests. Both are reported.',
  'Stopping at a dangerous finding. What could no longer be tested safely does not count.',
  'A test that was not needed and was left out, where the job is to find what is behind a symptom.',
] as const;
