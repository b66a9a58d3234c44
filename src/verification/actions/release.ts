/** Test action `release`: the plug of a socket-outlet is let go, after a vehicle has gone and after a fault. */
import type { Seconds } from '../../laws/quantities.ts';
import { GREATEST_UNLOCK_AFTER_FAULT, GREATEST_UNLOCK_AFTER_UNPLUGGING } from '../../laws/timing.ts';
import { cleared, unplug, untilSupplied } from '../offer.ts';
import { pilotStandard, SHEET } from '../sources.ts';
import { stating } from '../stated.ts';
import { waitFor } from '../steps.ts';
import type { Papers, Procedure } from '../testAction.ts';

const within = (papers: Papers, name: string, clause: string, greatest: Seconds) => {
  const { ranges, line } = stating(papers, 'release', pilotStandard(clause), {
    [name]: { unit: 's', greatest },
  });
  return { line, time: ranges[name]?.greatest ?? greatest };
};

export const afterGoing = (papers: Papers) =>
  within(papers, 'after-going', 'Table A.6 sequence 2.1', GREATEST_UNLOCK_AFTER_UNPLUGGING);

export const afterFault = (papers: Papers) =>
  within(papers, 'after-fault', 'Table A.6 sequence 12', GREATEST_UNLOCK_AFTER_FAULT);

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
    waitFor(afterGoing(papers).time),
    { op: 'pull-plug' },
    ...untilSupplied(papers),
    { op: 'vehicle', pilot: 'shorted-to-earth' },
    waitFor(afterFault(papers).time),
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
