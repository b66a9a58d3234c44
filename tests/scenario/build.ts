/*
 * Scenarios for the tests: from the usual bench with changes, or from a file in scenarios/, and files with something
 * wrong put in. Judges nothing.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Scenario } from '../../src/scenario/scenario.ts';
import { parseScenario } from '../../src/scenario/scenario.ts';
import { SHEET, siteOf, type Wanted } from '../bench/build.ts';

const FOLDER = join(import.meta.dirname, '../../scenarios');

export const SCENARIO_IDS: readonly string[] = readdirSync(FOLDER)
  .filter((name) => name.endsWith('.json'))
  .map((name) => name.slice(0, -'.json'.length));

export const scenarioText = (id: string): string => readFileSync(join(FOLDER, `${id}.json`), 'utf8');

export function scenarioNamed(id: string): Scenario {
  const read = parseScenario(scenarioText(id));
  if (!read.ok) throw new Error(`${id}: ${JSON.stringify(read.problems)}`);
  return read.scenario;
}

export const scenarioOf = ({
  site,
  sheet,
  faults = [],
  seed = 7,
}: Omit<Wanted, 'design' | 'parts'> = {}): Scenario => ({
  format: 1,
  id: 'made-for-a-test',
  title: 'Made for a test',
  brief: 'Made for a test.',
  rules: 'BS 7671:2018+A2:2022',
  clock: '2026-03-10T10:00',
  site: siteOf(site),
  unit: { ...SHEET, ...sheet },
  faults,
  allowed: 'all',
  handover: null,
  lines: {},
  support: 'practice',
  marking: {
    weights: { prediction: 20, observation: 15, judgement: 25, record: 10, diagnosis: 20, reasons: 10 },
    pass: 70,
    setAside: [],
  },
  seed,
});
