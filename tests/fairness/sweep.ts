/**
 * Every job that ships and sixty that are drawn, each with the whole catalogue: it can be solved as its key says, the one
 * who always does what tells most comes to what is wrong, and who names a cause at random is right in under 5 %. For
 * `npm run soak`; all that is wrong.
 */
import type { Fairness } from '../../src/fairness/fairness.ts';
import { fairnessOf } from '../../src/fairness/fairness.ts';
import type { Level } from '../../src/fairness/make.ts';
import { LEVELS, makeJob } from '../../src/fairness/make.ts';
import { readScenario } from '../../src/scenario/readScenario.ts';
import { madeJobWords } from '../../src/words/madeJobs.ts';
import { scenarioIds, scenarioNamed } from '../helpers/scenarios.ts';
import { atRandom, greedily, namesWithMore, rightNames } from '../helpers/solvers.ts';
import { KEYS } from './keys.ts';

const DRAWN = 60;
/** Names drawn a job. */
const NAMED = 20;
const MOST_RIGHT = 0.05;

export function sweepFairness(say: (line: string) => void): readonly string[] {
  const wrong: string[] = [];
  let right = 0;
  let named = 0;
  const judge = (id: string, fairness: Fairness): void => {
    const names = rightNames(fairness);
    for (let seed = 0; seed < NAMED; seed++) {
      named += 1;
      if (names.includes(atRandom(fairness, seed))) right += 1;
    }
    const { left } = greedily(fairness);
    say(`${id}: ${fairness.solvable ? 'can be solved' : 'cannot be solved'}, ${left.length} cause(s) left`);
    if (!fairness.solvable) wrong.push(`${id}: cannot be solved`);
    else if (!left.every((name) => names.includes(name) || namesWithMore(fairness).includes(name)))
      wrong.push(`${id}: greedy is left with ${left.join()}`);
  };
  for (const id of scenarioIds) {
    const fairness = fairnessOf(scenarioNamed(id).scenario);
    judge(id, fairness);
    wrong.push(...unlikeKey(id, fairness));
  }
  for (let seed = 1; seed <= DRAWN; seed++) {
    const level = LEVELS[seed % LEVELS.length] as Level;
    const file = makeJob({ level, seed, families: [], minutes: null }, madeJobWords);
    const read = file === null ? null : readScenario(file);
    if (read === null || !read.ok) wrong.push(`level ${level}, seed ${seed}: no job`);
    else judge(read.scenario.id, fairnessOf(read.scenario));
  }
  say(`named at random: ${right} of ${named} right`);
  if (right / named >= MOST_RIGHT) wrong.push('named at random is right too often');
  return wrong;
}

/** Of a job with something wrong: its key holds with the whole catalogue too. */
function unlikeKey(id: string, { revealedBy, lookalikes, shortest }: Fairness): readonly string[] {
  const key = KEYS.find((one) => one.id === id);
  if (key === undefined || key.revealedBy.length === 0) return [];
  const found = [revealedBy, lookalikes.map(({ causes }) => causes.join()).sort(), shortest?.tests ?? []];
  const due = [key.revealedBy, [...key.lookalikes].sort(), key.shortest];
  return JSON.stringify(found) === JSON.stringify(due) ? [] : [`${id}: ${JSON.stringify(found)}`];
}
