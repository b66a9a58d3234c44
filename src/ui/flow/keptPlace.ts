/** The kept place of an attempt that is taken up again, as far as it is one and fits the log. */
import * as v from 'valibot';
import { ANSWERS } from '../../attempt/record/attempt.ts';
import { leakageSchema } from '../../bench/operationSchema.ts';
import { TESTED_PLACES } from '../../bench/plant.ts';
import { LINE_PLACES, LOOP_CURRENTS, MODES, OPENINGS, WAVEFORMS } from '../../bench/readings/choices.ts';
import { terminal } from '../../bench/readings/schemas.ts';
import { VEHICLE_STATES } from '../../bench/standIn.ts';
import { LINES } from '../../laws/conductors.ts';
import { CABLE_CODINGS } from '../../laws/proximity.ts';
import { allowedActions } from '../../scenario/scenario.ts';
import type { Bench } from './bench.ts';
import { standingOf } from './bench.ts';
import type { MeasurementDraft } from './measurement.ts';
import { INSTRUMENT_CHOICES, MEASURING_FIELD, TEST_VOLTS } from './measurement.ts';
import type { KeptPlace, Place, Step } from './place.ts';
import { headIn, placeByLog, STEPS } from './place.ts';
import { MAIN_POSITIONS, SUPPLY_POSITIONS } from './position.ts';
import { SPREADS } from './spread.ts';

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
const lead = v.union([v.literal(''), terminal]);
const measuringSchema: v.GenericSchema<unknown, MeasurementDraft> = v.object({
  instrument: v.picklist(['', ...INSTRUMENT_CHOICES.map(([name]) => name)]),
  first: v.pipe(v.array(lead), v.minLength(1), v.maxLength(6)),
  second: lead,
  volts: v.picklist(['', ...TEST_VOLTS]),
  current: v.picklist(LOOP_CURRENTS),
  line: v.picklist(LINES),
  waveform: v.picklist(WAVEFORMS),
  mode: v.picklist(MODES),
  milliamps: v.string(),
  seconds: v.string(),
  of: v.picklist(OPENINGS),
  tested: v.picklist(TESTED_PLACES),
  at: v.picklist(LINE_PLACES),
  spread: v.picklist(SPREADS),
}) as v.GenericSchema<unknown, MeasurementDraft>;
const placeSchema: v.GenericSchema<unknown, KeptPlace> = v.object({
  step: v.picklist(STEPS),
  stopping: v.boolean(),
  test: v.nullable(v.string()),
  draft: draftSchema,
  answers: v.record(v.string(), v.picklist(ANSWERS)),
  figures: v.record(v.string(), v.pipe(v.number(), v.finite())),
  fields: v.record(v.string(), v.unknown()),
  wall: v.pipe(v.number(), v.minValue(0)),
  head: v.nullable(v.string()),
});

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
  return { ...place, fields: fieldsThatFit(place.fields), since };
}

/** What no instrument can be set to is forgotten: a bench measures by this without another look. */
function fieldsThatFit(fields: KeptPlace['fields']): KeptPlace['fields'] {
  const { [MEASURING_FIELD]: measuring, ...others } = fields;
  return v.is(measuringSchema, measuring) ? fields : others;
}

const didHarm = ({ happened }: Bench): boolean =>
  happened.at(-1)?.outcome.unsafe.some(({ critical }) => critical) === true;
