/** What the words on a fault say of tests is what the tests show: each named one is there, and breaks or does not. */
import { describe, expect, test } from 'vitest';
import { entryNamed } from '../../src/faults/catalogue.ts';
import { benchOf, papersOf } from '../../src/scenario/scenario.ts';
import { actionNamed } from '../../src/verification/actions.ts';
import { judgeExpectations, judgeLimits } from '../../src/verification/assess.ts';
import { carryOut } from '../../src/verification/procedure.ts';
import { CAUSE_WORDS } from '../../src/words/causes.ts';
import { scenarioOn } from './installations.ts';
import { TELLS } from './tells.ts';
import { TOLD } from './told.ts';

/** Lines and limits that one test breaks, by itself, with this cause at its usual severity where it suits. */
function brokenBy(cause: string, id: string): readonly string[] {
  const [on, action] = [TELLS[cause]?.[0], actionNamed(id)];
  if (on === undefined || action === undefined) throw new Error(`no ${cause}, or no test ${id}`);
  const values = Object.fromEntries(entryNamed(cause)?.parameters.map((p) => [p.name, p.default]) ?? []);
  const scenario = scenarioOn(on, [{ fault: cause, values }]);
  const papers = papersOf(scenario);
  expect(action.applies(papers), `${id} does not apply on ${on}`).toBe(true);
  const run = carryOut(benchOf(scenario), action, papers);
  return [
    ...judgeExpectations(action, papers, run)
      .filter(({ finding }) => finding === 'broken')
      .map(({ expectation }) => expectation.id),
    ...judgeLimits(action, papers, run)
      .filter(({ pass }) => !pass)
      .map(({ limit }) => limit.id),
  ];
}

const rows = Object.entries(TOLD).flatMap(([id, told]) => told.map((one) => ({ id, of: id, ...one })));

describe('the words on', () => {
  test.each(rows)('$id say “$says”: $test, of $of: $shows', ({ id, of, says, test: named, shows }) => {
    expect(CAUSE_WORDS[id]?.tells).toContain(says);
    expect(brokenBy(of, named).length > 0).toBe(shows);
  });

  test('every fault name at least one test that shows it', () => {
    for (const id of Object.keys(TELLS))
      expect(
        TOLD[id]?.some(({ shows, of }) => shows && of === undefined),
        id,
      ).toBe(true);
  });
});
