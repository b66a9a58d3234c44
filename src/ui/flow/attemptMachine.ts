/**
 * The flow of an attempt: choose a test, set up, predict, lock, measure, judge, and so on, one step a screen, until it is stopped and
 * concluded. The lock is the one moment when the prediction is noted and the set-up acts. Components draw this and
 * send events; what follows from an operation is the bench's business.
 */
import type { ActorRefFrom, SnapshotFrom, StateValue } from 'xstate';
import { assign, setup } from 'xstate';
import type { Answer, Sure } from '../../attempt/record/attempt.ts';
import { SURENESS } from '../../attempt/record/attempt.ts';
import { givenPrediction } from '../../attempt/record/prediction.ts';
import { rungOf } from '../../attempt/record/rung.ts';
import type { OperationInput } from '../../bench/operation.ts';
import type { UnsafeAct } from '../../bench/unsafe.ts';
import { actionNamed } from '../../verification/actions.ts';
import type { Bench, Note } from './bench.ts';
import { done, hasStopped, noted, standingOf } from './bench.ts';
import type { Draft, Place, Step } from './place.ts';
import { placeByLog, STEPS } from './place.ts';
import { operationsBetween } from './position.ts';

export type { Draft };

interface Harm {
  readonly acts: readonly UnsafeAct[];
  /** Place in `happened` of the operation that did it. */
  readonly happened: number;
}

/** A wait that lasts: it is carried out when its time is over or skipped, and not before. */
export interface Wait {
  /** Of the bench. */
  readonly seconds: number;
  /** How long a second of the bench is waited, s. */
  readonly pace: number;
  /** What comes after it in the same row of acts. */
  readonly after: readonly OperationInput[];
}

interface Context {
  readonly bench: Bench;
  readonly test: string | null;
  readonly draft: Draft;
  readonly answers: Readonly<Record<string, Answer>>;
  readonly figures: Readonly<Record<string, number>>;
  /** Place in the log of the open test's prediction. */
  readonly since: number;
  readonly harm: Harm | null;
  readonly wait: Wait | null;
  /** Seconds of the bench that are left of the wait, rounded up. */
  readonly left: number;
  /** What the bench could not work out, in words; the log is as it was before. */
  readonly failed: string | null;
}

/** How sure of single lines, by their ids, where that is not the sureness of the whole. */
export type LessSure = Readonly<Record<string, Sure>>;

type Event =
  | { type: 'choose'; test: string }
  | { type: 'draft'; draft: Draft }
  | { type: 'leave' }
  /** From what is set up to what is said of it. */
  | { type: 'predict' }
  /** From what is read to how it is judged. */
  | { type: 'judge' }
  /** One step back: to what was set up, to what was read, or away from what is judged once more. */
  | { type: 'back' }
  /** Null takes an answer back. */
  | { type: 'answer'; id: string; answer: Answer | null }
  | { type: 'figure'; id: string; value: number | null }
  /** How sure, but for lines that were given, and of which of them less. `pace`: the wait at the end of the set-up lasts so, by a `Wait`. */
  | { type: 'lock'; sure: Sure | null; lessSure?: LessSure; wall: number; pace?: number }
  | { type: 'do'; operation: OperationInput; wall: number; pace?: number }
  /** Several acts as one press; what the bench refuses ends the row. */
  | { type: 'do in a row'; operations: readonly OperationInput[]; wall: number; pace?: number }
  /** So many seconds of the bench are left of the wait, rounded up. */
  | { type: 'pass'; left: number }
  /** The wait is over or skipped: it is carried out, and what comes after it. `pace`: of a wait among that. */
  | { type: 'waited'; wall: number; pace?: number }
  | { type: 'put right' }
  | { type: 'note'; note: Note; wall: number }
  /** Once more, as long as nothing was told: the last judgement counts. */
  | { type: 'judge again' }
  | { type: 'judged'; note: Note; wall: number }
  | { type: 'next' }
  | { type: 'make safe'; wall: number }
  | { type: 'stop' }
  | { type: 'stopped'; why: string; wall: number }
  | { type: 'go on' }
  | { type: 'conclude' }
  | { type: 'concluded'; notes: readonly Note[]; wall: number };

const rungOn = ({ run }: Bench) => rungOf(run.scenario.support, run.attempt);
const isPractice = (bench: Bench): boolean => rungOn(bench) < 4;

