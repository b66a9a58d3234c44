// Where marks were lost in one attempt: every answer that a part's own sum counts as wanting has its row with a line, and
// none that it counts as right has one. The sums are those of the marks, which are held elsewhere.

import { expect, test } from 'vitest';
import { debriefOf } from '../../src/attempt/marks/debrief.ts';
import type { PartName } from '../../src/scenario/tasks.ts';
import { lostIn } from '../../src/ui/screens/collect/lost.ts';
import '../../src/words/allTests.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';
import { attemptBySkill, SKILLS } from '../helpers/skills.ts';

const told = ['find-dyers-row', 'fen-barn'].flatMap((id) => {
  const { file, scenario } = scenarioNamed(id);
  return SKILLS.flatMap((skill) =>
    [1, 2].map((seed) => debriefOf(scenario, attemptBySkill(scenario, file as object, skill, seed))),
  );
});

test('each reading, record and reason that is wanting in the sums stands among what was lost', () => {
  let wanting = 0;
  for (const one of told) {
    const lost = lostIn(one);
    const count = (part: PartName, isMeant: (key: string) => boolean = () => true) =>
      lost.filter((item) => item.part === part && isMeant(item.key)).length;
    const done = one.tests.filter(({ done, counts }) => done && counts).map(({ test }) => test);
    const ofDone = (key: string) => /^\w+ \d+$/.test(key);
    const { observation, record } = one.marks.sums;
    // Of a test that was not done no reading is there to be shown: its reason for being left out stands instead.
    if (done.length === one.tests.filter(({ counts }) => counts).length) {
      expect(count('observation')).toBe(observation.of - observation.right);
      expect(count('record', ofDone)).toBe(record.written.of - record.written.right);
    }
    expect(count('record', (key) => !ofDone(key))).toBe(record.leftOut.of - record.leftOut.right);
    wanting += count('observation') + count('record');
    for (const { line, said, truth } of lost) expect(line && said && truth).not.toBe('');
  }
  expect(wanting).toBeGreaterThan(10);
});

test('a judgement or a prediction that was lost has its source', () => {
  const answers = told.flatMap((one) =>
    lostIn(one).filter(
      ({ part, line }) => (part === 'judgement' || part === 'prediction') && !line.startsWith('not done'),
    ),
  );
  expect(answers.length).toBeGreaterThan(20);
  for (const { source } of answers) expect(source).toMatch(/\S/);
});

test('of a test that was not done one thing is wanting in judgement, with how many lines it has', () => {
  const [scenario, file] = [scenarioNamed('harbour-mews').scenario, scenarioNamed('harbour-mews').file];
  const one = debriefOf(
    scenario,
    attemptBySkill(scenario, file as object, SKILLS[0] as (typeof SKILLS)[number], 1),
  );
  const undone = one.tests.filter(({ done, counts }) => counts && !done).map(({ test }) => test);
  expect(undone.length).toBeGreaterThan(0);
  const judged = lostIn(one).filter(({ part, test }) => part === 'judgement' && undone.includes(test));
  expect(judged.map(({ test }) => test)).toEqual(undone);
  for (const { line } of judged) expect(line).toMatch(/^not done, so \d+ lines? w/);
});
