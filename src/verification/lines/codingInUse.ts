/** What test action `coding-in-use` ought to show. */
import type { Reading } from '../../bench/reading.ts';
import { codedCurrent } from '../../laws/proximity.ts';
import { GREATEST_OFF_AFTER_PROXIMITY_LOSS } from '../../laws/timing.ts';
import { DRAWN, overLoad } from '../actions/codingInUse.ts';
import { offInTime } from '../actions/pilotLines.ts';
import { inState, outletDead, settledFor, type When } from '../judging.ts';
import { pilotStandard, published } from '../sources.ts';
import type { Expectation, Papers, TestLines } from '../testAction.ts';

/** No power outside the codings; no time is tabled for losing one while supplying. */
const CHOSEN_TIME = published('IEC 61851-1:2017 Annex B, Table B.2', 'time-as-lost-pilot');

const isLoss = (r: Reading): boolean => r.quantity === 'opening-time' && r.of === 'proximity-lost';

const lostInTime = (papers: Papers): Expectation =>
  offInTime(papers, 'coding-in-use', {
    id: 'lost-in-time',
    source: CHOSEN_TIME,
    of: 'unit',
    points: ['proximity-retention', 'switching'],
    greatest: GREATEST_OFF_AFTER_PROXIMITY_LOSS,
    isMeant: (of) => of === 'proximity-lost',
  });

const lost: When = (setUp, sample) => setUp.standIn.coding === null && inState('C')(setUp, sample);

const staysLive = (papers: Papers): Expectation => ({
  id: 'stays-live',
  should: false,
  source: pilotStandard('Table B.2'),
  of: 'unit',
  points: ['proximity-retention', 'switching'],
  judge: (o) => outletDead(papers, o, lost),
});

/** Drawn for as long as the sheet allows and a little more, well over coding and margin. */
const overdrawn =
  ({ site, sheet: { overCode } }: Papers): When =>
  (setUp, sample) => {
    const { coding, load } = setUp.standIn;
    return (
      settledFor(inState('C'), overCode.seconds + 0.5)(setUp, sample) &&
      coding !== null &&
      DRAWN * load > (1 + overCode.margin) * codedCurrent(coding, site.phases)
    );
  };

const cutOff = (papers: Papers): readonly Expectation[] => {
  const { margin, seconds } = papers.sheet.overCode;
  return overLoad(papers) === null
    ? []
    : [
        {
          id: 'over-code',
          should: true,
          values: { margin, seconds },
          source: pilotStandard('Annex B', 'with-sheet'),
          of: 'unit',
          points: ['proximity-retention', 'switching'],
          judge: (o) => outletDead(papers, o, overdrawn(papers)),
        },
      ];
};

export const codingInUse: TestLines = {
  expectations: (papers) => [lostInTime(papers), staysLive(papers), ...cutOff(papers)],
  figures: () => [],
  limits: () => [
    {
      id: 'opening',
      quantity: 'opening-time',
      unit: 's',
      limit: GREATEST_OFF_AFTER_PROXIMITY_LOSS,
      kind: 'most',
      source: CHOSEN_TIME,
      points: ['proximity-retention', 'switching'],
      applies: isLoss,
    },
  ],
  stops: ['stays-live'],
};
