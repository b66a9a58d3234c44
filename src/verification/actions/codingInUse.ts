/** Test action `coding-in-use`: what the unit does while it supplies, when the cable's coding is lost or too much is drawn for it. */

import type { OperationInput } from '../../bench/operation.ts';
import type { Reading } from '../../bench/reading.ts';
import type { CableCoding } from '../../laws/proximity.ts';
import { codedCurrent } from '../../laws/proximity.ts';
import type { Amps } from '../../laws/quantities.ts';
import { GREATEST_OFF_AFTER_PROXIMITY_LOSS } from '../../laws/timing.ts';
import { inState, outletDead, settledFor, type When } from '../judging.ts';
import { offerRange, unplug, untilSupplied } from '../offer.ts';
import { pilotStandard, published } from '../sources.ts';
import { outletVoltages, waitFor } from '../steps.ts';
import type { Expectation, Papers, TestAction } from '../testAction.ts';
import { offInTime } from './pilotLines.ts';
import { bearable } from './standInLoad.ts';

/** The smallest cable: a load above its coding is the easiest to bear. */
const SMALL: CableCoding = 13;

/** No power outside the codings; no time is tabled for losing one while supplying. */
const CHOSEN_TIME = published('IEC 61851-1:2017 Annex B, Table B.2', 'time-as-lost-pilot');

const isLoss = (r: Reading): boolean => r.quantity === 'opening-time' && r.of === 'proximity-lost';

const mayLose = (papers: Papers): boolean =>
  papers.sheet.permission !== 'held' && offerRange(papers).least > 0;

/** The plug's coding is lost while its cable is supplied. */
const losingIt = (papers: Papers): readonly OperationInput[] => [
  ...untilSupplied(papers),
  { op: 'measure', quantity: 'opening-time', of: 'proximity-lost' },
  waitFor(1),
  ...outletVoltages(papers),
  ...unplug,
  { op: 'vehicle', coding: papers.sheet.cable.coding },
];

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

/** A load is stated at 230 V and drawn at less: this share of it flows at 200 V, the lowest of any scenario. */
const DRAWN = 200 / 230;
/** Of its rating a breaker carries this for good (IEC 60898-1, from memory). */
const CARRIES = 1.13;

/** What certainly draws over a small cable's coding and the sheet's margin, A; null where unit, breaker or supply do not bear it. */
function overLoad(papers: Papers): Amps | null {
  const { site, sheet } = papers;
  const load = Math.ceil(((1 + sheet.overCode.margin) * SMALL) / DRAWN) + 1;
  const small = { ...papers, sheet: { ...sheet, cable: { ...sheet.cable, coding: SMALL } } };
  const borne = load <= CARRIES * site.circuit.breaker.rating && load <= bearable(papers);
  return mayLose(small) && borne ? load : null;
}

const drawingOver = (papers: Papers): readonly OperationInput[] => [
  { op: 'vehicle', coding: SMALL },
  ...untilSupplied(papers),
  { op: 'vehicle', load: overLoad(papers) ?? 0 },
  waitFor(papers.sheet.overCode.seconds + 1),
  ...outletVoltages(papers),
  { op: 'vehicle', load: 0 },
  ...unplug,
  { op: 'vehicle', coding: papers.sheet.cable.coding },
];

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

export const codingInUse: TestAction = {
  id: 'coding-in-use',
  stage: 'with power',
  from: 'energised',
  leaves: 'energised',
  needsSupply: true,
  restsOn: ['contactor', 'pilot', 'coding'],
  applies: (papers) => papers.sheet.outlet === 'socket' && mayLose(papers),
  steps: (papers) => [...losingIt(papers), ...(overLoad(papers) === null ? [] : drawingOver(papers))],
  expectations: (papers) => [lostInTime(papers), staysLive(papers), ...cutOff(papers)],
  untold: () => [{ id: 'each-size', toldBy: ['coding-sizes'], source: pilotStandard('Table B.2') }],
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
