/** Test action `half-wave`: pulsating d.c. residual current, both polarities. */
import type { Amps, Range } from '../../laws/quantities.ts';
import { DIRECT, halfWaveBand, halfWaveBreakTimeLimit } from '../../laws/residualLimits.ts';
import { isInside, judgeAll } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { CIRCUIT, fromMemory, published, wiringRules } from '../sources.ts';
import type { Expectation, Papers, TestAction } from '../testAction.ts';
import {
  atOnce,
  fixedReadings,
  milliamps,
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
    text: `trips within 300 ms at ${milliamps(amps)} mA r.m.s. of ${sign} half-waves`,
    why: `That is ${MULTIPLE} times the rating; a device of type A, F or B answers to both polarities.`,
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
  title: 'Half-wave residual current, both polarities',
  stage: 'protection',
  from: 'energised',
  leaves: 'energised',
  needsSupply: true,
  restsOn: ['residual-device', 'upstream-device', 'contactor', 'earthing'],
  purpose: 'Show that the residual device answers to the pulsating d.c. that a rectifier’s fault gives.',
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
        text: `trips below ${milliamps(least)} mA r.m.s.`,
        why:
          papers.sheet.residual.direct === null
            ? 'Less than 0.35 of the rating it has to put up with.'
            : 'Below that not even the d.c. detector, which feels the mean (0.637 of the r.m.s. value), may act.',
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
      text: 'tripped by its a.c. device and not by its d.c. detector',
      why:
        papers.sheet.residual.direct === null
          ? 'There is no d.c. detector here; a lamp or the sheet would tell.'
          : 'Both feel a half-wave, and both open the outlet.',
      source: CIRCUIT,
    },
  ],
  figures: (papers) => [
    {
      id: 'sudden',
      text: 'has to trip by, r.m.s.',
      unit: 'A',
      value: sudden(papers),
      tolerance: 0.0005,
      why: `${MULTIPLE} × ${milliamps(testedDevice(papers)?.rated ?? 0.03)} mA.`,
      source: wiringRules('531.3.3, with IEC 61008-1 9.9'),
    },
  ],
  limits: () => [],
  stops: {
    'answers-positive': 'the residual device does not answer to half-waves: leave off, lock off',
    'answers-negative': 'the residual device does not answer to half-waves: leave off, lock off',
  },
};
