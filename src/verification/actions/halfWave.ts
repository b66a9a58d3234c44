/** Test action `half-wave`: pulsating d.c. residual current, both polarities. */
import type { Amps, Range } from '../../laws/quantities.ts';
import { DIRECT, halfWaveBand } from '../../laws/residualLimits.ts';
import { CIRCUIT } from '../sources.ts';
import type { Papers, Procedure } from '../testAction.ts';
import { atOnce, oneAfterAnother, testedDevice } from './residual.ts';

/** Mean of a half-wave of 1 A r.m.s. is 2/π A; a d.c. detector acts on the mean. */
const MEAN_OF_HALF_WAVE = 0.6366;

/** Type AC is not asked for half-waves by its own standard, and is not for a charge point (BS 7671 531.3.3): it is held to type A. */
export function band(papers: Papers): Range {
  const rated = testedDevice(papers)?.rated ?? 0.03;
  const own = halfWaveBand('A', rated, 0) as Range;
  const detector = papers.sheet.residual.direct === null ? Infinity : DIRECT.nonOperating / MEAN_OF_HALF_WAVE;
  return { least: Math.min(own.least, detector), greatest: own.greatest };
}
export const sudden = (papers: Papers): Amps => band(papers).greatest;

/** Just under what has to be borne. */
export const borne = (papers: Papers): Amps => 0.98 * band(papers).least;

export const SIGNS = ['positive', 'negative'] as const;

export const halfWave: Procedure = {
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
  untold: (papers) => [
    {
      id: 'which-sensor',
      toldBy: [],
      ownOnly: true,
      values: { detector: papers.sheet.residual.direct !== null },
      source: CIRCUIT,
    },
  ],
};
