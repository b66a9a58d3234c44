/** Test action `coding-in-use`: what the unit does while it supplies, when the cable's coding is lost or too much is drawn for it. */
import type { OperationInput } from '../../bench/operation.ts';
import type { CableCoding } from '../../laws/proximity.ts';
import type { Amps } from '../../laws/quantities.ts';
import { offerRange, unplug, untilSupplied } from '../offer.ts';
import { pilotStandard } from '../sources.ts';
import { outletVoltages, waitFor } from '../steps.ts';
import type { Papers, Procedure } from '../testAction.ts';
import { bearable } from './standInLoad.ts';

/** The smallest cable: a load above its coding is the easiest to bear. */
const SMALL: CableCoding = 13;

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

/** A load is stated at 230 V and drawn at less: this share of it flows at 200 V, the lowest of any scenario. */
export const DRAWN = 200 / 230;
/** Of its rating a breaker carries this for good (IEC 60898-1, from memory). */
const CARRIES = 1.13;

/** What certainly draws over a small cable's coding and the sheet's margin, A; null where unit, breaker or supply do not bear it. */
export function overLoad(papers: Papers): Amps | null {
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

export const codingInUse: Procedure = {
  id: 'coding-in-use',
  stage: 'with power',
  from: 'energised',
  leaves: 'energised',
  needsSupply: true,
  restsOn: ['contactor', 'pilot', 'coding'],
  applies: (papers) => papers.sheet.outlet === 'socket' && mayLose(papers),
  steps: (papers) => [...losingIt(papers), ...(overLoad(papers) === null ? [] : drawingOver(papers))],
  untold: () => [{ id: 'each-size', toldBy: ['coding-sizes'], source: pilotStandard('Table B.2') }],
};
