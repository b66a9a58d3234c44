// Fields half filled: what comes back has the shape of what the field begins with, and goes once it is written down.

import { expect, test } from 'vitest';
import { act, startRun } from '../../src/attempt/record/run.ts';
import { operation } from '../../src/bench/operation.ts';
import { fieldsFrom, forgetAfter, readingField } from '../../src/ui/flow/draftFields.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';

test.each([
  ['text', '', '2', undefined, true],
  ['a number for text', '', 2, undefined, false],
  ['text that is allowed', '', '>', ['>'], true],
  ['text that is not', '', '<', ['>'], false],
  ['no text where only some are allowed', '', '', ['>'], true],
  ['a choice', null, 'fit', ['fit', 'unfit'], true],
  ['no choice', null, null, ['fit'], true],
  ['a choice that is none', null, 'soso', ['fit'], false],
  ['a list of texts', [], ['a', 'b'], undefined, true],
  ['a list with a number', [], ['a', 1], undefined, false],
  ['named texts', {}, { low: '−12' }, undefined, true],
  ['named numbers', {}, { low: -12 }, undefined, false],
  ['named texts, a list among them', { first: [''] }, { first: ['met'] }, undefined, true],
  ['the same with a name missing', { first: [''], second: '' }, { first: ['met'] }, undefined, false],
  ['a list for named texts', {}, ['a'], undefined, false],
  ['named choices that are none', {}, { a: 'soso' }, ['fit'], false],
])('%s', (_, first, value, allowed, isTaken) => {
  const fields = fieldsFrom({ field: value }, () => {});
  expect(fields.kept<unknown>('field', first, allowed)).toEqual(isTaken ? value : first);
});

test('every change is told; what is done with is forgotten, and nothing else', () => {
  const { scenario, file } = scenarioNamed('harbour-mews');
  const measure = operation({
    op: 'measure',
    quantity: 'voltage',
    between: ['outlet.L1', 'outlet.PE'],
    tool: 'two-pole',
  });
  const once = act(startRun(scenario, file), 'state-a', measure, 0).run;
  const { run } = act(once, 'state-a', measure, 0);
  const [first, second] = run.readings.map(({ reading }) => readingField(reading));
  let told = 0;
  const fields = fieldsFrom({}, () => {
    told += 1;
  });
  const names = [`${first} value`, `${second} value`, 'measure', 'stop reason', 'conclude because'];
  for (const name of names) fields.put(name, 'x');
  expect(told).toBe(names.length);
  const left = () => Object.keys(fields.all());
  forgetAfter(fields, { type: 'note', note: { kind: 'observation', reading: 0 } }, run);
  expect(left()).toEqual(names.slice(1));
  forgetAfter(fields, { type: 'go on' }, run);
  expect(left()).toEqual([`${second} value`, 'measure', 'conclude because']);
  forgetAfter(fields, { type: 'choose' }, run);
  expect(left()).toEqual(['conclude because']);
  forgetAfter(fields, { type: 'concluded' }, run);
  expect(left()).toEqual([]);
});
