/** Test action `residual-ramp`: a.c. residual current, rising. */
import type { Amps } from '../../laws/quantities.ts';
import { alternatingBand } from '../../laws/residualLimits.ts';
import { linesOf } from '../../site/site.ts';
import { inState, judgeAll, outletDead } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { untilSupplied } from '../offer.ts';
import { pilotStandard, published } from '../sources.ts';
import { outletVoltages, waitFor } from '../steps.ts';
import type { Expectation, Papers, TestAction } from '../testAction.ts';
import { readyAgain, residualReadings, rising, tripsWithin } from './residual.ts';

/** Which device the 30 mA test is about, by the papers. */
function ratedDevice({ site, sheet }: Papers): { rated: Amps; of: 'unit' | 'circuit' } | null {
  if (sheet.residual.type !== null) return { rated: sheet.residual.rated ?? 0.03, of: 'unit' };
  const { residualDevice } = site.circuit;
  return residualDevice === null ? null : { rated: residualDevice.rated, of: 'circuit' };
}

export const residualRamp: TestAction = {
  id: 'residual-ramp',
  title: 'Residual current rising, a.c.',
  stage: 'protection',
  from: 'energised',
  leaves: 'energised',
  purpose: 'Find the current at which the residual device acts, and show that it then stays off.',
  applies: () => true,
  steps: (papers) =>
    linesOf(papers.site).flatMap((line, i) => [
      ...untilSupplied(papers),
      rising(line, 'sinusoidal'),
      ...(i === 0 ? [waitFor(10), ...outletVoltages(papers)] : []),
      ...readyAgain(papers, 'residual'),
    ]),
  expectations: (papers) => {
    const device = ratedDevice(papers);
    const rated = device?.rated ?? 0.03;
    const band = alternatingBand(rated);
    const mA = (amps: Amps) => Math.round(1000 * amps);
    const of = device?.of ?? 'circuit';
    const points: Expectation['points'] = ['residual-direct'];
    return [
      {
        id: 'trips',
        should: true,
        text: `trips by ${mA(band.greatest)} mA`,
        why: 'That is the rated residual current for additional protection.',
        source: published('IEC 61008-1; BS 7671:2018+A2:2022 722.531.3.101'),
        of,
        points,
        judge: (o) => tripsWithin(residualReadings(o, 'sinusoidal'), { greatest: band.greatest }),
      },
      {
        id: 'early',
        should: false,
        text: `trips at ${mA(band.least)} mA or less`,
        why: 'Half the rating is standing leakage that it has to put up with.',
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
        text: 'stays off until it is reset',
        why: 'Nothing may close by itself after a residual trip.',
        source: pilotStandard('clause 14, UK note'),
        of,
        points,
        judge: (o) =>
          residualReadings(o, 'sinusoidal').some((r) => r.qualifier === null)
            ? outletDead(papers, o, (setUp, sample) => inState('C')(setUp, sample) && afterTrip(o, sample))
            : 'not shown',
      },
    ];
  },
  untold: () => [
    {
      id: 'direct',
      text: 'acts on smooth d.c.',
      why: 'Only a.c. was applied.',
      source: published('IEC 62955:2018'),
    },
  ],
  figures: () => [],
  limits: (papers) => {
    const rated = ratedDevice(papers)?.rated ?? 0.03;
    return [
      {
        id: 'trip-current',
        text: 'greatest tripping current',
        quantity: 'residual',
        unit: 'A',
        limit: rated,
        kind: 'most',
        sum: `the rating: ${1000 * rated} mA`,
        source: published('IEC 61008-1'),
        points: ['residual-direct'],
        applies: (r) => r.quantity === 'residual' && r.waveform === 'sinusoidal' && r.mode === 'ramp',
      },
    ];
  },
  stops: { trips: 'the residual device does not act: leave off, lock off' },
};

/** Samples that come after a test current has made something trip, and before anything was reset. */
function afterTrip(o: Observed, sample: Observed['samples'][number]): boolean {
  const before = o.samples.slice(0, o.samples.indexOf(sample));
  const tripped = before.findLastIndex(({ readings }) =>
    readings.some((r) => r.quantity === 'residual' && r.qualifier === null),
  );
  const reset = before.findLastIndex(({ operation }) => operation.op === 'reset');
  return tripped >= 0 && reset < tripped;
}