/** Operations one after the other; in practice the first critical act ends the row. */
function performed(
  context: Context,
  bench: Bench,
  inputs: readonly OperationInput[],
  wall: number,
  endsAtRefusal = false,
): Partial<Context> {
  let now = bench;
  try {
    for (const input of inputs) {
      now = done(now, context.test, input, wall);
      const acts = now.happened.at(-1)?.outcome.unsafe.filter(({ critical }) => critical) ?? [];
      if (acts.length > 0 && isPractice(now))
        return { bench: now, harm: { acts, happened: now.happened.length - 1 }, failed: null };
      if (endsAtRefusal && lastRefused(now)) break;
    }
    return { bench: now, failed: null };
  } catch (error) {
    return { bench: now, failed: error instanceof Error ? error.message : String(error) };
  }
}

/** Acts one after the other, up to the first wait that lasts; after a refusal or harm nobody waits. */
function acted(
  context: Context,
  bench: Bench,
  inputs: readonly OperationInput[],
  { wall, pace }: { readonly wall: number; readonly pace?: number },
  endsAtRefusal = false,
): Partial<Context> {
  const at = pace === undefined ? -1 : inputs.findIndex(({ op }) => op === 'wait');
  const first = inputs[at];
  if (pace === undefined || first?.op !== 'wait')
    return { wait: null, ...performed(context, bench, inputs, wall, endsAtRefusal) };
  const { seconds } = first;
  const before = inputs.slice(0, at);
  const after = performed(context, bench, before, wall, endsAtRefusal);
  const isRefused = endsAtRefusal && before.length > 0 && lastRefused(after.bench ?? bench);
  if (after.harm !== undefined || after.failed !== null || isRefused) return { wait: null, ...after };
  return { ...after, wait: { seconds, pace, after: inputs.slice(at + 1) }, left: Math.ceil(seconds) };
}

const lastRefused = ({ happened }: Bench): boolean => happened.at(-1)?.outcome.refused != null;

/** What was answered; on the first rung, what the page has filled in. */
function predictionOf(
  { bench, answers, figures }: Context,
  test: string,
  sure: Sure | null,
  lessSure: LessSure = {},
): Note {
  const action = actionNamed(test);
  if (rungOn(bench) === 1 && action !== undefined) return givenPrediction(bench.run, action);
  return {
    kind: 'prediction',
    test,
    lines: Object.entries(answers).map(([id, answer]) => {
      const own = lessSure[id];
      return { id, answer, ...(own !== undefined && isLess(own, sure) ? { sure: own } : {}) };
    }),
    figures: Object.entries(figures).map(([id, value]) => ({ id, value })),
    sure,
  };
}

const placeOf = ({ bench, place = placeByLog(bench) }: Input): Place => place;

const isLess = (own: Sure, whole: Sure | null): boolean =>
  whole !== null && SURENESS.indexOf(own) < SURENESS.indexOf(whole);

/** With an earth off nothing of the house may stay on. */
const makeSafe = ({ run }: Bench): readonly OperationInput[] => [
  { op: 'isolate', poles: 'all', lock: true },
  ...(run.world.plant.removed.some((what) => what === 'earthing-conductor' || what === 'electrode')
    ? [{ op: 'isolate', at: 'main-switch' } as const]
    : []),
  { op: 'prove-dead', at: 'origin' },
];

/** The harm that the last operation did, for a page that was closed over it. */
function lastHarm({ happened }: Bench): Harm {
  const acts = happened.at(-1)?.outcome.unsafe.filter(({ critical }) => critical) ?? [];
  return { acts, happened: happened.length - 1 };
}

/** Everything stands as it was left, the wait as it was set last. */
const draftFrom = ({ bench, draft }: Context): Draft => ({ position: bench.position, wait: draft.wait });

/** The test that was judged just now, and its prediction's place in the log; null once its lines were told. */
export function lastJudged({ run }: Bench): { readonly test: string; readonly since: number } | null {
  const { entries } = run.attempt;
  const last = entries.at(-1);
  if (last?.kind !== 'judgement' || rungOf(run.scenario.support, run.attempt) < 4) return null;
  const { test } = last;
  return { test, since: entries.findLastIndex((e) => e.kind === 'prediction' && e.test === test) };
}

interface Input {
  readonly bench: Bench;
  readonly place?: Place;
}

const takenUpAt = <T extends string>(step: Step, target: T) => ({
  guard: { type: 'was left at' as const, params: { step } },
  target,
});

