/**
 * The lines of a test that a trainee answers before measuring, all or those that the scenario asks, in an order that depends on the seed alone, and the
 * right answer to each. Nothing here knows what is wrong with the unit.
 */
import { drawer, inDrawnOrder } from '../../bench/draw.ts';
import type { Scenario } from '../../scenario/scenario.ts';
import { papersOf } from '../../scenario/scenario.ts';
import { ACTIONS } from '../../verification/actions.ts';
import { figuresOn } from '../../verification/onPapers.ts';
import type { Source } from '../../verification/sources.ts';
import type { Expectation, Figure, TestAction, Untold, Values } from '../../verification/testAction.ts';
import type { Answer, EntryOf } from './attempt.ts';
import type { Run } from './run.ts';
import { rungOf } from './rung.ts';

export interface Line {
  /** Of a line of another test, that test's id stands before it, with a slash. */
  readonly id: string;
  readonly subject: Expectation['of'];
  readonly right: Answer;
  /** An expectation is judged afterwards; what this test cannot tell is not. */
  readonly judged: boolean;
  readonly values: Values;
  readonly source: Source;
  /** Where whoever set the job put another figure into it, why. */
  readonly own?: Expectation['own'];
  /** Of what this test cannot tell: the tests that do, by their ids. */
  readonly toldBy: readonly string[];
}

/** In one order for one scenario. */
export function testLines(scenario: Scenario, action: TestAction): readonly Line[] {
  const ofScenario = known.get(scenario) ?? new Map<TestAction, readonly Line[]>();
  known.set(scenario, ofScenario);
  const lines = ofScenario.get(action) ?? linesDrawn(scenario, action);
  ofScenario.set(action, lines);
  return lines;
}

const known = new WeakMap<Scenario, Map<TestAction, readonly Line[]>>();

function linesDrawn(scenario: Scenario, action: TestAction): readonly Line[] {
  const papers = papersOf(scenario);
  const draw = drawer(scenario.seed);
  const lines: Line[] = [
    ...action.expectations(papers).map(
      ({ id, of, should, values = {}, source, own }): Line => ({
        id,
        subject: of,
        right: should ? ('should' as const) : ('should-not' as const),
        judged: true,
        values,
        source,
        own,
        toldBy: [],
      }),
    ),
    ...action.untold(papers).map((untold) => lineOf(untold)),
  ];
  const asked = scenario.lines[action.id];
  return inDrawnOrder(
    lines.filter(({ id }) => asked === undefined || asked.includes(id)),
    ({ id }) => draw(`line ${action.id} ${id}`),
  );
}

const lineOf = ({ id, of = 'unit', values = {}, source, toldBy }: Untold): Line => ({
  id,
  subject: of,
  right: 'cant-tell',
  judged: false,
  values,
  source,
  toldBy,
});

/** So many lines stand in the list from which those that matter are chosen. */
const CHOOSE_FROM = 10;
/** Never fewer than so many of them come from other tests. */
const LEAST_DECOYS = 2;

/**
 * The list from which the lines that matter to a test are chosen: its own, and lines of other tests that it cannot
 * tell, with the other test before their id. They are drawn by the seed and the test alone, among what the papers allow and
 * what is done with the supply in the same state.
 */
export function linesToChooseFrom(scenario: Scenario, action: TestAction): readonly Line[] {
  const own = testLines(scenario, action);
  const papers = papersOf(scenario);
  const draw = drawer(scenario.seed);
  const others = ACTIONS.filter(
    (other) => other.id !== action.id && other.from === action.from && other.applies(papers),
  ).flatMap((other) =>
    other
      .untold(papers)
      .filter(({ toldBy, ownOnly }) => ownOnly !== true && !toldBy.includes(action.id))
      .map((untold): Line => ({ ...lineOf(untold), id: `${other.id}/${untold.id}` })),
  );
  const count = Math.max(LEAST_DECOYS, CHOOSE_FROM - own.length);
  const decoys = inDrawnOrder(others, ({ id }) => draw(`decoy ${action.id} ${id}`)).slice(0, count);
  return inDrawnOrder([...own, ...decoys], ({ id }) => draw(`choose ${action.id} ${id}`));
}

export function testFigures(scenario: Scenario, action: TestAction): readonly Figure[] {
  const asked = scenario.lines[action.id];
  return figuresOn(action, papersOf(scenario)).filter(({ id }) => asked === undefined || asked.includes(id));
}

/** Whether a figure that was said counts as right; one that was not said does not. */
export const isRightFigure = ({ value, tolerance }: Figure, said: number | null | undefined): boolean =>
  said != null && Math.abs(said - value) <= tolerance;

/** Where lines are to be chosen, one that the test cannot tell is rightly left without an answer. */
export const isLeftAlone = (
  { scenario, attempt }: Run,
  { id, judged }: Pick<Line, 'id' | 'judged'>,
  prediction: EntryOf<'prediction'> | undefined,
): boolean =>
  rungOf(scenario.support, attempt) === 3 &&
  !judged &&
  prediction?.lines.every((line) => line.id !== id) === true;
