/**
 * How the unit differs from its correct twin at one step: an ordered list, causes first and then what follows from
 * them, each with its place on the opened drawing, both values in words, and a sentence that says why.
 */
import type { Quantity, Reading } from '../bench/reading.ts';
import type { Met, Moment } from './moment.ts';
import { terminalWords, truthText } from './momentWords.ts';
import type { Cause } from './roots.ts';
import type { State } from './states.ts';
import { stateDifferences, stateIf } from './states.ts';

export interface Difference extends State {
  /** What is truly wrong, what stands otherwise because of it, or what an instrument or a person met of it. */
  readonly kind: 'cause' | 'state' | 'reading';
  /** Title of the fault that it belongs to, where it is a cause. */
  readonly fault: string | null;
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

const ofKind = (kind: Difference['kind'], state: State): Difference => ({ ...state, kind, fault: null });

function causeAt(cause: Cause, state: State | undefined, again: boolean): Difference {
  const { place, what, unit, twin, fault } = cause;
  const origin =
    fault === null ? '' : again ? 'It belongs to the same fault.' : `Where: ${fault.where}. ${fault.cause}`;
  return {
    place,
    what,
    unit: state?.unit ?? unit,
    twin: state?.twin ?? twin,
    why: [state?.why ?? '', origin].filter((text) => text !== '').join(' '),
    kind: 'cause',
    fault: fault?.title ?? null,
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
    if (other === undefined || !isFurther(met, other)) return [];
    return stateIf(
      'leads',
      readingName(met.reading),
      [truthText(met.truth), truthText(other.truth)],
      'The same set-up on both, read at the same step: what it meets is other.',
    );
  });

const readingName = ({ quantity, between }: Reading): string =>
  between === undefined
    ? QUANTITY_WORDS[quantity]
    : `${QUANTITY_WORDS[quantity]}, ${terminalWords(between[0])} – ${terminalWords(between[1])}`;

/** Half a hundredth of a second: more than two times can be off together, ms. */
const TIMES_APART = 5;

function isFurther({ reading: x }: Met, { reading: y }: Met): boolean {
  if (x.qualifier !== y.qualifier || x.trippedWhat !== y.trippedWhat) return true;
  const margin = (x.uncertainty ?? 0) + (y.uncertainty ?? 0);
  const apart = (a: number | null | undefined, b: number | null | undefined, by: number) =>
    a == null || b == null ? a !== b : Math.abs(a - b) > by;
  return (
    apart(x.value, y.value, margin) || apart(x.low, y.low, margin) || apart(x.tripMs, y.tripMs, TIMES_APART)
  );
}

function perceivedStates(unit: Moment, twin: Moment): readonly State[] {
  const heard = ({ events }: Moment) =>
    events.length === 0 ? 'nothing' : events.map(({ what }) => what).join(', ');
  const found = (moment: Moment) =>
    moment.found.length === 0 ? 'nothing amiss' : moment.found.map(({ what }) => what).join('; ');
  return [
    ...stateIf('heard', 'heard meanwhile', [heard(unit), heard(twin)], 'What moves can be heard.'),
    ...stateIf(
      'refused',
      'not done',
      [unit.refused ?? 'done', twin.refused ?? 'done'],
      'What the bench allows depends on how things stand there.',
    ),
    ...stateIf('found', 'seen by looking', [found(unit), found(twin)], 'It is there to be seen.'),
  ];
}
