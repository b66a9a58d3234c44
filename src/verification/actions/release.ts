/** Test action `release`: the plug of a socket-outlet is let go, after a vehicle has gone and after a fault. */
import type { Seconds } from '../../laws/quantities.ts';
import { GREATEST_UNLOCK_AFTER_FAULT, GREATEST_UNLOCK_AFTER_UNPLUGGING } from '../../laws/timing.ts';
import { judgeAll, samplesWhen, settledFor, type When } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { cleared, unplug, untilSupplied } from '../offer.ts';
import { pilotStandard, SHEET } from '../sources.ts';
import { stating } from '../stated.ts';
import { waitFor } from '../steps.ts';
import type { Finding, Papers, TestAction } from '../testAction.ts';
import { shorted } from './pilotShort.ts';

const gone: When = ({ supply, disturbed, standIn }) =>
  supply === 'on' && !disturbed && standIn.plugged && standIn.state === 'A' && standIn.pilot === 'sound';

/** Nothing was heard to let go of the plug between the contactor's closing and its opening. */
function releasedDead(o: Observed): Finding {
  let live = false;
  const releases: boolean[] = [];
  for (const { what } of o.samples.flatMap(({ events }) => events)) {
    if (what === 'contactor closed') live = true;
    if (what === 'contactor opened') live = false;
    if (what === 'plug released') releases.push(!live);
  }
  return judgeAll(releases, (dead) => dead);
}

const notHeld = (o: Observed, when: When): Finding =>
  judgeAll(samplesWhen(o, when), ({ seen }) => seen.plug !== 'held');

const within = (papers: Papers, name: string, clause: string, greatest: Seconds) => {
  const { ranges, line } = stating(papers, 'release', pilotStandard(clause), {
    [name]: { unit: 's', greatest },
  });
  return { line, time: ranges[name]?.greatest ?? greatest };
};

const afterGoing = (papers: Papers) =>
  within(papers, 'after-going', 'Table A.6 sequence 2.1', GREATEST_UNLOCK_AFTER_UNPLUGGING);

const afterFault = (papers: Papers) =>
  within(papers, 'after-fault', 'Table A.6 sequence 12', GREATEST_UNLOCK_AFTER_FAULT);

export const release: TestAction = {
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
  expectations: (papers) => [
    {
      id: 'after-going',
      should: true,
      ...afterGoing(papers).line,
      of: 'unit',
      points: ['proximity-retention'],
      judge: (o) => notHeld(o, settledFor(gone, afterGoing(papers).time)),
    },
    {
      id: 'after-fault',
      should: true,
      ...afterFault(papers).line,
      of: 'unit',
      points: ['proximity-retention'],
      judge: (o) => notHeld(o, settledFor(shorted, afterFault(papers).time)),
    },
    {
      id: 'released-live',
      should: false,
      source: pilotStandard('6.3.2'),
      of: 'unit',
      points: ['proximity-retention', 'switching'],
      judge: releasedDead,
    },
  ],
  untold: () => [
    {
      id: 'no-power',
      toldBy: ['supply-return'],
      source: SHEET,
    },
  ],
  figures: () => [],
  limits: () => [],
  stops: ['released-live'],
};
