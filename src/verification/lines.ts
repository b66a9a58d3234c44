/**
 * What test actions ought to show, by their ids. It stands apart from how they are done, since a bench on which some are
 * only handed over needs no more of those. Whoever judges a test sees to it before that its lines are there: whatever
 * reads a scenario file has those of all (allLines.ts), a bench that the page makes itself those of its aims
 * (src/ui/flow/loadTests.ts).
 */
import type { Procedure, TestAction, TestLines } from './testAction.ts';

const there = new Map<string, TestLines>();

/** By their ids; what is there already is the same. */
export function addLines(lines: Readonly<Record<string, TestLines>>): void {
  for (const [test, its] of Object.entries(lines)) there.set(test, its);
}

function linesOf(test: string): TestLines {
  const lines = there.get(test);
  if (lines === undefined) throw new Error(`no lines of the test ${test}`);
  return lines;
}

/** The test action, with whatever lines of it are there when it is asked for them. */
export const withLines = (procedure: Procedure): TestAction => ({
  ...procedure,
  expectations: (papers) => linesOf(procedure.id).expectations(papers),
  figures: (papers) => linesOf(procedure.id).figures(papers),
  limits: (papers) => linesOf(procedure.id).limits(papers),
  advice: (papers) => linesOf(procedure.id).advice?.(papers) ?? [],
  get stops() {
    return linesOf(procedure.id).stops;
  },
});
