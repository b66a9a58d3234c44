/** What test action `release` ought to show. */
import { shorted } from '../actions/pilotShort.ts';
import { afterFault, afterGoing } from '../actions/release.ts';
import { judgeAll, samplesWhen, settledFor, type When } from '../judging.ts';
import type { Observed } from '../observed.ts';
import { pilotStandard } from '../sources.ts';
import type { Finding, TestLines } from '../testAction.ts';

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

export const release: TestLines = {
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
  figures: () => [],
  limits: () => [],
  stops: ['released-live'],
};
