/*
 * Scenarios for the tests: the usual bench with changes. Judges nothing.
 */
import type { Scenario } from '../../src/scenario/scenario.ts';
import { SHEET, siteOf, type Wanted } from '../bench/build.ts';

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
  task: 'verify',
  aim: null,
  symptom: null,
  accept: [],
  own: [],
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
