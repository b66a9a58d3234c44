// What a file leaves out is filled in without the schema on a bench, as the schema fills it in: in every file of ours, and
// in each without any one of the things that may be left out.

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import * as v from 'valibot';
import { expect, test } from 'vitest';
import { aimJob } from '../../src/scenario/aimJobs.ts';
import { AIMS, SITES } from '../../src/scenario/aims.ts';
import { filledIn } from '../../src/scenario/scenario.ts';
import type { ScenarioInput } from '../../src/scenario/schema.ts';
import { scenarioSchema } from '../../src/scenario/schema.ts';

const FOLDER = join(import.meta.dirname, '../../scenarios');
const filesIn = (folder: string): readonly (readonly [string, ScenarioInput])[] =>
  readdirSync(join(FOLDER, folder))
    .filter((name) => name.endsWith('.json'))
    .map((name) => [name, JSON.parse(readFileSync(join(FOLDER, folder, name), 'utf8'))]);
const JOBS = SITES.flatMap((site) =>
  AIMS.map(({ id: aim }): readonly [string, ScenarioInput] => [
    `${aim} ${site}`,
    aimJob({ aim, site, seed: 1 }, { title: 'a', brief: 'b', by: 'c' }) as ScenarioInput,
  ]),
);

/** The same without one thing that it says, whatever that is. */
function* eachLeftOut<T extends object>(said: T): Generator<T> {
  for (const [name, value] of Object.entries(said)) {
    const { [name as keyof T]: _, ...rest } = said;
    yield rest as T;
    yield { ...said, [name]: undefined };
    if (typeof value !== 'object' || value === null || Array.isArray(value)) continue;
    for (const less of eachLeftOut(value)) yield { ...said, [name]: less };
  }
}

test.each([...filesIn('.'), ...filesIn('first-run'), ...JOBS])('%s', (_, file) => {
  const whole = v.parse(scenarioSchema, file);
  expect(filledIn(file)).toEqual(whole);
  // Of the whole, each line that is usual may be taken away.
  for (const less of [...eachLeftOut(file), ...eachLeftOut(whole as ScenarioInput)]) {
    const { success, output } = v.safeParse(scenarioSchema, less);
    if (success) expect(filledIn(less)).toEqual(output);
  }
});
