/** Test action `isolate`: every live pole open at the origin, and locked. */
import { judgeAll, off, samplesWhen } from '../judging.ts';
import { CIRCUIT, PRACTICE, published } from '../sources.ts';
import type { TestAction } from '../testAction.ts';

export const isolate: TestAction = {
  id: 'isolate',
  stage: 'before power',
  from: 'energised',
  leaves: 'isolated',
  restsOn: [],
  applies: () => true,
  steps: () => [{ op: 'isolate' }, { op: 'wait', seconds: 2 }],
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
  untold: () => [
    {
      id: 'terminals-dead',
      toldBy: ['prove-dead'],
      ownOnly: true,
      source: published('HSE GS38, 4th edition 2015'),
    },
  ],
  figures: () => [],
  limits: () => [],
  stops: [],
};
