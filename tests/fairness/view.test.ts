/**
 * What a tutor is shown while a job is changed: what was kept of the job before the change comes to the same as working
 * all of it out anew; and what the tutor accepts counts.
 */
import { describe, expect, test } from 'vitest';
import { toItsEnd } from '../../src/bench/toItsEnd.ts';
import JOB_FACTS from '../../src/fairness/jobFacts.json' with { type: 'json' };
import { jobFactsOf } from '../../src/fairness/jobFacts.ts';
import { Trials } from '../../src/fairness/trials.ts';
import type { SoFar } from '../../src/fairness/view.ts';
import { viewing } from '../../src/fairness/view.ts';
import { readScenario } from '../../src/scenario/readScenario.ts';
import type { Scenario } from '../../src/scenario/scenario.ts';
import { scenarioIds, scenarioNamed } from '../helpers/scenarios.ts';

const { file: whole } = scenarioNamed('harbour-mews');

/** Dead tests alone: quick to act out for every cause. */
const jobWith = (change: object): Scenario => {
  const read = readScenario({
    ...(whole as object),
    allowed: ['instruments', 'isolate', 'prove-dead', 'pe-outlet', 'insulation-outlet'],
    faults: [{ fault: 'outlet-pe-joint', ohms: 1.8 }],
    ...change,
  });
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.scenario;
};

describe('a job that is changed', () => {
  const job = jobWith({});
  const trials = new Trials(job);
  const first = toItsEnd(viewing(job, trials));

  test.each([
    ['worse', jobWith({ faults: [{ fault: 'outlet-pe-joint', ohms: 0.4 }] })],
    ['another cause', jobWith({ faults: [{ fault: 'outlet-neutral-earth-joined' }] })],
    [
      'a test more',
      jobWith({ allowed: ['instruments', 'isolate', 'prove-dead', 'pe-circuit', 'pe-outlet'] }),
    ],
    ['another site', jobWith({ seed: 99, clock: '2026-03-10T11:00' })],
  ])('%s: the same as worked out anew', (_, changed) => {
    const kept = toItsEnd(viewing(changed, new Trials(changed, trials)));
    expect(kept).toEqual(toItsEnd(viewing(changed)));
    expect(kept).not.toEqual(first);
  });

  test('what is known first is whether it can be seen, before most causes are acted out', () => {
    const known: SoFar[] = [...viewing(job)].filter(({ revealedBy }) => revealedBy !== null);
    expect(known[0]?.revealedBy).toEqual(first.revealedBy);
    expect(known[0]?.done).toBeLessThan((known[0]?.of ?? 0) / 10);
  });

  test('what reads the same may be accepted, and nothing is left to mend', () => {
    const unsplit = {
      allowed: ['instruments', 'isolate', 'prove-dead', 'insulation-unit'],
      faults: [{ fault: 'line-pe-insulation-low' }],
    };
    const before = toItsEnd(viewing(jobWith(unsplit)));
    const open = before.lookalikes.filter(({ splitBy }) => splitBy.length > 0);
    expect(open.length).toBeGreaterThan(0);
    expect(before.solvable).toBe(false);
    expect(open.flatMap(({ splitBy }) => splitBy)).toContain(before.wayOut?.test);
    const accepting = jobWith({ ...unsplit, accept: open.flatMap(({ causes }) => causes) });
    const view = toItsEnd(viewing(accepting));
    expect(view.solvable).toBe(true);
    expect(view.wayOut).toBeNull();
  });
});

test('the shelf says of every job that comes with the page what is worked out of it', () => {
  const names = scenarioIds;
  expect(Object.keys(JOB_FACTS).sort()).toEqual([...names].sort());
  for (const name of names.filter((_, i) => i % 9 === 0))
    expect(jobFactsOf(scenarioNamed(name).scenario), name).toEqual(JOB_FACTS[name as keyof typeof JOB_FACTS]);
});
