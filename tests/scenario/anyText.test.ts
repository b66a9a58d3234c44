/** No text, no JSON and no value put into a good file makes the readers throw: each gets an answer in words. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Problem } from '../../src/scenario/problem.ts';
import { parseScenario } from '../../src/scenario/scenarioText.ts';
import { parseScript } from '../../src/scenario/script.ts';
import { problemText } from '../../src/words/problems.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';

const SEED = 90_210;

const answered = (read: { ok: boolean; problems?: readonly Problem[] }): boolean =>
  read.ok || (read.problems ?? []).some((problem) => problemText(problem).length > 0);

/** Holds a property over many values; a failure shows the value. */
const holds = (property: fc.IProperty<[string]>, numRuns: number) =>
  expect(() => fc.assert(property, { seed: SEED, numRuns })).not.toThrow();

test(`any text as a scenario, seed ${SEED}`, () => {
  holds(
    fc.property(fc.string({ maxLength: 200 }), (text) => answered(parseScenario(text))),
    500,
  );
});

test(`any JSON as a scenario, seed ${SEED}`, () => {
  holds(
    fc.property(fc.json({ maxDepth: 6 }), (text) => answered(parseScenario(text))),
    500,
  );
});

const PLACES = [
  ...['site', 'site.circuit', 'site.circuit.breaker', 'site.circuit.residualDevice', 'site.phases'],
  ...['site.otherLoads', 'unit', 'unit.cable', 'unit.residual', 'unit.clearsBy', 'unit.outlet', 'faults'],
  ...['allowed', 'marking', 'seed', 'format', 'handover'],
];

const spoiltFile = fc
  .tuple(fc.constantFrom(...PLACES), fc.jsonValue({ maxDepth: 3 }))
  .map(([place, value]) => {
    const file = JSON.parse(scenarioNamed('harbour-mews').text);
    const keys = place.split('.');
    const last = keys.pop() as string;
    // biome-ignore lint/suspicious/noExplicitAny: a file that is to be spoilt has no type
    keys.reduce((at: any, key) => at[key], file)[last] = value;
    return JSON.stringify(file);
  });

test(`a good scenario with any value anywhere, seed ${SEED}`, () => {
  holds(
    fc.property(spoiltFile, (text) => answered(parseScenario(text))),
    1000,
  );
});

const OPS = [
  'isolate',
  'prove-dead',
  'vehicle',
  'measure',
  'wait',
  'press',
  'reset',
  'action',
  'link',
  'stop',
];
const FIELDS = ['between', 'quantity', 'volts', 'seconds', 'what', 'id', 'leakage', 'coding', 'state', 'why'];
const anyScript = fc
  .array(
    fc
      .tuple(
        fc.constantFrom(...OPS),
        fc.dictionary(fc.constantFrom(...FIELDS), fc.jsonValue({ maxDepth: 2 })),
      )
      .map(([op, fields]) => ({ ...fields, op })),
    { maxLength: 4 },
  )
  .map((script) => JSON.stringify(script));

test(`any script, seed ${SEED}`, () => {
  const scenario = scenarioNamed('harbour-mews').scenario;
  holds(
    fc.property(fc.oneof(anyScript, fc.json()), (text) => answered(parseScript(text, scenario))),
    1000,
  );
});
