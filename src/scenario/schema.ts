/**
 * The scenario file, as a schema: names and shapes are the contract's. What one field alone cannot tell (a terminal
 * that a site lacks, a setting above a rating) is in checks.ts.
 */
import * as v from 'valibot';
import { operationSchema } from '../bench/operationSchema.ts';
import { CONDUCTOR_AREAS } from '../laws/conductor.ts';
import { LINES } from '../laws/conductors.ts';
import { AMBIENTS, CABLES, METHODS, MOST_GROUPED } from '../laws/currentCarrying.ts';
import { BREAKER_TYPES } from '../laws/overcurrent.ts';
import { CABLE_CODINGS } from '../laws/proximity.ts';
import { DELAYS, DEVICE_TYPES } from '../laws/residualLimits.ts';
import { EARTHINGS, FAULT_PROTECTIONS } from '../site/site.ts';
import {
  CLEARINGS,
  DIODE_CHECKS,
  HOURS_ENDS,
  LATCH_REASONS,
  LOST_LINES,
  OPEN_PEN_KINDS,
  OVER_CODE,
  PERMISSIONS,
  SCHEDULES,
  UNPOWERED_POLES,
} from '../unit/design.ts';
import { RULE_SET_NAMES } from '../verification/rules/ruleSet.ts';
import { AIMS } from './aims.ts';
import type { PartName } from './tasks.ts';
import { PARTS, PARTS_OF_FIND, TASKS } from './tasks.ts';
import { BREAKER, CIRCUIT, FILE, HANDOVER, MARKING, NEXT_POINT, SITE, UNIT } from './usual.ts';

/** Longest list in the file, and in an operation. */
export const LONGEST_LIST = 100;

const number = (least: number, greatest: number) =>
  v.pipe(v.number(), v.minValue(least), v.maxValue(greatest));
const text = (longest: number) => v.pipe(v.string(), v.minLength(1), v.maxLength(longest));
const nullable = <S extends v.GenericSchema>(schema: S) => v.optional(v.nullable(schema), null);

const area = v.picklist(CONDUCTOR_AREAS as number[], 'a conductor area of IEC 60228, mm²');
const ratings = [6, 10, 16, 20, 25, 32, 40, 50, 63] as const;
export const RESIDUAL_RATINGS = [0.01, 0.03, 0.1, 0.3, 0.5] as const;
const load = v.strictObject({ line: v.picklist(LINES), power: number(1, 30_000) });

const site = v.strictObject({
  phases: v.picklist([1, 3]),
  earthing: v.picklist(EARTHINGS),
  voltage: number(200, 265),
  loopImpedance: v.optional(number(0.01, 50)),
  neutralImpedance: v.optional(number(0.01, 50)),
  electrodeResistance: nullable(number(0.5, 5000)),
  sourceElectrodeResistance: v.optional(number(0.01, 50), SITE.sourceElectrodeResistance),
  metEarthResistance: nullable(number(0.1, 10_000)),
  house: v.optional(v.strictObject({ metEarthResistance: nullable(number(0.1, 10_000)) })),
  circuit: v.strictObject({
    length: number(0.5, 500),
    lineArea: area,
    protectiveArea: area,
    method: v.optional(v.picklist(METHODS), CIRCUIT.method),
    cable: v.optional(v.picklist(CABLES)),
    ambient: v.optional(v.picklist(AMBIENTS), CIRCUIT.ambient),
    grouped: v.optional(
      v.pipe(number(1, MOST_GROUPED), v.integer('a whole number is expected')),
      CIRCUIT.grouped,
    ),
    insulated: v.optional(number(0, 1000), CIRCUIT.insulated),
    breaker: v.strictObject({
      type: v.picklist(BREAKER_TYPES),
      rating: v.picklist(ratings),
      breakingCapacity: v.optional(number(1000, 100_000), BREAKER.breakingCapacity),
      poles: v.optional(v.picklist([1, 2, 3, 4])),
    }),
    conditionalRating: nullable(number(1000, 100_000)),
    residualDevice: nullable(
      v.strictObject({
        type: v.picklist(DEVICE_TYPES),
        rated: v.picklist(RESIDUAL_RATINGS),
        delay: v.picklist(DELAYS),
        poles: v.picklist([1, 2, 3, 4]),
      }),
    ),
    points: v.optional(v.pipe(number(1, 20), v.integer('a whole number is expected')), CIRCUIT.points),
    faultProtection: v.optional(v.picklist(FAULT_PROTECTIONS), CIRCUIT.faultProtection),
    parallelEarth: nullable(number(0.001, 1000)),
    /** Between any two cores, F/m. */
    capacitance: v.optional(number(1e-12, 1e-9)),
  }),
  service: nullable(v.strictObject({ rating: number(20, 400), demand: number(0, 400) })),
  /** Another charging point on the same service: the most that it takes, and what it draws as it is found, A per line. */
  nextPoint: v.optional(
    v.strictObject({ ratedCurrent: number(6, 80), draws: v.optional(number(0, 80), NEXT_POINT.draws) }),
  ),
  otherLoads: v.optional(v.pipe(v.array(load), v.maxLength(20)), SITE.otherLoads),
  neighbours: v.optional(v.pipe(v.array(load), v.maxLength(20)), SITE.neighbours),
});

