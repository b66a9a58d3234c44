/** Test action `residual-rated`: the rated residual current, at both angles, on each line. */
import { linesOf } from '../../site/site.ts';
import { CIRCUIT } from '../sources.ts';
import { outletVoltages, waitFor } from '../steps.ts';
import type { TestAction } from '../testAction.ts';
import { atOnce, oneAfterAnother, testedDevice } from './residual.ts';
import { fixedTest, goesDark, inTime, ratedTimeLimit, staysOff, whichTrips } from './residualFixed.ts';

export const residualRated: TestAction = {
  id: 'residual-rated',
  stage: 'protection',
  from: 'energised',
  leaves: 'energised',
  needsSupply: true,
  restsOn: ['residual-device', 'upstream-device', 'contactor', 'earthing', 'filter'],
  applies: (papers) => testedDevice(papers) !== null,
  steps: (papers) => {
    const { amps } = fixedTest(papers, 1);
    return oneAfterAnother(
      papers,
      'residual',
      linesOf(papers.site).flatMap((line, i) => [
        [
          atOnce(line, 'sinusoidal', amps, { angle: 0 }),
          ...(i === 0 ? [waitFor(10), ...outletVoltages(papers)] : []),
        ],
        [atOnce(line, 'sinusoidal', amps, { angle: 180 })],
      ]),
    );
  },
  expectations: (papers) => {
    const test = fixedTest(papers, 1);
    return [inTime(papers, test), whichTrips(papers, test), staysOff(papers), ...goesDark(papers)];
  },
  untold: () => [
    {
      id: 'neutral-open',
      toldBy: [],
      ownOnly: true,
      source: CIRCUIT,
    },
  ],
  figures: () => [],
  limits: (papers) => [ratedTimeLimit(papers)],
  stops: ['in-time'],
};
