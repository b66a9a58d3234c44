/** What test action `make-good` ought to show. */
import { judgeAll, off, samplesWhen } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { PRACTICE, published } from '../sources.ts';
import type { TestLines } from '../testAction.ts';

/** How it was left: the last that was seen of it while isolated. */
const left = (o: Observed) => samplesWhen(o, off).slice(-1);

export const makeGood: TestLines = {
  expectations: () => [
    {
      id: 'link-in',
      should: false,
      source: PRACTICE,
      of: 'circuit',
      points: ['supply-wiring'],
      judge: (o) => judgeAll(left(o), ({ setUp }) => setUp.links.length === 0),
    },
    {
      id: 'conductors-back',
      should: true,
      source: published('EAWR 1989 reg. 8'),
      of: 'circuit',
      points: ['protective-conductor', 'supply-wiring'],
      judge: (o) => judgeAll(left(o), ({ setUp }) => setUp.removed.length === 0),
    },
    {
      id: 'cover-on',
      should: true,
      source: published('EAWR 1989 reg. 14'),
      of: 'unit',
      points: ['mechanical'],
      judge: (o) => judgeAll(left(o), ({ setUp }) => setUp.cover === 'closed'),
    },
  ],
  figures: () => [],
  limits: () => [],
  stops: [],
};
