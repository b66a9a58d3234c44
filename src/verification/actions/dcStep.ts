/** Test action `dc-step`: smooth d.c. that comes at once. */
import type { Amps, Seconds } from '../../laws/quantities.ts';
import { DIRECT, directBreakTimeLimit, smoothDirectBreakTimeLimit } from '../../laws/residualLimits.ts';
import type { Source } from '../sources.ts';
import { fromMemory, PRACTICE, published } from '../sources.ts';
import { outletVoltages } from '../steps.ts';
import type { Papers, Procedure } from '../testAction.ts';
import { atOnce, oneAfterAnother } from './residual.ts';

interface Step {
  readonly amps: Amps;
  readonly greatest: Seconds;
  readonly of: 'unit' | 'circuit';
  readonly source: Source;
}

/** What looks after smooth d.c., by the papers: the 6 mA detector, or a device of type B at twice its rating. */
function step({ site, sheet }: Papers): Step | null {
  if (sheet.residual.direct !== null) {
    const amps = DIRECT.operating;
    return {
      amps,
      greatest: directBreakTimeLimit(amps),
      of: 'unit',
      source: published('IEC 62955:2018 Table 2'),
    };
  }
  const upstream = site.circuit.residualDevice;
  const own =
    sheet.residual.type === 'B' ? { rated: sheet.residual.rated ?? 0.03, delay: 'general' as const } : null;
  const device = own ?? (upstream?.type === 'B' ? upstream : null);
  if (device === null) return null;
  return {
    amps: 2 * device.rated,
    greatest: smoothDirectBreakTimeLimit(device.delay, 2),
    of: own === null ? 'circuit' : 'unit',
    source: fromMemory('BS EN 62423'),
  };
}

export const SIGNS = ['positive', 'negative'] as const;

export const stepOf = (papers: Papers): Step =>
  step(papers) ?? { amps: DIRECT.operating, greatest: 10, of: 'unit', source: PRACTICE };

export const dcStep: Procedure = {
  id: 'dc-step',
  stage: 'protection',
  from: 'energised',
  leaves: 'energised',
  needsSupply: true,
  restsOn: ['direct-detector', 'contactor'],
  applies: (papers) => step(papers) !== null,
  steps: (papers) => {
    const { amps } = stepOf(papers);
    const after = papers.sheet.residual.direct === null ? 'residual' : 'direct';
    // A detector’s two polarities are shown by the rising current already.
    const signs = after === 'direct' ? SIGNS.slice(0, 1) : SIGNS;
    return oneAfterAnother(
      papers,
      after,
      signs.map((sign) => [
        atOnce('L1', `smooth-dc-${sign}`, amps, { seconds: 10 }),
        ...outletVoltages(papers),
      ]),
    );
  },
  untold: () => [
    {
      id: 'asked-for',
      toldBy: ['papers'],
      source: PRACTICE,
    },
  ],
};
