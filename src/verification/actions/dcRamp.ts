/** Test action `dc-ramp`: smooth d.c., rising, both polarities. */
import { DIRECT_BAND } from '../../laws/residualLimits.ts';
import { isInside, judgeAll } from '../judging.ts';
import { published } from '../sources.ts';
import type { Expectation, Papers, TestAction } from '../testAction.ts';
import { atTheOutlet, oneAfterAnother, residualReadings, rising, tripsWithin } from './residual.ts';

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

export const dcRamp: TestAction = {
  id: 'dc-ramp',
  stage: 'protection',
  from: 'energised',
  leaves: 'energised',
  needsSupply: true,
  restsOn: ['direct-detector', 'contactor'],
  applies: ({ sheet }) => sheet.residual.direct !== null,
  steps: (papers) =>
    oneAfterAnother(papers, 'direct', [
      [rising('L1', 'smooth-dc-positive')],
      [rising('L1', 'smooth-dc-negative')],
    ]),
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
  untold: () => [
    {
      id: 'step-time',
      toldBy: ['dc-step'],
      source: published('IEC 62955:2018 Table 2'),
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
