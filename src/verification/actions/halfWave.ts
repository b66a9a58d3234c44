/** Test action `half-wave`: pulsating d.c. residual current, both polarities. */
import type { Amps, Range } from '../../laws/quantities.ts';
import { DIRECT, halfWaveBand, halfWaveBreakTimeLimit } from '../../laws/residualLimits.ts';
import { isInside, judgeAll } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { rulesFor } from '../rules/rules.ts';
import { CIRCUIT, fromMemory, published } from '../sources.ts';
import type { Expectation, Papers, TestAction } from '../testAction.ts';
import {
  atOnce,
  fixedReadings,
  oneAfterAnother,
  residualReadings,
  testedDevice,
  tripsInTime,
} from './residual.ts';

/** Mean of a half-wave of 1 A r.m.s. is 2/π A; a d.c. detector acts on the mean. */
const MEAN_OF_HALF_WAVE = 0.6366;

const POINTS: Expectation['points'] = ['residual-direct'];

/** Type AC is not asked for half-waves by its own standard, and is not for a charge point (BS 7671 531.3.3): it is held to type A. */
function band(papers: Papers): Range {
  const rated = testedDevice(papers)?.rated ?? 0.03;
  const own = halfWaveBand('A', rated, 0) as Range;
  const detector = papers.sheet.residual.direct === null ? Infinity : DIRECT.nonOperating / MEAN_OF_HALF_WAVE;
  return { least: Math.min(own.least, detector), greatest: own.greatest };
}

const MULTIPLE = 1.4;
const sudden = (papers: Papers): Amps => band(papers).greatest;

/** Just under what has to be borne. */
const borne = (papers: Papers): Amps => 0.98 * band(papers).least;

const SIGNS = ['positive', 'negative'] as const;

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

export const halfWave: TestAction = {
  id: 'half-wave',
  stage: 'protection',
  from: 'energised',
  leaves: 'energised',
  needsSupply: true,
  restsOn: ['residual-device', 'upstream-device', 'contactor', 'earthing', 'filter'],
  applies: (papers) => testedDevice(papers) !== null,
  steps: (papers) =>
    oneAfterAnother(
      papers,
      'residual',
      SIGNS.map((sign) => [
        atOnce('L1', `half-wave-${sign}`, borne(papers)),
        atOnce('L1', `half-wave-${sign}`, sudden(papers)),
      ]),
    ),
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
  untold: (papers) => [
    {
      id: 'which-sensor',
      toldBy: [],
      ownOnly: true,
      values: { detector: papers.sheet.residual.direct !== null },
      source: CIRCUIT,
    },
  ],
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
