/** What questions on the pilot show. */
import { dutyForCurrent } from '../../laws/pilotDuty.ts';
import { PILOT_SOURCE } from '../../laws/pilotLevels.ts';
import { CABLE_CODINGS, codingResistance } from '../../laws/proximity.ts';
import type { Amps, Ohms } from '../../laws/quantities.ts';
import { isWithin } from '../../laws/quantities.ts';
import type { Question } from '../question.ts';
import CAUSES from './causes.json' with { type: 'json' };
import type { ShownState, Shows } from './state.ts';
import { figureOf, idOf, inState, socketFor } from './state.ts';

const TEST_OF_STATE: Readonly<Record<string, string>> = {
  A: 'state-a',
  B: 'state-b',
  C: 'state-c',
  D: 'state-d',
};

const inItsState: Shows = ({ values }) => {
  const state = idOf(values, 'state');
  return { test: TEST_OF_STATE[state] ?? 'state-b', on: 'single-tns', left: inState(state) };
};

const BREAKERS = [16, 20, 32, 40, 63] as const;

/** A tethered unit that is set to offer so much, behind a breaker that carries it, where one does. */
const offering = (amps: Amps, share?: { readonly fault: string; readonly share: number }): ShownState => ({
  test: 'state-b',
  on: 'single-tns',
  circuit: {
    lineArea: 16,
    protectiveArea: 16,
    breaker: {
      type: 'B',
      rating: BREAKERS.find((rating) => rating >= amps) ?? 63,
      breakingCapacity: 6000,
      poles: 2,
    },
  },
  unit: { ratedCurrent: 80, setCurrent: amps, cable: { length: 5, area: 16, coding: 63 } },
  causes: share === undefined ? [] : [share],
  left: inState('B'),
});

const offersItsAmps: Shows = ({ values }) => offering(figureOf(values, 'amps'));

const answerOf = (question: Question): number => (question.way === 'figure' ? question.answer : Number.NaN);

/** Below the first branch and above the last no sound unit goes: one whose offer is off does. */
const OFF = { low: 8, high: 70 } as const;

const dutyOff: Shows = ({ values }) => {
  const duty = figureOf(values, 'percent') / 100;
  const isLow = duty < 0.5;
  const from = isLow ? OFF.low : OFF.high;
  const share = Number(Math.abs(dutyForCurrent(from) - duty).toFixed(4));
  return offering(from, { fault: isLow ? CAUSES.offersTooLittle : CAUSES.offersTooMuch, share });
};

/** What a dirty contact may add, Ω: as the catalogue has it. */
const CONTACT = { least: 120, greatest: 400 } as const;

/** A plug in a socket-outlet, coded so and with so much in its contact; null where the bench has no such contact. */
function plugOf(coding: number | null, contact: Ohms): ShownState | null {
  if (contact !== 0 && !isWithin(CONTACT, contact)) return null;
  const plug: ShownState = {
    test: 'coding-sizes',
    on: 'single-tns',
    unit: socketFor(coding ?? 32),
    causes: contact === 0 ? [] : [{ fault: CAUSES.contactOfCodingDirty, ohms: contact }],
  };
  const code = CABLE_CODINGS.find((one) => one === coding) ?? null;
  return {
    ...plug,
    left: [
      { op: 'vehicle', plugged: true, state: 'B', coding: code },
      { op: 'wait', seconds: 4 },
    ],
  };
}

const plugThatReads: Shows = ({ values }) => {
  const ohms = figureOf(values, 'ohms');
  const plugs = CABLE_CODINGS.map((coding) => plugOf(coding, ohms - codingResistance(coding)));
  return plugs.find((plug) => plug !== null) ?? null;
};

export const offer: Readonly<Record<string, Shows>> = {
  'state-of-level': inItsState,
  'level-of-state': inItsState,
  'low-half': ({ values }) => ({
    test: idOf(values, 'diode') === 'shorted' ? 'diode' : (TEST_OF_STATE[idOf(values, 'state')] ?? 'state-b'),
    on: 'single-tns',
    left: [
      { op: 'vehicle', plugged: true, state: 'B' },
      { op: 'wait', seconds: 4 },
      {
        op: 'vehicle',
        state: idOf(values, 'state') === 'C' ? 'C' : 'B',
        diode: idOf(values, 'diode') === 'shorted' ? 'shorted' : 'sound',
      },
      { op: 'wait', seconds: 3 },
    ],
  }),
  // No unit of the bench has a source that is a little off.
  'source-resistance': (question) =>
    isWithin(PILOT_SOURCE.resistanceRange, answerOf(question))
      ? { test: 'state-b', on: 'single-tns', left: inState('B') }
      : null,
  'duty-of-current': offersItsAmps,
  'high-time': offersItsAmps,
  'current-of-duty': (question) => offering(answerOf(question)),
  'current-of-times': (question) => offering(answerOf(question)),
  'duty-band': dutyOff,
  'least-of-limits': ({ values }) => {
    const unit = figureOf(values, 'unit');
    const cable = figureOf(values, 'cable');
    return {
      test: 'state-b',
      on: figureOf(values, 'phases') === 3 ? 'three-socket' : 'single-tns',
      unit: {
        ...socketFor(cable > 32 ? 63 : cable),
        ratedCurrent: unit,
        setCurrent: Math.min(unit, figureOf(values, 'setting')),
        loadLimit: figureOf(values, 'limit'),
      },
      left: inState('B'),
    };
  },
  'coding-of-ohms': plugThatReads,
  'coding-with-contact': ({ values }) => plugOf(figureOf(values, 'coding'), figureOf(values, 'contact')),
  'uncoded-plug': ({ values }) => {
    const read = idOf(values, 'read');
    const coding = CABLE_CODINGS.find((one) => String(codingResistance(one)) === read) ?? null;
    const plug = read === 'none' || coding !== null ? plugOf(coding, 0) : null;
    return plug === null
      ? null
      : { ...plug, unit: { ...plug.unit, ratedCurrent: figureOf(values, 'rated') } };
  },
};
