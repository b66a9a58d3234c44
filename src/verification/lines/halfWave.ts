/** What test action `half-wave` ought to show. */
import { halfWaveBreakTimeLimit } from '../../laws/residualLimits.ts';
import { band, borne, SIGNS, sudden } from '../actions/halfWave.ts';
import { fixedReadings, residualReadings, testedDevice, tripsInTime } from '../actions/residual.ts';
import { isInside, judgeAll } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { rulesFor } from '../rules/rules.ts';
import { fromMemory, published } from '../sources.ts';
import type { Expectation, Papers, TestLines } from '../testAction.ts';

const POINTS: Expectation['points'] = ['residual-direct'];

const MULTIPLE = 1.4;

const answers = (papers: Papers, sign: 'positive' | 'negative'): Expectation => {
  const amps = sudden(papers);
  return {
    id: `answers-${sign}`,
    should: true,
    values: { amps, multiple: MULTIPLE },
    source: fromMemory('IEC 61008-1, 9.9'),
    of: testedDevice(papers)?.of ?? 'circuit',
    points: POINTS,
    judge: (o) => {
      const greatest = halfWaveBreakTimeLimit(MULTIPLE);
      return tripsInTime(fixedReadings(o, `half-wave-${sign}`, amps, greatest), { greatest });
    },
  };
};

const allRising = (o: Observed) => SIGNS.flatMap((sign) => residualReadings(o, `half-wave-${sign}`));

export const halfWave: TestLines = {
  expectations: (papers) => {
    const { least } = band(papers);
    return [
      answers(papers, 'positive'),
      answers(papers, 'negative'),
      {
        id: 'early',
        should: false,
        values: { least, detector: papers.sheet.residual.direct !== null },
        source: published('IEC 61008-1, 9.9; IEC 62955:2018 5.3.4'),
        of: 'unit',
        points: POINTS,
        judge: (o) =>
          judgeAll(
            [
              ...allRising(o),
              ...SIGNS.flatMap((sign) => fixedReadings(o, `half-wave-${sign}`, borne(papers))),
            ],
            (r) => r.qualifier === '>' || isInside(r, { least }),
          ),
      },
    ];
  },
  figures: (papers) => [
    {
      id: 'sudden',
      values: { multiple: MULTIPLE, rated: testedDevice(papers)?.rated ?? 0.03 },
      unit: 'A',
      value: sudden(papers),
      tolerance: 0.0005,
      source: rulesFor(papers).regulation('531.3.3', 'with-iec-61008-1-9.9'),
    },
  ],
  limits: () => [],
  stops: ['answers-positive', 'answers-negative'],
};
