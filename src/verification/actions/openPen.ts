/** Test action `open-pen`: the open-PEN measure, by the disturbance that it watches for. */
import type { OperationInput } from '../../bench/operation.ts';
import type { Seconds } from '../../laws/quantities.ts';
import { linesOf } from '../../site/site.ts';
import { opensEarthUnpowered } from '../../unit/design.ts';
import { cleared, unplug, untilSupplied } from '../offer.ts';
import { CIRCUIT } from '../sources.ts';
import { outletVoltages, voltage, waitFor } from '../steps.ts';
import type { Papers, Procedure } from '../testAction.ts';
import { byWindow, disturb, restore } from './penHazard.ts';

/** Shorter than the 4 s that a measure may ignore, s. */
const SHORT: Seconds = 3;
const HELD: Seconds = 10;

/**
 * With PE parted the filters hold the case about half-way between line and neutral, behind a high resistance; a meter
 * of 10 MΩ shows that and takes no harm. Connected to the earthing terminal it has none.
 */
const metToParted = (papers: Papers): OperationInput => ({
  op: 'measure',
  quantity: 'voltage',
  between: ['met', parted(papers)],
  tool: 'meter',
});

/** What hangs on the protective conductor beyond the pole: exposed metal, or the outlet alone where that stays earthed. */
export const parted = ({ sheet }: Papers) => (opensEarthUnpowered(sheet) ? 'outlet.PE' : 'case');

/** A disturbance that is over before the measure has to act, and what became of the supply. */
const shortly = (papers: Papers): readonly OperationInput[] => [
  disturb(papers),
  waitFor(SHORT),
  restore,
  waitFor(6),
  ...linesOf(papers.site).map((x) => voltage(`outlet.${x}`, 'outlet.N')),
];

export const openPen: Procedure = {
  id: 'open-pen',
  stage: 'protection',
  from: 'energised',
  leaves: 'energised',
  needsSupply: true,
  restsOn: ['open-pen', 'unit-earth', 'contactor', 'filter'],
  applies: ({ site, sheet }) => sheet.openPen !== 'none' && site.earthing === 'TN-C-S',
  steps: (papers) => [
    ...untilSupplied(papers),
    ...(papers.sheet.openPenRidesOut ? shortly(papers) : []),
    disturb(papers),
    waitFor(HELD),
    ...(byWindow(papers) ? [] : [voltage('met', 'earth')]),
    ...outletVoltages(papers),
    byWindow(papers) ? metToParted(papers) : voltage(parted(papers), 'earth'),
    { op: 'reset', what: 'unit' },
    waitFor(3),
    ...linesOf(papers.site).map((x) => voltage(`outlet.${x}`, 'outlet.N')),
    restore,
    ...unplug,
    ...cleared(papers, 'openPen'),
    metToParted(papers),
  ],
  untold: (papers) => [
    {
      id: 'other-way',
      toldBy: [],
      values: { window: byWindow(papers) },
      source: CIRCUIT,
    },
  ],
};
