/** What test action `isolate` ought to show. */
import { judgeAll, off, samplesWhen } from '../judging.ts';
import { CIRCUIT, PRACTICE } from '../sources.ts';
import type { TestLines } from '../testAction.ts';

export const isolate: TestLines = {
  expectations: () => [
    {
      id: 'goes-dark',
      should: true,
      source: CIRCUIT,
      of: 'circuit',
      points: ['supply-wiring'],
      judge: (o) => judgeAll(samplesWhen(o, off), ({ seen }) => seen.indicator === 'dark'),
    },
    {
      id: 'no-indication',
      should: false,
      source: PRACTICE,
      of: 'circuit',
      points: ['supply-wiring'],
      judge: (o) => judgeAll(samplesWhen(o, off).slice(-1), ({ seen }) => seen.indicator === 'dark'),
    },
  ],
  figures: () => [],
  limits: () => [],
  stops: [],
};
