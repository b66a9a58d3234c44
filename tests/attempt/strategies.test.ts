/**
 * Ways of earning marks without knowing pass nowhere, and trainees of three skills are told apart. Here on a sound job,
 * on one with one fault at its end and on one that is stopped early; `npm run bench -- marks` does all that ship.
 */
import { describe, expect, test } from 'vitest';
import { mark } from '../../src/attempt/mark.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';
import { attemptBySkill, SKILLS } from '../helpers/skills.ts';
import { STRATEGIES } from '../helpers/strategies.ts';

const IDS = ['signal-cottage', 'sailmakers-yard', 'glebe-close'] as const;

describe.each(IDS)('%s', (id) => {
  const { scenario, file } = scenarioNamed(id);

  test.each(STRATEGIES)('$name passes nothing', ({ attempt }) => {
    const { passed, hurdles } = mark(scenario, attempt(scenario, file));
    expect(passed).toBe(false);
    expect(hurdles).not.toEqual([]);
  });

  test('a weak, a middling and an excellent trainee are told apart', () => {
    const [weak, middling, excellent] = SKILLS.map((skill) =>
      mark(scenario, attemptBySkill(scenario, file, skill, 1)),
    );
    expect(weak?.passed).toBe(false);
    expect(weak?.total).toBeLessThan(middling?.total ?? 0);
    expect(middling?.total).toBeLessThan(excellent?.total ?? 0);
    expect(excellent?.total).toBeGreaterThanOrEqual(90);
    expect(excellent?.passed).toBe(true);
  });
});
