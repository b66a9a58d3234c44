/**
 * Ways of earning marks without knowing pass nowhere, and trainees of three skills are told apart. Here on a sound job,
 * on one with one fault at its end, on one that is stopped early and on one that begins with a symptom; `npm run bench -- marks` does all that ship.
 */
import { describe, expect, test } from 'vitest';
import { mean } from '../../src/attempt/marks/counted.ts';
import { mark } from '../../src/attempt/marks/mark.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';
import { attemptBySkill, SKILLS } from '../helpers/skills.ts';
import { STRATEGIES } from '../helpers/strategies.ts';

const IDS = ['signal-cottage', 'sailmakers-yard', 'glebe-close'] as const;
/** Of few tests each, with most of the mark on one answer: an attempt at one of them says little, at some of them enough. */
const FINDS = [
  'find-weavers-green',
  'find-corn-hall',
  'find-abbey-grange',
  'find-heron-close',
  'find-larch-avenue',
] as const;

describe.each([...IDS, FINDS[0]])('%s', (id) => {
  const { scenario, file } = scenarioNamed(id);

  test.each(STRATEGIES)('$name passes nothing', ({ attempt }) => {
    const { passed, hurdles } = mark(scenario, attempt(scenario, file));
    expect(passed).toBe(false);
    expect(hurdles).not.toEqual([]);
  });
});

describe.each(IDS)('%s', (id) => {
  const { scenario, file } = scenarioNamed(id);

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

test('on a few jobs with a symptom the three are told apart in the mean, and the excellent one passes them all', () => {
  const rows = SKILLS.map((skill) =>
    FINDS.map((id) => {
      const { scenario, file } = scenarioNamed(id);
      return mark(scenario, attemptBySkill(scenario, file, skill, 1));
    }),
  );
  const [weak = 0, middling = 0, excellent = 0] = rows.map((row) => mean(row.map(({ total }) => total)));
  expect(weak).toBeLessThan(middling);
  expect(middling).toBeLessThan(excellent);
  expect(excellent).toBeGreaterThanOrEqual(90);
  expect(rows[0]?.filter(({ passed }) => passed)).toEqual([]);
  expect(rows[2]?.filter(({ passed }) => passed)).toHaveLength(FINDS.length);
});
