/**
 * The bench of a question: a scenario, in the ordinary form of the file, that is handed over at the state which the
 * question shows. It is for seeing, after the question is settled: nothing that is done on it counts as a job.
 */
import type { OperationInput } from '../bench/operation.ts';
import INSTALLATIONS from '../scenario/aimSites.json' with { type: 'json' };
import { aimOf } from '../scenario/aims.ts';
import { papersOf, scenarioIn } from '../scenario/scenario.ts';
import { actionNamed } from '../verification/actions.ts';
import { PROVING_AND_OPENING, startsAt } from '../verification/procedure.ts';
import type { Papers, TestAction } from '../verification/testAction.ts';
import { causesOn } from './kinds/causes.ts';
import type { Question } from './question.ts';
import { conductors } from './shown/conductors.ts';
import { offer } from './shown/offer.ts';
import { pictures } from './shown/pictures.ts';
import { protection } from './shown/protection.ts';
import type { ShownState, Shows } from './shown/state.ts';
import { LOCKED_OFF } from './shown/state.ts';
import { tests } from './shown/tests.ts';

const SHOWS: Readonly<Record<string, Shows>> = {
  ...offer,
  ...conductors,
  ...protection,
  ...pictures,
  ...tests,
};

/** Kinds without a state of a bench: sums on paper, and two circuits at one board, of which the bench has one. */
export const SHOWS_NOTHING: readonly string[] = [
  'carried-current',
  'breaker-fits',
  'design-wrong',
  'insulation-together',
];

export type { ShownState };

/** Null where no bench could stand in the state that this question shows. */
export function shownState(question: Question): ShownState | null {
  const shown = SHOWS[question.kind]?.(question) ?? null;
  if (shown === null) return null;
  const test = actionNamed(shown.test);
  return test === undefined || !test.applies(papersOf(scenarioIn(baseOf(shown, question)))) ? null : shown;
}

export interface ShownWords {
  readonly title: string;
  readonly brief: string;
  /** Who hands it over. */
  readonly by: string;
}

/** The scenario file's object, with one test: the one in which it is seen. */
export function shownFile(question: Question, shown: ShownState, words: ShownWords): object {
  const base = { ...baseOf(shown, question), title: words.title, brief: words.brief };
  const test = actionNamed(shown.test);
  if (test === undefined) throw new Error(`no test ${shown.test}`);
  const left = shown.left ?? setUpFor(test, papersOf(scenarioIn(base)));
  return { ...base, handover: { by: words.by, done: testsBefore(shown), left } };
}

const CLOCK = '2026-05-12T10:00';

function baseOf({ on, site, circuit, unit, causes = [], test }: ShownState, question: Question): object {
  const installation = INSTALLATIONS[on];
  const seed = Number(question.id.split('.').at(-1));
  return {
    format: 1,
    id: `question-${question.kind}-${seed}`,
    title: question.kind,
    brief: question.kind,
    rules: installation.rules,
    clock: CLOCK,
    task: 'aim',
    aim: aimOf(test),
    site: { ...installation.site, ...site, circuit: { ...installation.site.circuit, ...circuit } },
    unit: unitOf(installation.unit, unit ?? {}),
    faults: causes,
    allowed: [test],
    support: 'guided',
    seed,
  };
}

/** A tether's cable and a customer's stand in different fields of the file. */
function unitOf(own: object, { cable, ...changed }: Readonly<Record<string, unknown>>): object {
  const { cable: tether, customerCable, ...rest } = { cable: null, customerCable: null, ...own, ...changed };
  const isSocket = (rest as { outlet?: unknown }).outlet === 'socket';
  const named = cable ?? (isSocket ? customerCable : tether) ?? tether;
  return { ...rest, ...(isSocket ? { customerCable: named } : { cable: named }) };
}

/** What a later test leans on: the tester, and the protective conductor on both sides of the unit. */
const LEANED_ON = ['instruments', 'pe-circuit', 'pe-outlet'];

/** Those of them that could be signed: what a cause breaks is not among them, nor what is to be seen. */
function testsBefore({ on, causes = [], test }: ShownState): readonly string[] {
  return LEANED_ON.filter(
    (id) => id !== test && causes.every(({ fault }) => causesOn(on)[fault]?.[id] === undefined),
  );
}

/** Set up as the test begins: off, locked and proved where it is dead work, and what its own steps do before they tell anything. */
function setUpFor(test: TestAction, papers: Papers): readonly OperationInput[] {
  const steps = test.steps(papers);
  const telling = steps.findIndex(({ op }) => !SETS_UP.has(op));
  return [...before(test), ...steps.slice(0, Math.max(telling, 0))].slice(0, MOST_LEFT);
}

/** Operations of a handover, at most. */
const MOST_LEFT = 20;
const SETS_UP: ReadonlySet<OperationInput['op']> = new Set([
  'vehicle',
  'wait',
  'press',
  'disconnect',
  'link',
]);

function before(test: TestAction): readonly OperationInput[] {
  switch (startsAt(test)) {
    case 'isolated':
      return [...LOCKED_OFF, ...(test.id === 'prove-dead' ? [] : PROVING_AND_OPENING)];
    case 'made good':
      return [...LOCKED_OFF, { op: 'check-instruments' }, { op: 'prove-dead', at: 'origin' }];
    case 'as found':
    case 'energised':
      return [];
  }
}
