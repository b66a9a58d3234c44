/**
 * A unit that gives no supply: what a faultless trainee tries before leaving the tests that need it, and how that is
 * told from readings alone.
 */
import type { OperationInput } from '../bench/operation.ts';
import type { Reading } from '../bench/reading.ts';
import type { Seconds } from '../laws/quantities.ts';
import { asked } from './actions/pilotLines.ts';
import { showsVoltage } from './judging.ts';
import type { Observed } from './observed.ts';
import { unplug, untilOffered } from './offer.ts';
import { outletVoltages, waitFor } from './steps.ts';
import type { Papers, TestAction } from './testAction.ts';

/** What stands in place of a broken line where a trainee stops for want of a supply. */
export const NO_SUPPLY = 'no-supply';

/** Late is not never: far beyond the 3 s that are due (IEC 61851-1:2017 Table A.6 sequence 4). A design choice. */
const PATIENCE: Seconds = 10;

/** Of a line at the outlet, to neutral or to PE. */
export const ofOutletLine = (reading: Reading): boolean =>
  reading.quantity === 'voltage' &&
  reading.between?.every((terminal) => terminal.startsWith('outlet.')) === true &&
  reading.between.some((terminal) => terminal.startsWith('outlet.L'));

/** Asked for and due by the sheet, and no line was live at the outlet, or the unit never said that it charges. */
export function gaveNoSupply(action: TestAction, papers: Papers, observed: Observed): boolean {
  if (action.needsSupply !== true) return false;
  const { samples } = observed;
  const isDue = asked(papers, observed);
  if (!samples.some((one) => isDue(one.setUp, one))) return false;
  const atLines = samples.flatMap(({ readings, seen }, i) =>
    readings.filter(ofOutletLine).map((reading) => ({
      reading,
      // The indicator is seen once a reading is over: it may have closed meanwhile.
      charging: seen.indicator === 'charging' && samples[i - 1]?.seen.indicator === 'charging',
    })),
  );
  if (atLines.some(({ reading }) => showsVoltage(reading))) return false;
  // What was read once it had tripped or let go says nothing.
  return (
    atLines.some(({ charging }) => charging) || samples.every(({ seen }) => seen.indicator !== 'charging')
  );
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
