/** The papers of the kinds of site that questions are asked on, the benches' own; made once each. */
import { jobWith } from '../scenario/aimJobs.ts';
import type { SiteId } from '../scenario/aims.ts';
import type { Scenario } from '../scenario/scenario.ts';
import { papersOf, scenarioIn } from '../scenario/scenario.ts';
import type { Papers } from '../verification/testAction.ts';

interface AskedSite {
  readonly scenario: Scenario;
  readonly papers: Papers;
}

const made = new Map<SiteId, AskedSite>();

/** Of its words nothing is read. */
export function askedSite(site: SiteId): AskedSite {
  const before = made.get(site);
  if (before !== undefined) return before;
  const scenario = scenarioIn(
    jobWith({ aim: 'design', site, seed: 1 }, { title: site, brief: site, by: site }, []),
  );
  const one = { scenario, papers: papersOf(scenario) };
  made.set(site, one);
  return one;
}
