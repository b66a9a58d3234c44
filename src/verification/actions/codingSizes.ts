/** Test action `coding-sizes`: what a socket-outlet offers to each size of cable, and to none. */
import type { OperationInput } from '../../bench/operation.ts';
import type { Reading } from '../../bench/reading.ts';
import type { CableCoding } from '../../laws/proximity.ts';
import { CABLE_CODINGS, codedCurrent } from '../../laws/proximity.ts';
import type { Amps } from '../../laws/quantities.ts';
import { GREATEST_OFF_AFTER_PROXIMITY_LOSS } from '../../laws/timing.ts';
import { inState, isInside, judgeAll, outletDead, readingsOf, settledFor, type When } from '../judging.ts';
import { offerFigure, offerRange, permission, unplug, untilSupplied } from '../offer.ts';
import { pilotStandard, published } from '../sources.ts';
import { outletVoltages, pilot, waitFor } from '../steps.ts';
import type { Expectation, Papers, TestAction } from '../testAction.ts';
import { isTooLittle, isTooMuch, offersShown, oscillating, pilotReadings } from './pilotLines.ts';
import { bearable } from './standInLoad.ts';

const plugIn = (papers: Papers, coding: CableCoding | null) =>
  [
    { op: 'vehicle', coding, plugged: true, state: 'B' },
    waitFor(2),
    ...permission(papers),
    waitFor(2),
    pilot,
  ] as const;

const uncoded: When = (setUp, sample) => setUp.standIn.coding === null && inState('B', 'C')(setUp, sample);

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

const lostWhileSupplying = (papers: Papers): readonly Expectation[] =>
  mayLose(papers)
    ? [
        {
          id: 'lost-in-time',
          should: true,
          source: CHOSEN_TIME,
          of: 'unit',
          points: ['proximity-retention', 'switching'],
          judge: (o) =>
            judgeAll(
              readingsOf(o, 'opening-time', () => true).filter((r) => isLoss(r) && r.qualifier !== 'unable'),
              (r) => isInside(r, { greatest: GREATEST_OFF_AFTER_PROXIMITY_LOSS }),
            ),
        },
      ]
    : [];

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

export const codingSizes: TestAction = {
  id: 'coding-sizes',
  stage: 'with power',
  from: 'energised',
  leaves: 'energised',
  restsOn: ['contactor', 'pilot', 'coding'],
  applies: ({ sheet }) => sheet.outlet === 'socket',
  steps: (papers) => [
    ...CABLE_CODINGS.flatMap((coding) => [...plugIn(papers, coding), ...unplug]),
    ...plugIn(papers, null),
    { op: 'vehicle', state: 'C' },
    waitFor(4),
    ...outletVoltages(papers),
    ...unplug,
    { op: 'vehicle', coding: papers.sheet.cable.coding },
    ...(mayLose(papers) ? losingIt(papers) : []),
    ...(overLoad(papers) === null ? [] : drawingOver(papers)),
  ],
  expectations: (papers) => [
    {
      id: 'too-much',
      should: false,
      source: pilotStandard('6.3.1.6, Table B.2'),
      of: 'unit',
      points: ['proximity-retention', 'pilot'],
      judge: (o) =>
        judgeAll(
          offersShown(papers, o, inState('B')).filter(({ reading }) => oscillating(reading)),
          (shown) => !isTooMuch(shown),
        ),
    },
    {
      id: 'all-of-it',
      should: true,
      source: pilotStandard('6.3.1.6, Tables A.7, A.8 and B.2'),
      of: 'unit',
      points: ['proximity-retention', 'pilot'],
      judge: (o) => judgeAll(offersShown(papers, o, inState('B')), (shown) => !isTooLittle(shown)),
    },
    {
      id: 'uncoded-offer',
      should: false,
      source: pilotStandard('Table B.2'),
      of: 'unit',
      points: ['proximity-retention'],
      judge: (o) => judgeAll(pilotReadings(o, settledFor(uncoded, 1)), (r) => !oscillating(r)),
    },
    {
      id: 'uncoded-voltage',
      should: false,
      source: pilotStandard('Table B.2'),
      of: 'unit',
      points: ['proximity-retention', 'switching'],
      judge: (o) => outletDead(papers, o, uncoded),
    },
    ...lostWhileSupplying(papers),
    ...cutOff(papers),
  ],
  untold: () => [
    {
      id: 'cable-itself',
      toldBy: ['inspect', 'coding'],
      source: pilotStandard('Annex B'),
    },
  ],
  figures: (papers) =>
    [13, 63].flatMap((coding) => {
      const cable = { ...papers.sheet.cable, coding: coding as CableCoding };
      const value = offerFigure({ ...papers, sheet: { ...papers.sheet, cable } });
      return value === null
        ? []
        : [
            {
              id: `offer-${coding}`,
              unit: 'A' as const,
              value,
              tolerance: 0.5,
              source: pilotStandard('6.3.1.6, Tables A.7 and B.2'),
            },
          ];
    }),
  limits: (papers) =>
    mayLose(papers)
      ? [
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
        ]
      : [],
  stops: ['uncoded-voltage'],
};
