/** Test action `release`: the plug of a socket-outlet is let go, after a vehicle has gone and after a fault. */
import type { Range, Seconds } from '../../laws/quantities.ts';
import { GREATEST_UNLOCK_AFTER_FAULT, GREATEST_UNLOCK_AFTER_UNPLUGGING } from '../../laws/timing.ts';
import { cleared, unplug, untilSupplied } from '../offer.ts';
import { pilotStandard, SHEET } from '../sources.ts';
import { stating } from '../stated.ts';
import { waitFor } from '../steps.ts';
import type { Papers, Procedure } from '../testAction.ts';

export const afterGoing = (papers: Papers) =>
  stating(papers, 'release', pilotStandard('Table A.6 sequence 2.1'), {
    'after-going': { unit: 's', greatest: GREATEST_UNLOCK_AFTER_UNPLUGGING },
  });

export const afterFault = (papers: Papers) =>
  stating(papers, 'release', pilotStandard('Table A.6 sequence 12'), {
    'after-fault': { unit: 's', greatest: GREATEST_UNLOCK_AFTER_FAULT },
  });

export const timeOf = ({ greatest = 0 }: Partial<Range>): Seconds => greatest;

export const release: Procedure = {
  id: 'release',
  stage: 'with power',
  from: 'energised',
  leaves: 'energised',
  needsSupply: true,
  restsOn: ['lock'],
  applies: ({ sheet }) => sheet.outlet === 'socket',
  steps: (papers) => [
    ...untilSupplied(papers),
    { op: 'vehicle', state: 'B' },
    waitFor(1),
    { op: 'vehicle', state: 'A' },
    waitFor(timeOf(afterGoing(papers).ranges['after-going'])),
    { op: 'pull-plug' },
    ...untilSupplied(papers),
    { op: 'vehicle', pilot: 'shorted-to-earth' },
    waitFor(timeOf(afterFault(papers).ranges['after-fault'])),
    ...unplug,
    ...cleared(papers, 'E'),
  ],
  untold: () => [
    {
      id: 'no-power',
      toldBy: ['supply-return'],
      source: SHEET,
    },
  ],
};
