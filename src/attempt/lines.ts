/**
 * The lines of a test that a trainee answers before measuring, all or those that the scenario asks, in an order that depends on the seed alone, and the
 * right answer to each. Nothing here knows what is wrong with the unit.
 */
import { drawer } from '../bench/draw.ts';
import type { Scenario } from '../scenario/scenario.ts';
import { papersOf } from '../scenario/scenario.ts';
import type { Source } from '../verification/sources.ts';
import type { Figure, TestAction } from '../verification/testAction.ts';
import type { Answer } from './attempt.ts';

export interface Line {
  readonly id: string;
  readonly text: string;
  readonly subject: 'unit' | 'circuit';
  readonly right: Answer;
  /** An expectation is judged afterwards; what this test cannot tell is not. */
  readonly judged: boolean;
  readonly why: string;
  readonly source: Source;
}

export function testLines(scenario: Scenario, action: TestAction): readonly Line[] {
  const papers = papersOf(scenario);
  const draw = drawer(scenario.seed);
  const lines: Line[] = [
    ...action.expectations(papers).map(({ id, text, of, should, why, source }) => ({
      id,
      text,
      subject: of,
      right: should ? ('should' as const) : ('should not' as const),
      judged: true,
      why,
      source,
    })),
    ...action.untold(papers).map(({ id, text, of = 'unit', why, source }) => ({
      id,
      text,
      subject: of,
      right: "can't tell" as const,
      judged: false,
      why,
      source,
    })),
  ];
  const asked = scenario.lines[action.id];
  return lines
    .filter(({ id }) => asked === undefined || asked.includes(id))
    .map((line) => ({ line, place: draw(`line ${action.id} ${line.id}`) }))
    .sort((x, y) => x.place - y.place)
    .map(({ line }) => line);
}

export function testFigures(scenario: Scenario, action: TestAction): readonly Figure[] {
  const asked = scenario.lines[action.id];
  return action.figures(papersOf(scenario)).filter(({ id }) => asked === undefined || asked.includes(id));
}
