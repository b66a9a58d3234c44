/** What questions on insulation, on what trips and on how soon a unit lets go show. */
import type { Values } from '../../verification/testAction.ts';
import CAUSES from './causes.json' with { type: 'json' };
import type { Cause, Shows } from './state.ts';
import { figureOf, idOf, LOCKED_OFF } from './state.ts';

const testOfInsulation: Shows = ({ values }) => {
  const what = idOf(values, 'what');
  // No circuit of the bench is SELV.
  return what === 'selv'
    ? null
    : { test: what === 'circuit' ? 'insulation-circuit' : 'insulation-unit', on: 'single-tns' };
};

const atTheBoard = (values: Values, milliamps: number) => ({
  residualDevice: {
    type: 'A' as const,
    rated: (milliamps / 1000) as 0.03,
    delay: idOf(values, 'delay') === 'S' ? ('S' as const) : ('general' as const),
    poles: 2 as const,
  },
});

/** A unit with a residual device of this rating. */
const ratedAt = (milliamps: number) => ({
  unit: { residual: { type: 'A', rated: milliamps / 1000, by: 'contactor', direct: 'protective' } },
});

const LETS_GO: Readonly<Record<string, string>> = {
  'stops-asking': 'c-to-b',
  unplugged: 'unplug',
  'earth-lost': 'pe-open',
  'pilot-to-earth': 'pilot-short',
  asks: 'state-c',
  'unlock-after-unplugging': 'release',
};

const STUCK: Readonly<Record<string, readonly Cause[]>> = {
  none: [],
  line: [{ fault: CAUSES.linePoleStuck }],
  both: [{ fault: CAUSES.allPolesStuck }],
};

const leak = (fault: string, megohms: number): readonly Cause[] => [
  { fault, ohms: Math.round(megohms * 1e6) },
];

export const protection: Readonly<Record<string, Shows>> = {
  'insulation-volts': testOfInsulation,
  'insulation-least': testOfInsulation,
  'residual-time': ({ values }) => {
    const isFive = figureOf(values, 'multiple') === 5;
    return idOf(values, 'delay') === 'S'
      ? {
          test: 'residual-origin',
          on: 'single-tns',
          circuit: atTheBoard(values, figureOf(values, 'milliamps')),
        }
      : { test: isFive ? 'residual-five' : 'residual-rated', on: 'single-tns' };
  },
  'rising-alternating': (question) => {
    const { values } = question;
    const rated = figureOf(values, 'rated');
    const amps = figureOf(values, 'milliamps') / 1000;
    const answer = question.way === 'choice' ? question.answer : '';
    const test = 'residual-ramp';
    if (answer === 'in-its-band') return { test, on: 'single-tns', ...ratedAt(rated) };
    const fault = answer === 'too-early' ? CAUSES.residualEarly : CAUSES.residualLate;
    // The catalogue's devices that trip at a wrong current are of 30 mA.
    const isInCatalogue = rated === 30 && (answer === 'too-late' || amps <= EARLIEST.greatest);
    return isInCatalogue ? { test, on: 'single-tns', causes: [{ fault, amps }] } : null;
  },
  'rising-direct': (question) => {
    const amps = figureOf(question.values, 'milliamps') / 1000;
    const answer = question.way === 'choice' ? question.answer : '';
    const test = 'dc-ramp';
    if (answer === 'in-its-band') return { test, on: 'single-tns' };
    const [fault, isInCatalogue] =
      answer === 'too-early'
        ? [CAUSES.directEarly, amps <= DIRECT.early]
        : [CAUSES.directLate, amps >= DIRECT.late];
    return isInCatalogue ? { test, on: 'single-tns', causes: [{ fault, amps }] } : null;
  },
  'half-wave': (question) => {
    const answer = question.way === 'choice' ? question.answer : '';
    if (answer === 'too-early') return null;
    const causes = idOf(question.values, 'type') === 'AC' ? [{ fault: CAUSES.residualTypeAC }] : [];
    return { test: 'half-wave', on: 'single-tns', causes };
  },
  'at-half-the-rating': ({ values }) => {
    const rated = figureOf(values, 'rated');
    const isHalf = figureOf(values, 'milliamps') <= rated / 2;
    return { test: isHalf ? 'residual-half' : 'residual-rated', on: 'single-tns', ...ratedAt(rated) };
  },
  'direct-time': () => ({ test: 'dc-step', on: 'single-tns' }),
  'who-trips': ({ values }) => ({
    test: 'residual-five',
    on: 'single-tns',
    circuit: atTheBoard(values, figureOf(values, 'rated')),
  }),
  'how-soon': ({ values }) => {
    const what = idOf(values, 'what');
    return {
      test: LETS_GO[what] ?? 'c-to-b',
      on: what === 'unlock-after-unplugging' ? 'three-socket' : 'single-tns',
    };
  },
  'which-pole': (question) => {
    const answer = question.way === 'choice' ? question.answer : 'none';
    const volts = figureOf(question.values, 'lineEarth');
    return {
      test: 'state-a',
      on: 'single-tns',
      ...(volts === 0 ? {} : { site: { voltage: volts } }),
      causes: STUCK[answer] ?? [],
    };
  },
  'one-pair': () => ({ test: 'prove-dead', on: 'single-tns', left: LOCKED_OFF }),
  'order-of-proving': () => ({ test: 'isolate', on: 'single-tns', left: [] }),
  'low-line-neutral': (question) => {
    const { values } = question;
    const answer = question.way === 'choice' ? question.answer : '';
    return {
      test: values.connected === true ? 'insulation-unit' : 'insulation-circuit',
      on: 'single-tns',
      causes:
        answer === 'cable'
          ? leak(CAUSES.leakLineNeutral, figureOf(values, 'lineNeutral'))
          : answer === 'to-earth'
            ? leak(CAUSES.leakLineProtective, figureOf(values, 'toEarth'))
            : [],
    };
  },
};

/** What the catalogue's devices trip at at most that trip early, and their like for smooth d.c., A. */
const EARLIEST = { greatest: 0.0115 } as const;
const DIRECT = { early: 0.0022, late: 0.007 } as const;
