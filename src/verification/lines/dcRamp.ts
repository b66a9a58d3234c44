/** What test action `dc-ramp` ought to show. */
import { DIRECT_BAND } from '../../laws/residualLimits.ts';
import { atTheOutlet, residualReadings, tripsWithin } from '../actions/residual.ts';
import { isInside, judgeAll } from '../judging.ts';
import { published } from '../sources.ts';
import type { Expectation, Papers, TestLines } from '../testAction.ts';

const directExpectation = (sign: 'positive' | 'negative', of: Expectation['of']): Expectation => ({
  id: `trips-${sign}`,
  should: true,
  source: published('IEC 62955:2018 9.9.2.1'),
  of,
  points: ['residual-direct'],
  judge: (o) => tripsWithin(residualReadings(o, `smooth-dc-${sign}`), DIRECT_BAND),
});

/** Up to 6 mA no device upstream has anything to answer to, and it stays able. */
const staysClosed = ({ site }: Papers): readonly Expectation[] =>
  site.circuit.residualDevice === null
    ? []
    : [
        {
          id: 'upstream',
          should: false,
          source: published('IEC 62955:2018, scope'),
          of: 'circuit',
          points: ['residual-direct'],
          judge: (o) =>
            judgeAll(
              [
                ...residualReadings(o, 'smooth-dc-positive'),
                ...residualReadings(o, 'smooth-dc-negative'),
              ].filter(({ qualifier }) => qualifier === null),
              ({ trippedWhat }) => trippedWhat === 'unit',
            ),
        },
      ];

export const dcRamp: TestLines = {
  expectations: (papers) => [
    directExpectation('positive', 'unit'),
    directExpectation('negative', 'unit'),
    ...staysClosed(papers),
    {
      id: 'early',
      should: false,
      source: published('IEC 62955:2018 5.3.4'),
      of: 'unit',
      points: ['residual-direct'],
      judge: (o) =>
        judgeAll(
          [...residualReadings(o, 'smooth-dc-positive'), ...residualReadings(o, 'smooth-dc-negative')],
          (r) => r.qualifier === '>' || isInside(r, { least: DIRECT_BAND.least }),
        ),
    },
  ],
  figures: () => [],
  limits: () => [
    {
      id: 'direct-current',
      quantity: 'residual',
      unit: 'A',
      limit: DIRECT_BAND.greatest,
      kind: 'most',
      source: published('IEC 62955:2018 9.9.2.1'),
      points: ['residual-direct'],
      applies: (r) => atTheOutlet(r) && r.waveform?.startsWith('smooth') === true,
    },
  ],
  stops: ['trips-positive', 'trips-negative'],
};
