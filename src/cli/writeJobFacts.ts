/** Writes down what the tutor's shelf says of each job that comes with the page: `npm run job-facts`. */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { jobFactsOf } from '../fairness/jobFacts.ts';
import { scenarioIn } from '../scenario/scenario.ts';

const folder = new URL('../../scenarios/', import.meta.url);
const scenarios = readdirSync(folder)
  .filter((name) => name.endsWith('.json'))
  .sort()
  .map((name) => scenarioIn(JSON.parse(readFileSync(new URL(name, folder), 'utf8'))));
const facts = Object.fromEntries(scenarios.map((scenario) => [scenario.id, jobFactsOf(scenario)]));
writeFileSync(new URL('../fairness/jobFacts.json', import.meta.url), `${JSON.stringify(facts, null, 2)}\n`);
