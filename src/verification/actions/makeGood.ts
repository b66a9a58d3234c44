/** Test action `make-good`: everything that the dead tests moved is back before power. */
import { judgeAll, off, samplesWhen } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { rulesFor } from '../rules/rules.ts';
import { PRACTICE, published } from '../sources.ts';
import type { TestAction } from '../testAction.ts';

/** How it was left: the last that was seen of it while isolated. */
const left = (o: Observed) => samplesWhen(o, off).slice(-1);

export const makeGood: TestAction = {
  id: 'make-good',
  stage: 'before power',
  from: 'isolated',
  leaves: 'isolated',
  restsOn: [],
  cover: 'closed',
  applies: () => true,
  steps: () => [{ op: 'close-cover' }, { op: 'guard' }],
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
  untold: (papers) => [
    {
      id: 'right-way',
      toldBy: ['supply-volts', 'state-c', 'loop'],
      ownOnly: true,
      of: 'circuit',
      source: rulesFor(papers).remembered('643.1'),
    },
  ],
  figures: () => [],
  limits: () => [],
  stops: [],
};
