/**
 * How the unit differs from its correct twin at one step: an ordered list, causes first and then what follows from
 * them, each with its place on the opened drawing, both values in words, and a sentence that says why.
 */
import type { Quantity, Reading } from '../bench/reading.ts';
import { secondsText } from './inWords.ts';
import type { Moment } from './moment.ts';
import { terminalWords, truthText } from './momentWords.ts';
import type { Cause } from './roots.ts';
import type { State } from './states.ts';
import { stateDifferences, stateIf } from './states.ts';
import { alikeReadings, BY_EAR } from './telling.ts';

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
    why: state?.why ?? '',
    kind: 'cause',
    fault: fault?.id ?? null,
    again,
  };
}

const QUANTITY_WORDS: Readonly<Record<Quantity, string>> = {
  continuity: 'continuity',
  insulation: 'insulation',
  voltage: 'voltage',
  pilot: 'pilot',
  coding: 'coding',
  loop: 'loop',
  residual: 'residual current at which it trips',
  'opening-time': 'time until the outlet is dead',
  electrode: 'earth electrode',
  'phase-sequence': 'order of the lines',
};

/** Readings further apart than both instruments' uncertainty, by their true values. */
const readingStates = (unit: Moment, twin: Moment): readonly State[] =>
  unit.met.flatMap((met, i) => {
    const other = twin.met[i];
    if (other === undefined || alikeReadings(met.reading, other.reading)) return [];
    return stateIf(
      'leads',
      readingName(met.reading),
      [truthText(met.truth), truthText(other.truth)],
      'The same set-up on both, read at the same step: what it meets is other.',
    );
  });

export const readingName = ({ quantity, between }: Reading): string =>
  between === undefined
    ? QUANTITY_WORDS[quantity]
    : `${QUANTITY_WORDS[quantity]}, ${terminalWords(between[0])} – ${terminalWords(between[1])}`;

function perceivedStates(unit: Moment, twin: Moment): readonly State[] {
  const sameSounds =
    unit.heard.length === twin.heard.length &&
    unit.heard.every(({ what, after }, i) => {
      const other = twin.heard[i];
      return other?.what === what && Math.abs(other.after - after) <= BY_EAR;
    });
  const found = (moment: Moment) =>
    moment.found.length === 0 ? 'nothing amiss' : moment.found.map(({ what }) => what).join('; ');
  return [
    ...(sameSounds
      ? []
      : stateIf('heard', 'heard meanwhile', [soundsOf(unit), soundsOf(twin)], 'What moves can be heard.')),
    ...stateIf(
      'refused',
      'not done',
      [unit.refused ?? 'done', twin.refused ?? 'done'],
      'What the bench allows depends on how things stand there.',
    ),
    ...stateIf('found', 'seen by looking', [found(unit), found(twin)], 'It is there to be seen.'),
  ];
}

const soundsOf = ({ heard }: Moment): string =>
  heard.length === 0
    ? 'nothing'
    : heard.map(({ what, after }) => `${what} after ${secondsText(after)}`).join(', ');
