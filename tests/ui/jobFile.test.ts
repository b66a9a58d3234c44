// What a tutor changes of a job's task on the desk is a file that stands: jobs that ship, asked in each of the three
// ways, is read without a complaint but that a test was handed over which cannot have been signed, which is said there.

import { expect, test } from 'vitest';
import { AIMS } from '../../src/scenario/aims.ts';
import { readScenario } from '../../src/scenario/readScenario.ts';
import { allowedActions, applicableActions } from '../../src/scenario/scenario.ts';
import type { JobFile } from '../../src/ui/screens/desk/jobFile.ts';
import { asAim, asFind, asVerify, withGateAside } from '../../src/ui/screens/desk/jobFile.ts';
import { scenarioIds, scenarioNamed } from '../helpers/scenarios.ts';

const problemsOf = (file: JobFile): readonly string[] => {
  const read = readScenario(file);
  return read.ok ? [] : read.problems.map(({ path }) => path).filter((path) => path !== 'handover.done');
};
const read = (file: JobFile) => {
  const one = readScenario(file);
  if (!one.ok) throw new Error(JSON.stringify(one.problems));
  return one.scenario;
};

const jobs = scenarioIds.map((id) => {
  const { file, scenario } = scenarioNamed(id);
  return {
    file: file as JobFile,
    applicable: applicableActions(scenario).map((action) => action.id),
    allowed: allowedActions(scenario).map((action) => action.id),
  };
});

test('a job asked as a whole verdict, as each aim and as a symptom is a file that stands', () => {
  for (const { file, applicable, allowed } of jobs.filter((_, i) => i % 6 === 0)) {
    expect(problemsOf(asVerify(file, allowed, applicable)), file.id).toEqual([]);
    expect(problemsOf(asFind(file, applicable.slice(0, 5))), file.id).toEqual([]);
    const dead = asAim(file, 'dead', ['isolate', 'prove-dead']);
    expect(problemsOf(asVerify(dead, ['isolate', 'prove-dead'], applicable)), file.id).toEqual([]);
    for (const { id, tests } of AIMS) {
      const own = applicable.filter((test) => (tests as readonly string[]).includes(test));
      if (own.length === 0) continue;
      expect(problemsOf(asAim(file, id, own)), `${file.id} ${id}`).toEqual([]);
    }
  }
});

test('points that come to 100 for one task alone are left behind with it', () => {
  const [job] = jobs.filter(({ file }) => file.task === 'find') as [(typeof jobs)[number]];
  const weighed = { ...job.file, marking: { weights: { prediction: 0, judgement: 30 }, pass: 60 } };
  expect(problemsOf(weighed)).toEqual([]);
  const verify = asVerify(weighed, job.allowed, job.applicable);
  expect(problemsOf(verify)).toEqual([]);
  expect(verify.marking?.pass).toBe(60);
});

test('a gate is set aside in the file with its reason, and counts again', () => {
  const [{ file }] = jobs as [(typeof jobs)[number]];
  const aside = withGateAside(file, 'cover-circuit-on', 'the cover of this rig has no screws');
  expect(read(aside).marking.setAside).toEqual([
    { gate: 'cover-circuit-on', reason: 'the cover of this rig has no screws' },
  ]);
  expect(withGateAside(aside, 'cover-circuit-on', null).marking?.setAside).toBeUndefined();
});
