/** Test action `residual-five`: five times the rated residual current. No document asks for it any more. */
import { published, wiringRules } from '../sources.ts';
import { outletVoltages } from '../steps.ts';
import type { TestAction } from '../testAction.ts';
import { atOnce, oneAfterAnother, testedDevice } from './residual.ts';
import { fixedTest, inTime, staysOff, timeLimit, whichTrips } from './residualFixed.ts';

export const residualFive: TestAction = {
  id: 'residual-five',
  title: 'Five times the residual rating, a.c.',
  stage: 'protection',
  optional: true,
  from: 'energised',
  leaves: 'energised',
  needsSupply: true,
  restsOn: ['residual-device', 'upstream-device', 'contactor', 'earthing'],
  purpose: 'Time the trip at a current nearer to a real fault. Recorded as extra: its absence is no fault.',
  applies: (papers) => testedDevice(papers) !== null,
  steps: (papers) =>
    oneAfterAnother(papers, 'residual', [
      [atOnce('L1', 'sinusoidal', fixedTest(papers, 5).amps), ...outletVoltages(papers)],
    ]),
  expectations: (papers) => {
    const test = fixedTest(papers, 5);
    return [inTime(papers, test), whichTrips(papers, test), staysOff(papers)];
  },
  untold: () => [
    {
      id: 'asked-for',
      toldBy: [],
      ownOnly: true,
      text: 'is asked to pass this before it may be put to use',
      why: 'Since the second amendment one test at the rating is what verification needs.',
      source: wiringRules('643.8'),
    },
  ],
  figures: () => [],
  limits: (papers) => [
    timeLimit(
      fixedTest(papers, 5),
      '5 × the rating: the time for its kind',
      published('IEC 61008-1, break times'),
    ),
  ],
  stops: {},
};