const cable = v.strictObject({ length: number(0.5, 50), area, coding: v.picklist(CABLE_CODINGS) });

/** `restored` is another word for `self`: it clears when its cause is gone. */
const clearing = v.picklist([...CLEARINGS, 'restored']);

const unitCommon = {
  ratedCurrent: number(6, 80),
  setCurrent: v.optional(number(6, 80)),
  residual: v.strictObject({
    type: v.nullable(v.picklist(DEVICE_TYPES)),
    rated: v.optional(v.picklist(RESIDUAL_RATINGS)),
    by: v.optional(v.picklist(['breaker', 'contactor'])),
    direct: v.nullable(v.picklist(['protective', 'monitoring'])),
  }),
  openPen: v.optional(v.picklist(OPEN_PEN_KINDS), UNIT.openPen),
  openPenRidesOut: v.optional(v.boolean(), UNIT.openPenRidesOut),
  openPenUnpowered: v.optional(v.picklist(UNPOWERED_POLES), UNIT.openPenUnpowered),
  surgeArrester: v.optional(v.boolean(), UNIT.surgeArrester),
  ventilation: v.optional(v.boolean(), UNIT.ventilation),
  insulationTestVoltageMax: v.optional(v.picklist([50, 100, 250, 500]), UNIT.insulationTestVoltageMax),
  startUp: v.optional(number(0.1, 50), UNIT.startUp),
  startDelay: v.optional(number(0, 1800), UNIT.startDelay),
  permission: v.optional(v.picklist(PERMISSIONS), UNIT.permission),
  authoriseBefore: v.optional(v.boolean(), UNIT.authoriseBefore),
  loadLimit: nullable(number(0, 80)),
  serviceLimit: nullable(number(10, 200)),
  leastVoltage: nullable(number(150, 230)),
  schedule: nullable(v.picklist(SCHEDULES)),
  hoursEnd: v.optional(v.picklist(HOURS_ENDS), UNIT.hoursEnd),
  /** What a socket-outlet lets a vehicle draw above its cable's coding, as a share, and for how long, s. */
  overCode: v.optional(
    v.strictObject({
      margin: v.optional(number(0.1, 0.5), OVER_CODE.margin),
      seconds: v.optional(number(0.1, 60), OVER_CODE.seconds),
    }),
    UNIT.overCode,
  ),
  holdInB: v.optional(v.boolean(), UNIT.holdInB),
  diodeCheck: v.optional(v.picklist(DIODE_CHECKS), UNIT.diodeCheck),
  poleBleed: nullable(number(1000, 10_000_000)),
  lostLine: v.optional(v.picklist(LOST_LINES), UNIT.lostLine),
  clearsBy: v.optional(
    v.strictObject(
      Object.fromEntries(LATCH_REASONS.map((reason) => [reason, v.optional(clearing)])) as Record<
        (typeof LATCH_REASONS)[number],
        v.OptionalSchema<typeof clearing, undefined>
      >,
    ),
    UNIT.clearsBy,
  ),
};

const unit = v.variant('outlet', [
  v.strictObject({ outlet: v.literal('tethered'), cable, ...unitCommon }),
  v.strictObject({ outlet: v.literal('socket'), customerCable: cable, ...unitCommon }),
]);

