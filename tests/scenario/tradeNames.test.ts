/** A file written by hand in the trade's own words is told what the file calls them, and never a bare list of ids. */
import { expect, test } from 'vitest';
import { readScenario } from '../../src/scenario/readScenario.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';

const file = scenarioNamed('harbour-mews').file as {
  readonly site: { readonly circuit: object; readonly loopImpedance: number };
  readonly unit: { readonly residual: object };
};
const { loopImpedance: _, ...site } = file.site;

const problemsIn = (change: object): readonly string[] => {
  const read = readScenario({ ...file, ...change });
  return read.ok ? [] : read.problems.map(({ path, message }) => `${path}: ${String(message)}`);
};

// Common names of the trade, no source.
test.each([
  [
    'the earthing without hyphens',
    { site: { ...file.site, earthing: 'TNCS' } },
    'site.earthing: "TNCS" is not known here; did you mean "TN-C-S"?',
  ],
  [
    'PME',
    { site: { ...file.site, earthing: 'PME' } },
    'site.earthing: "PME" is not known here; did you mean "TN-C-S"?',
  ],
  ['Ze', { site: { ...site, ze: 0.22 } }, 'site.ze: unknown field "ze"; did you mean "loopImpedance"?'],
  [
    'cpc',
    { site: { ...file.site, circuit: { ...file.site.circuit, cpc: 6 } } },
    'site.circuit.cpc: unknown field "cpc"; did you mean "protectiveArea"?',
  ],
  [
    'rcd',
    { site: { ...file.site, circuit: { ...file.site.circuit, rcd: null } } },
    'site.circuit.rcd: unknown field "rcd"; did you mean "residualDevice"?',
  ],
  [
    '30 for 30 mA',
    { unit: { ...file.unit, residual: { ...file.unit.residual, rated: 30 } } },
    'unit.residual.rated: 30 does not fit: 30 mA is written 0.03',
  ],
  [
    '30 mA',
    { unit: { ...file.unit, residual: { ...file.unit.residual, rated: '30 mA' } } },
    'unit.residual.rated: "30 mA" is text: 0.03, without quotes or unit, is expected (0.01 or 0.03 or 0.1 or 0.3 or 0.5)',
  ],
  [
    'a length with its unit',
    { site: { ...file.site, circuit: { ...file.site.circuit, length: '18 m' } } },
    'site.circuit.length: "18 m" is text: 18, without quotes or unit, is expected (a number from 0.5 to 500)',
  ],
  [
    'single-phase',
    { site: { ...file.site, phases: 'single-phase' } },
    'site.phases: "single-phase" is text: 1, without quotes, is expected',
  ],
  ['Zs among the tests', { allowed: ['Zs'] }, 'allowed[0]: unknown test action "Zs"; did you mean "loop"?'],
])('%s', (_name, change, told) => {
  expect(problemsIn(change)).toContain(told);
});

test.each([
  ['a cause in one’s own words', { faults: [{ fault: 'loose neutral' }] }],
  ['a cause that is like none', { faults: [{ fault: 'zzz' }] }],
  ['a test that is like none', { allowed: ['zzz'] }],
])('%s is answered with a few names and where all are told, not with all of them', (_name, change) => {
  const [told = ''] = problemsIn(change);
  expect(told).toContain('“Set work” on the page');
  expect(told.split(', ').length).toBeLessThan(9);
});

test('a loop impedance is never led to another one', () => {
  expect(problemsIn({ site: { ...site, zs: 0.4 } }).join()).not.toContain('did you mean "loopImpedance"');
});
