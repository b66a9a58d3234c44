/**
 * The place at which an attempt stands, with what is not yet in its log: the set-up and the answers of the open test,
 * and texts half typed. Kept beside the attempt, so that it goes on there after the page was closed; where nothing
 * was kept, or it does not fit the log, the place is what the log alone says.
 */
import * as v from 'valibot';
import type { Attempt } from '../../attempt/record/attempt.ts';
import { ANSWERS } from '../../attempt/record/attempt.ts';
import { leakageSchema } from '../../bench/operation.ts';
import { VEHICLE_STATES } from '../../bench/standIn.ts';
import { CABLE_CODINGS } from '../../laws/proximity.ts';
import { allowedActions } from '../../scenario/scenario.ts';
import type { Bench } from './bench.ts';
import { standingOf } from './bench.ts';
import { MAIN_POSITIONS, SUPPLY_POSITIONS } from './position.ts';

export const STEPS = [
  'choosing',
  'setting up',
  'predicting',
  'observing',
  'judging',
  'told',
  'harmed',
  'concluding',
  'debrief',
] as const;
export type Step = (typeof STEPS)[number];

const positionSchema = v.object({
  supply: v.picklist(SUPPLY_POSITIONS),
  // Places kept before it could be switched have it on.
  main: v.optional(v.picklist(MAIN_POSITIONS), 'on'),
  cover: v.picklist(['closed', 'open']),
  unit: v.picklist(['connected', 'taken off']),
  plugged: v.boolean(),
  state: v.picklist(VEHICLE_STATES),
  pilot: v.picklist(['sound', 'shorted-to-earth', 'open']),
  diode: v.picklist(['sound', 'shorted']),
  earth: v.picklist(['sound', 'open']),
  coding: v.nullable(v.picklist(CABLE_CODINGS)),
  load: v.pipe(v.number(), v.minValue(0), v.maxValue(80)),
  leakage: v.nullable(leakageSchema),
});
const draftSchema = v.object({
  position: positionSchema,
  wait: v.pipe(v.number(), v.minValue(0), v.maxValue(3600)),
});
/** What is to be set up when the test is locked, and how long then to wait, s. */
export type Draft = Readonly<v.InferOutput<typeof draftSchema>>;

const placeSchema = v.object({
  step: v.picklist(STEPS),
  /** The sheet for stopping the work lies over the step. */
  stopping: v.boolean(),
  test: v.nullable(v.string()),
  draft: draftSchema,
  answers: v.record(v.string(), v.picklist(ANSWERS)),
  figures: v.record(v.string(), v.pipe(v.number(), v.finite())),
  /** Texts and choices half made, by the names that the fields give them (useKept.ts). */
  fields: v.record(v.string(), v.unknown()),
  /** Thinking so far, ms. */
  wall: v.pipe(v.number(), v.minValue(0)),
  /** Last hash of the log that it belongs to. */
  head: v.nullable(v.string()),
});
type KeptPlace = v.InferOutput<typeof placeSchema>;

export interface Place extends Readonly<Omit<KeptPlace, 'head'>> {
  /** Place in the log of the open test's prediction; −1 before its lock. */
  readonly since: number;
}

/** Where it stands, as whoever lists attempts keeps it: the step and, behind a slash, the test. */
export const standsAt = ({ step, test }: Pick<Place, 'step' | 'test'>): string =>
  test === null ? step : `${step}/${test}`;

const headIn = ({ entries }: Attempt): string | null => entries.at(-1)?.hash ?? null;

/** As it is kept. */
export const draftOf = ({ since: _, ...place }: Place, attempt: Attempt): KeptPlace => ({
  ...place,
  head: headIn(attempt),
});

/** What the log alone says of the place. */
export function placeByLog(bench: Bench): Place {
  const { attempt } = bench.run;
  const standing = standingOf(attempt);
  const isOpen = standing.at === 'observing';
  return {
    step: standing.at,
    stopping: false,
    test: isOpen ? standing.test : null,
    since: isOpen ? standing.since : -1,
    draft: { position: bench.position, wait: 0 },
    answers: {},
    figures: {},
    fields: {},
    wall: attempt.entries.at(-1)?.wall ?? 0,
  };
}

/** The steps at which an attempt can be whose log says no more than this. */
const WITHIN: Readonly<Record<ReturnType<typeof standingOf>['at'], readonly Step[]>> = {
  choosing: ['choosing', 'setting up', 'predicting', 'told', 'concluding'],
  observing: ['observing', 'judging', 'harmed'],
  concluding: ['concluding'],
  debrief: ['debrief'],
};

/** The kept place of an attempt that was taken up again. `kept` may be anything. */
export function placeIn(bench: Bench, kept: unknown): Place {
  const byLog = placeByLog(bench);
  const read = v.safeParse(placeSchema, kept);
  if (!read.success) return byLog;
  const { head, ...place } = read.output;
  const { attempt, scenario } = bench.run;
  if (head !== headIn(attempt) || !WITHIN[standingOf(attempt).at].includes(place.step)) return byLog;
  const isOfTest = place.step !== 'choosing' && place.step !== 'concluding' && place.step !== 'debrief';
  if (isOfTest && !allowedActions(scenario).some(({ id }) => id === place.test)) return byLog;
  if (byLog.test !== null && place.test !== byLog.test) return byLog;
  const since =
    place.step === 'told'
      ? attempt.entries.findLastIndex((entry) => entry.kind === 'prediction' && entry.test === place.test)
      : byLog.since;
  if (place.step === 'told' && since < 0) return byLog;
  if (place.step === 'harmed' && !didHarm(bench)) return byLog;
  return { ...place, since };
}

const didHarm = ({ happened }: Bench): boolean =>
  happened.at(-1)?.outcome.unsafe.some(({ critical }) => critical) === true;
