/**
 * A unit that gives no supply: what a faultless trainee tries before leaving the tests that need it, and how that is
 * told from readings alone.
 */
import type { OperationInput } from '../bench/operation.ts';
import type { Reading } from '../bench/reading.ts';
import type { Seconds } from '../laws/quantities.ts';
import { asked } from './actions/pilotLines.ts';
import { outletDead, showsVoltage } from './judging.ts';
import type { Observed } from './observed.ts';
import { offerRange, unplug, untilOffered } from './offer.ts';
import { outletVoltages, waitFor } from './steps.ts';
import type { Papers, TestAction } from './testAction.ts';

export const NO_SUPPLY =
  'the unit gives no supply, asked for rightly and after a reset: what needs a supplied outlet cannot be tested';

/** Late is not never: far beyond the 3 s that are due (IEC 61851-1:2017 Table A.6 sequence 4). A design choice. */
const PATIENCE: Seconds = 10;

const atOutlet = ({ quantity, between }: Reading): boolean =>
  quantity === 'voltage' && between?.every((terminal) => terminal.startsWith('outlet.')) === true;

const readings = ({ samples }: Observed): readonly Reading[] => samples.flatMap((one) => one.readings);

/** Asked for and due by the sheet, and no line was live at the outlet; or nothing was read there, and it never said that it charges. */
export function gaveNoSupply(action: TestAction, papers: Papers, observed: Observed): boolean {
  if (action.needsSupply !== true || papers.sheet.permission === 'held' || offerRange(papers).least === 0)
    return false;
  const read = readings(observed).filter(atOutlet);
  if (read.some(showsVoltage)) return false;
  if (outletDead(papers, observed, asked(papers, observed)) === 'met') return true;
  return observed.samples.every(({ seen }) => seen.indicator !== 'charging');
}

/** Everything that might stand in the way reset, and asked once more with patience. */
export const tryingAgain = (papers: Papers): readonly OperationInput[] => [
  ...(papers.site.circuit.residualDevice === null ? [] : [{ op: 'reset', what: 'upstream' } as const]),
  { op: 'reset', what: 'unit' },
  waitFor(papers.sheet.startUp + 2),
  ...untilOffered(papers),
  { op: 'vehicle', state: 'C' },
  waitFor(PATIENCE),
  ...outletVoltages(papers),
  ...unplug,
];