const pointsOf = (part: PartName) =>
  v.pipe(
    number(0, 100),
    v.description(`${PARTS[part]}, or ${PARTS_OF_FIND[part]} where the task is to find, if it is left out`),
  );
const weights = v.strictObject(
  Object.fromEntries(
    (Object.keys(PARTS) as PartName[]).map((part) => [part, v.optional(pointsOf(part))]),
  ) as Record<PartName, v.OptionalSchema<ReturnType<typeof pointsOf>, undefined>>,
);

const marking = v.strictObject({
  weights: v.optional(weights, MARKING.weights),
  pass: v.optional(number(0, 100), MARKING.pass),
  /** A gate set aside by the tutor, with the reason: both are shown. */
  setAside: v.optional(
    v.pipe(v.array(v.strictObject({ gate: text(60), reason: text(300) })), v.maxLength(20)),
    MARKING.setAside,
  ),
});

/** A limit, or a figure that a line states, which the tutor sets in place of the standard's, with where it is from and why: all is shown and kept with the mark. */
const ownLimit = v.strictObject({
  limit: v.pipe(v.string(), v.regex(/^[^/]+\/[^/]+$/, 'a test and its limit are expected, as "loop/loop"')),
  value: number(-1000, 1e12),
  source: text(200),
  why: text(300),
});

/**
 * What was done before the trainee came, signed, with its sheet: whole tests as a faultless trainee does them, and the
 * operations after which the bench is as the trainee finds it.
 */
const handover = v.strictObject({
  by: text(120),
  /** Test actions, or every one that applies here and is not among `allowed`. */
  done: v.union([
    v.literal('others'),
    v.pipe(v.array(v.string()), v.minLength(1), v.maxLength(LONGEST_LIST)),
  ]),
  left: v.optional(v.pipe(v.array(operationSchema), v.maxLength(20)), HANDOVER.left),
});
export type Handover = v.InferOutput<typeof handover>;

export const scenarioSchema = v.strictObject({
  $schema: v.optional(v.string()),
  format: v.literal(1),
  id: v.pipe(
    v.string(),
    v.regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'small letters, digits and single hyphens are expected'),
    v.maxLength(60),
  ),
  title: text(120),
  brief: text(2000),
  rules: v.picklist(RULE_SET_NAMES),
  clock: v.pipe(
    v.string(),
    v.regex(/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}$/, 'a date and time such as 2026-03-10T10:00 is expected'),
  ),
  task: v.optional(v.picklist(TASKS), FILE.task),
  /** Which aim it is, of a task of one aim. */
  aim: nullable(v.picklist(AIMS.map(({ id }) => id))),
  /** What a customer or a colleague says, of a task to find what is behind it. */
  symptom: nullable(text(300)),
  site,
  unit,
  faults: v.pipe(
    v.array(
      v.pipe(v.objectWithRest({ fault: v.string() }, v.union([v.number(), v.string()])), v.maxEntries(20)),
    ),
    v.maxLength(10),
  ),
  /** Causes that count in full beside what is wrong: the tutor has seen that they read the same. */
  accept: v.optional(v.pipe(v.array(v.string()), v.maxLength(20)), FILE.accept),
  allowed: v.union([
    v.literal('all'),
    v.pipe(
      v.array(v.string()),
      v.minLength(1, 'at least one test action is expected'),
      v.maxLength(LONGEST_LIST),
    ),
  ]),
  support: v.picklist(['guided', 'practice', 'assessment']),
  /** Lines and figures asked of a test, by their ids; of a test that is not named, all. */
  lines: v.optional(
    v.pipe(
      v.record(v.string(), v.pipe(v.array(v.string()), v.minLength(1), v.maxLength(30))),
      v.maxEntries(100),
    ),
    FILE.lines,
  ),
  own: v.optional(v.pipe(v.array(ownLimit), v.maxLength(20)), FILE.own),
  marking: v.optional(marking, FILE.marking),
  handover: nullable(handover),
  seed: v.pipe(v.number(), v.integer('a whole number is expected'), v.minValue(0), v.maxValue(2_147_483_647)),
});

export type ScenarioFile = v.InferOutput<typeof scenarioSchema>;
/** As written: what is usual may be left out. */
export type ScenarioInput = v.InferInput<typeof scenarioSchema>;
