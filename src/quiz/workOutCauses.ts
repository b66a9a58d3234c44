/**
 * What each cause breaks in each test, at its usual size, on each kind of site: acted out on the bench by a faultless
 * trainee who goes on whatever is found. Works out what causes.json holds (`npm run question-causes`).
 */
import { toItsEnd } from '../bench/toItsEnd.ts';
import { jobWith } from '../scenario/aimJobs.ts';
import type { SiteId } from '../scenario/aims.ts';
import { SITES } from '../scenario/aims.ts';
import { readScenario } from '../scenario/readScenario.ts';
import { applicableActions, beginning, papersOf } from '../scenario/scenario.ts';
import { workingThrough } from '../scenario/verify.ts';
import { causesAt } from './kinds/causesAt.ts';

/** By test the lines and limits that are broken, in the order of the test; tests that break nothing are left out. */
export type Broken = Readonly<Record<string, readonly string[]>>;
export type Causes = Readonly<Record<SiteId, Readonly<Record<string, Broken>>>>;

/** Null where it cannot be on this site, or something critically unsafe is done on the way. */
export function brokenBy(site: SiteId, cause: string): Broken | null {
  const words = { title: site, brief: site, by: site };
  const read = readScenario(jobWith({ aim: 'design', site, seed: 1 }, words, [cause]));
  if (!read.ok) return null;
  const { scenario } = read;
  const { world } = toItsEnd(beginning(scenario));
  const broken: [string, readonly string[]][] = [];
  const work = workingThrough(world, applicableActions(scenario), papersOf(scenario), true);
  for (let next = work.next(); next.done !== true; next = work.next()) {
    if (next.value === null) continue;
    const { action, expectations, limits } = next.value;
    const ids = [
      ...expectations.filter(({ finding }) => finding === 'broken').map(({ expectation }) => expectation.id),
      ...limits.filter(({ pass }) => !pass).map(({ limit }) => limit.id),
    ];
    if (ids.length > 0) broken.push([action.id, [...new Set(ids)]]);
  }
  return Object.fromEntries(broken);
}

export const workOutCauses = (): Causes =>
  Object.fromEntries(
    SITES.map((site) => [
      site,
      Object.fromEntries(
        causesAt(site).flatMap((cause) => {
          const broken = brokenBy(site, cause);
          return broken === null || Object.keys(broken).length === 0 ? [] : [[cause, broken]];
        }),
      ),
    ]),
  ) as Causes;
