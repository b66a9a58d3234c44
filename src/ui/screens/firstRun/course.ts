/**
 * The first run: which benches are handed over, which tests are done on them in which order, and the few words beside
 * each step. What the tests ask and what is true stands elsewhere; nothing here repeats it.
 */

import connected from '../../../../scenarios/first-run/connected.json';
import noVehicle from '../../../../scenarios/first-run/no-vehicle.json';
import type { Step } from '../../parts/Steps.tsx';

interface Lesson {
  readonly test: string;
  readonly beside: Readonly<Record<Step, string>>;
}

export interface Part {
  /** The scenario file's own object. */
  readonly file: object;
  readonly lessons: readonly Lesson[];
}

export const COURSE: readonly Part[] = [
  {
    file: connected,
    lessons: [
      {
        test: 'state-b',
        beside: {
          'Set up': 'The stand-in is plugged in, in state B, as it was handed over. Leave it so.',
          Predict: 'Say what a correct unit does before anything is read.',
          Measure:
            'Take “pilot against time” as the instrument, check its leads, apply. Then type what it shows: what you type is the record.',
          Judge: 'Hold each line against what you wrote.',
        },
      },
      {
        test: 'state-c',
        beside: {
          'Set up':
            'Set the stand-in to C, which asks for supply, and let it wait 3 s. It acts when you lock.',
          Predict: 'Two lines again. Your sureness locks them.',
          Measure:
            'What was heard stands above. Take the two-pole detector: L1 to N at the outlet, then N to PE.',
          Judge: 'Hold each line against what you wrote.',
        },
      },
    ],
  },
  {
    file: noVehicle,
    lessons: [
      {
        test: 'state-a',
        beside: {
          'Set up': 'Another unit. Nothing is plugged in. Leave it so.',
          Predict: 'One of the two lines cannot be told from this test.',
          Measure: 'Two-pole detector at the outlet: L1 to N first, then L1 to PE, then N to PE.',
          Judge: 'Hold each line against what you wrote.',
        },
      },
    ],
  },
];
