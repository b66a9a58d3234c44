/**
 * How the unit differs from its correct twin at one step: an ordered list, causes first and then what follows from
 * them, each with its place on the opened drawing, both values, and why, all by ids (value.ts).
 */
import { pairOf } from '../../bench/reading.ts';
import { BY_EAR } from '../../bench/world.ts';
import { alikeReadings } from '../marks/telling.ts';
import type { Moment } from './moment.ts';
import type { Cause } from './roots.ts';
import type { State } from './states.ts';
import { stateDifferences, stateIf } from './states.ts';
import type { Value } from './value.ts';
import { metValue } from './value.ts';

export interface Difference extends State {
  /** What is truly wrong, what stands otherwise because of it, or what an instrument or a person met of it. */
  readonly kind: 'cause' | 'state' | 'reading';
  /** The fault that it belongs to, by its id, where it is a cause. */
  readonly fault: string | null;
  /** A difference before it belongs to the same fault. */
  readonly again: boolean;
}

export function differences(unit: Moment, twin: Moment, causes: readonly Cause[]): readonly Difference[] {
  const states = stateDifferences(unit, twin);
  // A pole that stands where it should not is one thing with what has become of it.
  const merged = (state: State) =>
    state.place.startsWith('pole.') && causes.some(({ place }) => place === state.place);
  return [
    ...causes.map((cause, i) =>
      causeAt(
        cause,
        states.find((state) => merged(state) && state.place === cause.place),
        causes.slice(0, i).some(({ fault }) => fault !== null && fault === cause.fault),
      ),
    ),
    ...states.filter((state) => !merged(state)).map((state) => ofKind('state', state)),
    ...[...readingStates(unit, twin), ...perceivedStates(unit, twin)].map((state) =>
      ofKind('reading', state),
    ),
  ];
}

const ofKind = (kind: Difference['kind'], state: State): Difference => ({
  ...state,
  kind,
  fault: null,
  again: false,
});

function causeAt(cause: Cause, state: State | undefined, again: boolean): Difference {
  const { place, what, unit, twin, fault } = cause;
  return {
    place,
    what,
    unit: state?.unit ?? unit,
    twin: state?.twin ?? twin,
    why: state?.why ?? null,
    kind: 'cause',
    fault: fault?.id ?? null,
    again,
  };
}

/** Readings further apart than both instruments' uncertainty, by their true values. */
const readingStates = (unit: Moment, twin: Moment): readonly State[] =>
  unit.met.flatMap((met, i) => {
    const other = twin.met[i];
    if (other === undefined || alikeReadings(met.reading, other.reading)) return [];
    return stateIf(
      'leads',
      { id: 'reading', quantity: met.reading.quantity, between: pairOf(met.reading) ?? null },
      [metValue(met.truth), metValue(other.truth)],
      'same-set-up',
    );
  });

function perceivedStates(unit: Moment, twin: Moment): readonly State[] {
  const sameSounds =
    unit.heard.length === twin.heard.length &&
    unit.heard.every(({ what, after }, i) => {
      const other = twin.heard[i];
      return other?.what === what && Math.abs(other.after - after) <= BY_EAR;
    });
  return [
    ...(sameSounds
      ? []
      : stateIf(
          'heard',
          'heard',
          [
            { id: 'sounds', heard: unit.heard },
            { id: 'sounds', heard: twin.heard },
          ],
          'moves-are-heard',
        )),
    ...stateIf('refused', 'not-done', [doneValue(unit), doneValue(twin)], 'bench-allows'),
    ...stateIf('found', 'seen-by-looking', [foundValue(unit), foundValue(twin)], 'there-to-be-seen'),
  ];
}

const doneValue = ({ refused }: Moment): Value =>
  refused === null ? { id: 'done' } : { id: 'refused', refusal: refused };

const foundValue = ({ found }: Moment): Value =>
  found.length === 0 ? { id: 'nothing-amiss' } : { id: 'found', found };
