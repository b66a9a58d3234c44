/** Test action `residual-again`: the rated current once more, and the test button after it. */
import { inState, judgeAll, outletDead } from '../judging.ts';
import type { Observed, Sample } from '../observed.ts';
import { PRACTICE, published, SHEET, wiringRules } from '../sources.ts';
import { outletVoltages } from '../steps.ts';
import type { Expectation, Papers, TestAction } from '../testAction.ts';
import { atOnce, fixedReadings, oneAfterAnother, testedDevice } from './residual.ts';
import { fixedTest, inTime, ratedTimeLimit, whichTrips } from './residualFixed.ts';

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
          text: 'opens at once when its test button is pressed',
          why: 'The button passes a residual current of its own through the sensor.',
          source: wiringRules('643.10'),
          of: 'unit',
          points: ['residual-direct'],
          judge: (o) =>
            outletDead(papers, o, (setUp, sample) => inState('C')(setUp, sample) && afterButton(o, sample)),
        },
        {
          id: 'reset-restores',
          should: true,
          text: 'is ready again once it was reset',
          why: 'The unit’s sheet says how.',
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

export const residualAgain: TestAction = {
  id: 'residual-again',
  title: 'Rated residual current again, and the test button',
  stage: 'protection',
  from: 'energised',
  leaves: 'energised',
  needsSupply: true,
  restsOn: ['residual-device', 'upstream-device', 'contactor', 'earthing'],
  purpose: 'Show that the d.c. tests have changed nothing, and that the button works.',
  applies: (papers) => testedDevice(papers) !== null,
  steps: (papers) =>
    oneAfterAnother(papers, 'residual', [
      [atOnce('L1', 'sinusoidal', fixedTest(papers, 1).amps)],
      ...(papers.sheet.residual.type === null
        ? []
        : [[{ op: 'press', button: 'residual-test' } as const, ...outletVoltages(papers)]]),
    ]),
  expectations: (papers) => {
    const test = fixedTest(papers, 1);
    return [
      inTime(papers, test),
      whichTrips(papers, test),
      {
        id: 'blinded',
        should: false,
        text: 'fails to trip after the d.c. tests',
        why: 'A core may keep some magnetism; the device has to act all the same.',
        source: published('IEC 61008-1, 9.9'),
        of: testedDevice(papers)?.of ?? 'circuit',
        points: ['residual-direct'],
        judge: (o) =>
          judgeAll(fixedReadings(o, 'sinusoidal', test.amps, test.greatest), (r) => r.qualifier === null),
      },
      ...button(papers),
    ];
  },
  untold: () => [
    {
      id: 'button-time',
      toldBy: [],
      text: 'trips in time, by its test button',
      why: 'The button shows that the mechanism moves, not how fast, nor at which current.',
      source: PRACTICE,
    },
  ],
  figures: () => [],
  limits: (papers) => [ratedTimeLimit(papers)],
  stops: { 'in-time': 'the residual device does not act in time: leave off, lock off' },
};
