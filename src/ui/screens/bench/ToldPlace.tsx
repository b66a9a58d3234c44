/**
 * The place of one wrong line, cut out of the opened drawing, with the leads as they stood: of the correct twin, which shows
 * nothing of what is wrong with this unit, or of this unit itself. It comes when it is first wanted, and the replay with it.
 */

import { differences } from '../../../attempt/opened/differences.ts';
import { causesOf } from '../../../attempt/opened/roots.ts';
import type { Lockstep, Step } from '../../../attempt/opened/twin.ts';
import type { Value } from '../../../attempt/opened/value.ts';
import { metValue } from '../../../attempt/opened/value.ts';
import { pairOf } from '../../../bench/reading.ts';
import type { Papers } from '../../../verification/testAction.ts';
import { openedLayout, spotOf } from '../../drawing/opened/layout.ts';
import { readingShown, terminalsOf } from '../../drawing/opened/OpenedLeads.tsx';
import { PlaceCutOut } from '../../drawing/opened/PlaceCutOut.tsx';
import type { ToldLine } from './toldLines.ts';

export { followingLog } from '../../../attempt/opened/twin.ts';

interface Props {
  readonly papers: Papers;
  readonly followed: Lockstep;
  readonly place: NonNullable<ToldLine['place']>;
  /** Whether this unit may be opened; else its correct twin is. */
  readonly opensUnit: boolean;
  readonly number: number;
}

export function ToldPlace({ papers, followed, place, opensUnit, number }: Props) {
  const at = followed.steps.findIndex(({ entry }) => entry === place.entry);
  const step = followed.steps[at];
  if (step === undefined) return null;
  const side = opensUnit ? 'unit' : 'twin';
  const shown = (opensUnit ? causeAt(followed, at, place.points) : null) ?? leadsAt(papers, step, side);
  if (shown === null) return null;
  return (
    <PlaceCutOut
      name={
        opensUnit ? 'This unit, opened, leads as they stood' : 'Correct twin, opened, leads as they stood'
      }
      papers={papers}
      side={side}
      moment={step[side]}
      operation={step.operation}
      difference={shown}
      number={number}
    />
  );
}

type Shown = Parameters<typeof PlaceCutOut>[0]['difference'];

/** What is wrong there, of the families that the line points to. */
function causeAt(
  { scenario, installations, steps }: Lockstep,
  at: number,
  points: NonNullable<ToldLine['place']>['points'],
): Shown | null {
  const [step, unit, twin] = [steps[at], installations.unit[at], installations.twin[at]];
  if (step === undefined || unit === undefined || twin === undefined) return null;
  const causes = causesOf(unit, twin, scenario.faults);
  const cause = causes.findIndex(({ fault }) => fault !== null && points.includes(fault.family));
  return cause < 0 ? null : (differences(step.unit, step.twin, causes)[cause] ?? null);
}

/** Where the first lead was, and what its instrument met there; null where nothing was read. */
function leadsAt(papers: Papers, { operation, ...sides }: Step, side: 'unit' | 'twin'): Shown | null {
  const layout = openedLayout(papers);
  const terminals = operation === null ? [] : terminalsOf(operation, layout);
  // What is timed is the outlet going dead.
  const places = (terminals.length === 0 ? ['outlet.L1'] : terminals).map((terminal) => `volts.${terminal}`);
  const { met } = sides[side];
  const reading = readingShown(sides[side]);
  if (reading === undefined) return null;
  const truth = met.find((one) => one.reading === reading)?.truth;
  const value: Value = truth === undefined ? { id: 'not-read' } : metValue(truth);
  return {
    place: places.find((place) => spotOf(layout, place) !== null) ?? '',
    what: { id: 'reading', quantity: reading.quantity, between: pairOf(reading) ?? null },
    unit: value,
    twin: value,
  };
}
