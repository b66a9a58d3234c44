/** What test action `residual-again` ought to show. */

import { fixedReadings, testedDevice } from '../actions/residual.ts';
import { fixedTest, inTime, ratedTimeLimit, whichTrips } from '../actions/residualFixed.ts';
import { inState, judgeAll, outletDead } from '../judging.ts';
import type { Observed, Sample } from '../observed.ts';
import { rulesFor } from '../rules/rules.ts';
import { published, SHEET } from '../sources.ts';
import type { Expectation, Papers, TestLines } from '../testAction.ts';

/** Since the button was last pressed, and before anything was reset. */
function afterButton(o: Observed, sample: Sample): boolean {
  const before = o.samples.slice(0, o.samples.indexOf(sample));
  const pressed = before.findLastIndex(
    ({ operation }) => operation.op === 'press' && operation.button === 'residual-test',
  );
  const reset = [...before, sample].findLastIndex(({ operation }) => operation.op === 'reset');
  return pressed >= 0 && reset < pressed;
}

const button = (papers: Papers): readonly Expectation[] =>
  papers.sheet.residual.type === null
    ? []
    : [
        {
          id: 'button',
          should: true,
          source: rulesFor(papers).regulation('643.10'),
          of: 'unit',
          points: ['residual-direct'],
          judge: (o) =>
            outletDead(papers, o, (setUp, sample) => inState('C')(setUp, sample) && afterButton(o, sample)),
        },
        {
          id: 'reset-restores',
          should: true,
          source: SHEET,
          of: 'unit',
          points: ['residual-direct', 'switching'],
          judge: (o) => {
            const last = o.samples.at(-1);
            return last === undefined ||
              last.setUp.standIn.plugged ||
              !o.samples.some(({ operation }) => operation.op === 'reset')
              ? 'not shown'
              : judgeAll([last], ({ seen }) => seen.indicator === 'ready');
          },
        },
      ];

export const residualAgain: TestLines = {
  expectations: (papers) => {
    const test = fixedTest(papers, 1);
    return [
      inTime(papers, test),
      whichTrips(papers, test),
      {
        id: 'blinded',
        should: false,
        source: published('IEC 61008-1, 9.9'),
        of: testedDevice(papers)?.of ?? 'circuit',
        points: ['residual-direct'],
        judge: (o) =>
          judgeAll(fixedReadings(o, 'sinusoidal', test.amps, test.greatest), (r) => r.qualifier === null),
      },
      ...button(papers),
    ];
  },
  figures: () => [],
  limits: (papers) => [ratedTimeLimit(papers)],
  stops: ['in-time'],
};
