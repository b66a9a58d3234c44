// What of site, unit and clock a tutor can set at the desk: all that a file may say of them (the schema that is published with
// the page), by the range that the file has there, said at its field where it does not stand; read back as it was set.

import { expect, test } from 'vitest';
import SCHEMA from '../../public/scenario.schema.json' with { type: 'json' };
import INSTALLATIONS from '../../src/scenario/aimSites.json' with { type: 'json' };
import { isSite } from '../../src/scenario/aims.ts';
import { check } from '../../src/scenario/problems.ts';
import { readScenario } from '../../src/scenario/readScenario.ts';
import { papersOf } from '../../src/scenario/scenario.ts';
import { scenarioSchema } from '../../src/scenario/schema.ts';
import { atTheirFields } from '../../src/ui/screens/desk/fieldNames.ts';
import type { Field } from '../../src/ui/screens/desk/fields.ts';
import { clockFields } from '../../src/ui/screens/desk/fields.ts';
import type { JobFile } from '../../src/ui/screens/desk/jobFile.ts';
import { blankFile } from '../../src/ui/screens/desk/jobFile.ts';
import { siteFields } from '../../src/ui/screens/desk/siteFields.ts';
import { unitFields } from '../../src/ui/screens/desk/unitFields.ts';
import { sheetLines, siteLines } from '../../src/words/papers.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';

const fieldsOf = (file: JobFile): readonly Field[] => [
  ...[...siteFields(file), ...unitFields(file)].flatMap(({ fields }) => fields),
  ...clockFields,
];
const fieldAt = (file: JobFile, at: string): Field => {
  const field = fieldsOf(file).find((one) => one.at === at);
  if (field === undefined) throw new Error(`no field at ${at}`);
  return field;
};
const set = (file: JobFile, at: string, value: unknown): JobFile => fieldAt(file, at).write(file, value);

const kinds = Object.keys(INSTALLATIONS)
  .filter(isSite)
  .map((site) => [site, blankFile(site)] as const);
/** With all that another field brings with it. */
const full = (file: JobFile): JobFile =>
  [
    ['site.service', true],
    ['site.nextPoint', true],
    ['site.circuit.residualDevice', true],
    ['unit.residual.type', 'A'],
    ['unit.openPen', 'other'],
    ['unit.permission', 'authorise'],
    ['unit.schedule', 'default-hours'],
  ].reduce((all, [at, value]) => set(all, String(at), value), file);

test.each(kinds)('each value of each field of %s is one that a file may have, and reads back', (_, blank) => {
  for (const file of [blank, full(blank)])
    for (const field of fieldsOf(file)) {
      const values =
        field.kind === 'figure'
          ? [field.least, field.greatest, ...(field.empty === undefined ? [] : [undefined])]
          : field.kind === 'one of'
            ? field.options.map(([, value]) => value)
            : ['2026-02-28T23:59'];
      expect(values.length, field.at).toBeGreaterThan(0);
      for (const value of values) {
        const changed = field.write(file, value);
        const read = check(scenarioSchema, changed);
        expect(read.ok ? [] : read.problems, `${field.at} ${value}`).toEqual([]);
        // Null stands for what the file then leaves out.
        expect(field.read(changed) ?? null, `${field.at} ${value}`).toEqual(value ?? null);
      }
    }
});

/** What a file may say and the desk has no field for, with the reason; all of it is kept as it is in the file. */
const LEFT = [
  // With the kind of site and unit, in one choice.
  ...['site.phases', 'site.earthing', 'unit.outlet'],
];

interface Schema {
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly anyOf?: readonly Schema[];
  readonly oneOf?: readonly Schema[];
}

/** Paths of the values that a schema knows; a list is one. */
const leavesOf = (schema: Schema, path: string): readonly string[] => {
  const inner = [schema, ...(schema.anyOf ?? []), ...(schema.oneOf ?? [])].flatMap(({ properties = {} }) =>
    Object.entries(properties),
  );
  return inner.length === 0
    ? [path]
    : inner.flatMap(([name, one]) => leavesOf(one, path === '' ? name : `${path}.${name}`));
};

