/** What test action `dc-step` ought to show. */

import { SIGNS, stepOf } from '../actions/dcStep.ts';
import { afterTrip, atTheOutlet, fixedReadings, tripsInTime } from '../actions/residual.ts';
import { inState, judgeAll, outletDead } from '../judging.ts';
import { PRACTICE, pilotStandard } from '../sources.ts';
import type { TestLines } from '../testAction.ts';

export const dcStep: TestLines = {
  expectations: (papers) => {
    const { amps, greatest, of, source } = stepOf(papers);
    return [
      {
        id: 'in-time',
        should: true,
        values: { amps, greatest },
        source,
        of,
        points: ['residual-direct'],
        judge: (o) =>
          tripsInTime(
            SIGNS.flatMap((sign) => fixedReadings(o, `smooth-dc-${sign}`, amps, greatest)),
            { greatest },
          ),
      },
      {
        id: 'closes-again',
        should: false,
        source: pilotStandard('clause 14, UK note'),
        of: 'unit',
        points: ['residual-direct', 'switching'],
        judge: (o) => outletDead(papers, o, (setUp, s) => inState('C')(setUp, s) && afterTrip(o)(setUp, s)),
      },
      {
        id: 'breaker',
        should: false,
        source: PRACTICE,
        of: 'circuit',
        points: ['supply-wiring'],
        judge: (o) =>
          judgeAll(
            SIGNS.flatMap((sign) => fixedReadings(o, `smooth-dc-${sign}`, amps)),
            ({ trippedWhat }) => trippedWhat !== 'breaker',
          ),
      },
    ];
  },
  figures: (papers) => [
    {
      id: 'step',
      unit: 'A',
      value: stepOf(papers).amps,
      tolerance: 0.0005,
      source: stepOf(papers).source,
    },
  ],
  limits: (papers) => {
    const { amps, greatest, source } = stepOf(papers);
    return [
      {
        id: 'trip-time',
        values: { amps, greatest },
        quantity: 'residual',
        unit: 's',
        limit: greatest,
        kind: 'most',
        compares: 'trip time',
        source,
        points: ['residual-direct'],
        applies: (r) => atTheOutlet(r) && r.mode === 'fixed' && r.waveform?.startsWith('smooth') === true,
      },
    ];
  },
  stops: ['in-time'],
};
