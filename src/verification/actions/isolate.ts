/** Test action `isolate`: every live pole open at the origin, and locked. */
import { judgeAll, off, samplesWhen } from '../judging.ts';
import { CIRCUIT, PRACTICE, published } from '../sources.ts';
import type { TestAction } from '../testAction.ts';

export const isolate: TestAction = {
  id: 'isolate',
  title: 'Isolate the circuit',
  stage: 'before power',
  from: 'energised',
  leaves: 'isolated',
  restsOn: [],
  purpose: 'Open every live pole at the origin and lock it, so that nobody can switch it on while you work.',
  applies: () => true,
  steps: () => [{ op: 'isolate' }, { op: 'wait', seconds: 2 }],
  expectations: () => [
    {
      id: 'goes-dark',
      should: true,
      text: 'goes dark',
      why: 'With line and neutral open at the origin nothing feeds the unit’s electronics.',
      source: CIRCUIT,
      of: 'circuit',
      points: ['supply-wiring'],
      judge: (o) => judgeAll(samplesWhen(o, off), ({ seen }) => seen.indicator === 'dark'),
    },
    {
      id: 'no-indication',
      should: false,
      text: 'indicates anything with the lock on',
      why: 'An indication would mean another supply, or the wrong circuit locked off.',
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
      text: 'is dead at its supply terminals',
      why: 'A dark unit proves nothing: only a proved two-pole detector at the terminals does.',
      source: published('HSE GS38, 4th edition 2015'),
    },
  ],
  figures: () => [],
  limits: () => [],
  stops: {},
};
