/** Where a cause stops showing: the size of its parameter from which on the tests let it be seen. */
import type { FaultChoice } from '../faults/catalogue.ts';
import { entryNamed } from '../faults/catalogue.ts';
import type { Scenario } from '../scenario/scenario.ts';
import type { TestAction } from '../verification/testAction.ts';
import { besideDesigns, severityOf, soundCause } from './cause.ts';
import { shows, visibility } from './relations.ts';
import type { Row } from './row.ts';
import { Trials } from './trials.ts';

const MOST_HALVINGS = 10;

export interface Severity {
  readonly cause: string;
  readonly parameter: string;
  readonly unit: string;
  readonly value: number;
  /** Which end of the range is nearest to what nothing wrong reads, and which is furthest from it. */
  readonly leastVisible: number;
  readonly mostVisible: number;
  /** Whether it shows all over its range, nowhere, or from a value on towards the most visible end. */
  readonly shows: 'throughout' | 'nowhere' | 'from';
  readonly from: number | null;
}

/** Null for a cause that has no parameter to be more or less of. */
export function* sweeping(
  scenario: Scenario,
  { fault, values }: FaultChoice,
  tests: readonly TestAction[],
  trials = new Trials(scenario),
): Generator<unknown, Severity | null> {
  const entry = entryNamed(fault);
  const parameter = entry === undefined ? null : severityOf(entry);
  if (entry?.kind !== 'fault' || parameter === null) return null;
  const { name, unit, min, max } = parameter;
  const sound = yield* trials.row(soundCause, tests);
  const at = function* (value: number): Generator<unknown, Row> {
    return yield* trials.row(besideDesigns(scenario, entry, { ...values, [name]: value }, null), tests);
  };
  const [low, high] = [yield* at(min), yield* at(max)];
  const isLowLess = isLess(visibility(low, sound), visibility(high, sound));
  const [leastVisible, mostVisible] = isLowLess ? [min, max] : [max, min];
  const [least, most] = isLowLess ? [low, high] : [high, low];
  const frame = {
    ...{ cause: fault, parameter: name, unit, leastVisible, mostVisible },
    value: values[name] ?? parameter.default,
  };
  if (shows(least, sound)) return { ...frame, shows: 'throughout', from: null };
  if (!shows(most, sound)) return { ...frame, shows: 'nowhere', from: null };
  let [unseen, seen] = [leastVisible, mostVisible];
  for (let halved = 0; halved < MOST_HALVINGS; halved++) {
    const middle =
      unseen > 0 && seen > 0 && seen / unseen > 10 ? Math.sqrt(unseen * seen) : (unseen + seen) / 2;
    if (shows(yield* at(middle), sound)) seen = middle;
    else unseen = middle;
  }
  return { ...frame, shows: 'from', from: seen };
}

const isLess = (x: readonly [number, number], y: readonly [number, number]): boolean =>
  x[0] === y[0] ? x[1] <= y[1] : x[0] < y[0];
