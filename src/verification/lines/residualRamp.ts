/** What test action `residual-ramp` ought to show. */
import { ALTERNATING_STEPS } from '../../bench/instruments/residualTester.ts';
import { alternatingBand } from '../../laws/residualLimits.ts';
import { afterTrip, atTheOutlet, residualReadings, testedDevice, tripsWithin } from '../actions/residual.ts';
import { inState, judgeAll, outletDead } from '../judging.ts';
import { rulesFor } from '../rules/rules.ts';
import { pilotStandard, published } from '../sources.ts';
import type { Expectation, TestLines } from '../testAction.ts';

export const residualRamp: TestLines = {
  expectations: (papers) => {
    const device = testedDevice(papers);
    const rated = device?.rated ?? 0.03;
    const band = alternatingBand(rated);
    const isDelayed = device?.delay === 'S';
    const topOfRamp = (ALTERNATING_STEPS.at(-1) ?? 1) * rated;
    const of = device?.of ?? 'circuit';
    const points: Expectation['points'] = ['residual-direct'];
    return [
      {
        id: 'trips',
        should: true,
        values: { delayed: isDelayed, amps: isDelayed ? topOfRamp : band.greatest },
        source: rulesFor(papers).regulation('722.531.3.101; IEC 61008-1'),
        of,
        points,
        judge: (o) =>
          isDelayed
            ? judgeAll(residualReadings(o, 'sinusoidal'), (r) => r.qualifier === null)
            : tripsWithin(residualReadings(o, 'sinusoidal'), { greatest: band.greatest }),
      },
      {
        id: 'early',
        should: false,
        values: { amps: band.least },
        source: published('IEC 61008-1'),
        of,
        points: ['residual-direct', 'insulation'],
        judge: (o) =>
          judgeAll(
            residualReadings(o, 'sinusoidal'),
            (r) => r.qualifier === '>' || (r.value ?? 0) > band.least,
          ),
      },
      {
        id: 'stays-off',
        should: true,
        source: pilotStandard('clause 14, UK note'),
        of,
        points,
        judge: (o) =>
          residualReadings(o, 'sinusoidal').some((r) => r.qualifier === null)
            ? outletDead(
                papers,
                o,
                (setUp, sample) => inState('C')(setUp, sample) && afterTrip(o)(setUp, sample),
              )
            : 'not shown',
      },
    ];
  },
  figures: () => [],
  limits: (papers) => {
    const device = testedDevice(papers);
    const rated = device?.rated ?? 0.03;
    // The steps are too short to find the current of a delayed device; its time at the rating is a test of its own.
    if (device?.delay === 'S') return [];
    return [
      {
        id: 'trip-current',
        values: { rated },
        quantity: 'residual',
        unit: 'A',
        limit: rated,
        kind: 'most',
        source: published('IEC 61008-1'),
        points: ['residual-direct'],
        applies: (r) => atTheOutlet(r) && r.waveform === 'sinusoidal' && r.mode === 'ramp',
      },
    ];
  },
  stops: ['trips'],
};