export const attemptMachine = setup({
  types: {
    context: {} as Context,
    events: {} as Event,
    input: {} as Input,
  },
  guards: {
    // The very first event brings what the machine begins with.
    'was left at': ({ event }, { step }: { step: Step }) =>
      placeOf((event as unknown as { readonly input: Input }).input).step === step,
    'is in a test': ({ context }) => context.test !== null,
    'came to harm': ({ context }) => context.harm !== null,
    'is open': ({ context }) => standingOf(context.bench.run.attempt).at === 'observing',
    'is open and tells at once': ({ context }) =>
      isPractice(context.bench) && standingOf(context.bench.run.attempt).at === 'observing',
    'may judge again': ({ context }) => lastJudged(context.bench) !== null,
    waits: ({ context }) => context.wait !== null,
    'waits no more': ({ context }) => context.wait === null,
    'may go on': ({ context }) => !hasStopped(context.bench.run.attempt.entries),
  },
  actions: {
    'take the test': assign(({ context, event }) =>
      event.type === 'choose'
        ? { test: event.test, draft: draftFrom(context), answers: {}, figures: {}, failed: null }
        : {},
    ),
    'take the last test up again': assign(({ context }) => lastJudged(context.bench) ?? {}),
    'leave the test': assign({ test: null }),
    'lock and act': assign(({ context, event }) => {
      if (event.type !== 'lock' || context.test === null) return {};
      const { bench, draft, test } = context;
      const locked = noted(bench, predictionOf(context, test, event.sure, event.lessSure), event.wall);
      const { outlet } = bench.run.papers.sheet;
      const inputs = operationsBetween(bench.position, draft.position, draft.wait, outlet);
      return { since: locked.run.attempt.entries.length - 1, ...acted(context, locked, inputs, event) };
    }),
    'do it': assign(({ context, event }) =>
      event.type === 'do'
        ? acted(context, context.bench, [event.operation], event)
        : event.type === 'do in a row'
          ? acted(context, context.bench, event.operations, event, true)
          : {},
    ),
    'let time pass': assign(({ event }) => (event.type === 'pass' ? { left: event.left } : {})),
    'carry the wait out': assign(({ context, event }) => {
      const { wait, bench } = context;
      if (event.type !== 'waited' || wait === null) return {};
      const over = performed(context, bench, [{ op: 'wait', seconds: wait.seconds }], event.wall);
      const goesOn = over.harm === undefined && over.failed === null && !lastRefused(over.bench ?? bench);
      if (!goesOn || wait.after.length === 0) return { wait: null, ...over };
      return { ...over, ...acted(context, over.bench ?? bench, wait.after, event, true) };
    }),
    'wait no more': assign({ wait: null }),
    'write it down': assign(({ context, event }) =>
      event.type === 'note' || event.type === 'judged'
        ? { bench: noted(context.bench, event.note, event.wall) }
        : {},
    ),
    'make it safe': assign(({ context, event }) =>
      event.type === 'make safe'
        ? {
            ...performed({ ...context, test: null }, context.bench, makeSafe(context.bench), event.wall),
            harm: null,
          }
        : {},
    ),
    'stop the work': assign(({ context, event }) => {
      if (event.type !== 'stopped') return {};
      const { why, wall } = event;
      const { wait, left, bench } = context;
      // Of a wait that was under way so much as was told.
      const waited = wait === null ? 0 : wait.seconds - left;
      const before: readonly OperationInput[] = waited > 0 ? [{ op: 'wait', seconds: waited }] : [];
      return performed(context, bench, [...before, { op: 'stop', why }], wall);
    }),
    'write the conclusion': assign(({ context, event }) =>
      event.type === 'concluded'
        ? { bench: event.notes.reduce((bench, note) => noted(bench, note, event.wall), context.bench) }
        : {},
    ),
  },
}).createMachine({
  id: 'attempt',
  context: ({ input }) => {
    const { bench } = input;
    const { step, test, draft, answers, figures, since } = placeOf(input);
    const harm = step === 'harmed' ? lastHarm(bench) : null;
    return { bench, test, draft, answers, figures, since, harm, wait: null, left: 0, failed: null };
  },
  initial: 'taking up',
  states: {
    'taking up': {
      always: [
        takenUpAt('setting up', 'working.setting up'),
        takenUpAt('predicting', 'working.predicting'),
        takenUpAt('observing', 'working.observing'),
        takenUpAt('judging', 'working.judging'),
        takenUpAt('told', 'working.told'),
        takenUpAt('harmed', 'harmed'),
        takenUpAt('concluding', 'concluding'),
        takenUpAt('debrief', 'debrief'),
        { target: 'working' },
      ],
    },
    working: {
      initial: 'choosing',
      on: { stop: 'stopping', conclude: 'concluding' },
      states: {
        choosing: {
          entry: 'leave the test',
          on: {
            choose: { target: 'setting up', actions: 'take the test' },
            'put right': 'putting right',
            'judge again': {
              guard: 'may judge again',
              target: 'judging',
              actions: 'take the last test up again',
            },
          },
        },
        'putting right': {
          entry: 'leave the test',
          always: { guard: 'came to harm', target: '#harmed' },
          on: { do: { actions: 'do it' }, leave: 'choosing' },
        },
        'setting up': {
          on: {
            draft: { actions: assign({ draft: ({ event }) => event.draft }) },
            predict: 'predicting',
            leave: 'choosing',
            choose: { target: 'setting up', actions: 'take the test' },
          },
        },
        predicting: {
          on: {
            answer: {
              actions: assign({
                answers: ({ context, event }) => {
                  const { [event.id]: _, ...others } = context.answers;
                  return event.answer === null ? others : { ...others, [event.id]: event.answer };
                },
              }),
            },
            figure: {
              actions: assign({
                figures: ({ context, event }) => {
                  const { [event.id]: _, ...others } = context.figures;
                  return event.value === null ? others : { ...others, [event.id]: event.value };
                },
              }),
            },
            back: 'setting up',
            leave: 'choosing',
            lock: { target: 'observing', actions: 'lock and act' },
          },
        },
        observing: {
          id: 'observing',
          always: { guard: 'came to harm', target: '#harmed' },
          initial: 'acting',
          states: {
            acting: {
              always: { guard: 'waits', target: 'waiting' },
              on: {
                do: { actions: 'do it' },
                'do in a row': { actions: 'do it' },
                note: { actions: 'write it down' },
                judge: '#judging',
              },
            },
            waiting: {
              always: { guard: 'waits no more', target: 'acting' },
              on: {
                pass: { actions: 'let time pass' },
                waited: { actions: 'carry the wait out' },
              },
            },
          },
        },
        judging: {
          id: 'judging',
          on: {
            back: [{ guard: 'is open', target: 'observing' }, { target: 'choosing' }],
            judged: [
              { guard: 'is open and tells at once', target: 'told', actions: 'write it down' },
              { target: 'choosing', actions: 'write it down' },
            ],
          },
        },
        told: {
          on: {
            choose: { target: 'setting up', actions: 'take the test' },
            'put right': 'putting right',
            next: 'choosing',
          },
        },
        'where it was': { type: 'history', history: 'deep' },
      },
    },
    harmed: {
      id: 'harmed',
      on: {
        'make safe': [
          { guard: 'is in a test', target: '#observing', actions: 'make it safe' },
          { target: 'working.putting right', actions: 'make it safe' },
        ],
      },
    },
    stopping: {
      on: {
        'go on': 'working.where it was',
        stopped: { target: 'concluding', actions: 'stop the work' },
      },
    },
    concluding: {
      entry: 'wait no more',
      on: {
        'go on': { guard: 'may go on', target: 'working.where it was' },
        concluded: { target: 'debrief', actions: 'write the conclusion' },
      },
    },
    debrief: {},
  },
});

export type AttemptActor = ActorRefFrom<typeof attemptMachine>;
export type AttemptState = SnapshotFrom<typeof attemptMachine>;

/** Where it stands; beneath the sheet for stopping, the step that this lies over. */
export function stepIn({ value, historyValue }: AttemptState): Step {
  const path = value === 'stopping' ? (historyValue[BENEATH]?.[0]?.path ?? []) : pathOf(value);
  const at = path[0] === 'working' ? path[1] : path[0];
  // To put something right is nothing that somebody comes back to.
  return STEPS.find((step) => step === at) ?? 'choosing';
}

/** What xstate names the steps that the sheet lies over. */
const BENEATH = 'attempt.working.where it was';

const pathOf = (value: StateValue): readonly string[] =>
  typeof value === 'string'
    ? [value]
    : Object.entries(value).flatMap(([name, inner]) => [name, ...(inner === undefined ? [] : pathOf(inner))]);
