/** Test action `volt-drop`: the stand-in draws a current, and the volts lost from the origin to the outlet are read. */
import type { Amps } from '../../laws/quantities.ts';
import { linesOf } from '../../site/site.ts';
import { atOutlet } from '../judging.ts';
import { cleared, offerRange, unplug, untilSupplied } from '../offer.ts';
import { PRACTICE } from '../sources.ts';
import { voltage } from '../steps.ts';
import type { Papers, Procedure } from '../testAction.ts';
import { bearable } from './standInLoad.ts';

/** What the stand-in is to draw, whole amperes: as much as is offered, as far as the supply bears it. */
export const loadFor = (papers: Papers): Amps =>
  Math.max(1, Math.floor(Math.min(offerRange(papers).least, bearable(papers))));

export const voltDrop: Procedure = {
  id: 'volt-drop',
  stage: 'protection',
  optional: true,
  from: 'energised',
  leaves: 'energised',
  needsSupply: true,
  restsOn: ['supply', 'breaker', 'circuit', 'outlet', 'contactor', 'pilot', 'filter'],
  applies: (papers) => papers.sheet.permission !== 'held' && offerRange(papers).least > 0,
  steps: (papers) => [
    ...untilSupplied(papers),
    { op: 'vehicle', load: loadFor(papers) },
    ...linesOf(papers.site).flatMap((line) => [
      voltage(`incoming.${line}`, 'incoming.N'),
      voltage(atOutlet(line), atOutlet('N')),
    ]),
    { op: 'vehicle', load: 0 },
    ...unplug,
    // A window takes the volts lost in a bad joint for an open PEN: whether it did or not, it is cleared.
    ...(papers.sheet.openPen === 'voltage-window' ? cleared(papers, 'openPen') : []),
  ],
  untold: () => [
    {
      id: 'warm',
      toldBy: [],
      source: PRACTICE,
    },
  ],
};