test('whatever a file may say of site and unit has its field, on one of the kinds of site', () => {
  const { site, unit } = (SCHEMA as Schema).properties ?? {};
  const known = new Set(
    kinds.flatMap(([, file]) => fieldsOf(full(file)).map(({ at }) => at.replace(/\.L[123]$/, ''))),
  );
  const all = new Set([...leavesOf(site ?? {}, 'site'), ...leavesOf(unit ?? {}, 'unit')]);
  expect(all.size).toBeGreaterThan(60);
  expect([...all].filter((path) => !known.has(path) && !LEFT.includes(path))).toEqual([]);
});

test('a figure one step beyond the range of its field is none that a file may have', () => {
  // A load on a line is the sum of those that the file has there.
  const figures = kinds.flatMap(([, blank]) =>
    fieldsOf(full(blank)).flatMap((field) =>
      field.kind === 'figure' && !/\.L[123]$/.test(field.at) ? [[full(blank), field] as const] : [],
    ),
  );
  for (const [file, field] of figures)
    for (const beyond of [field.least - 0.001, field.greatest * 1.01]) {
      const read = readScenario(field.write(file, beyond));
      expect(read.ok ? [] : read.problems.map(({ path }) => path), `${field.at} ${beyond}`).toContain(
        field.at,
      );
    }
});

test('the next point, the service and the house’s load of a job are set, read in its papers and weighed by the check', () => {
  const { file } = scenarioNamed('granary-mews');
  const job = file as JobFile;
  const next = (values: Readonly<Record<string, unknown>>) =>
    Object.entries(values).reduce((all, [at, value]) => set(all, at, value), job);
  const made = next({
    'site.nextPoint.ratedCurrent': 16,
    'site.nextPoint.draws': 10,
    'site.service.rating': 80,
    'site.service.demand': 30,
    'site.otherLoads.L1': 2300,
    'unit.serviceLimit': 80,
  });
  const read = readScenario(made);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  expect(read.warnings).toEqual([]);
  expect(read.scenario.site).toMatchObject({
    nextPoint: { ratedCurrent: 16, draws: 10 },
    service: { rating: 80, demand: 30 },
    otherLoads: [{ line: 'L1', power: 2300 }],
  });
  const papers = papersOf(read.scenario);
  const texts = [...siteLines(papers), ...sheetLines(papers)].map(({ term, text }) => `${term}: ${text}`);
  expect(texts.some((text) => /^next point: .*16 A a line.*charging on it, at 10 A/.test(text))).toBe(true);
  expect(texts.some((text) => /^service: 80 A a line; the house asks 30 A/.test(text))).toBe(true);
  expect(texts.some((text) => /^service sensor: .*80 A a line/.test(text))).toBe(true);
  // BS 7671 722.311: what may be asked of the service is no more than it is rated for.
  const unguarded = { ...next({ 'unit.serviceLimit': undefined, 'site.service.rating': 60 }), faults: [] };
  const asked = readScenario(unguarded);
  if (!asked.ok) throw new Error(JSON.stringify(asked.problems));
  expect(atTheirFields(asked.warnings, unguarded).map(({ path }) => path)).toEqual([
    'service, in the papers',
  ]);
  // What is wrong with its sensor cannot be where there is none.
  const refused = readScenario({ ...unguarded, faults: job.faults });
  expect(refused.ok ? [] : atTheirFields(refused.problems, job).map(({ path }) => path)).toEqual([
    'What is wrong',
  ]);
  const draws = readScenario(set(made, 'site.nextPoint.ratedCurrent', 8));
  expect(draws.ok ? [] : atTheirFields(draws.problems, made).map(({ path }) => path)).toEqual([
    'next point: draws as found, each line',
  ]);
  // Taken away, the house's load with it, nothing is left of either.
  const alone = ['site.nextPoint', 'site.service'].reduce((all, at) => set(all, at, false), made);
  const none = set(alone, 'site.otherLoads.L1', 0);
  expect(Object.keys(none.site)).not.toEqual(expect.arrayContaining(['nextPoint']));
  expect(none.site.otherLoads).toBeUndefined();
});
