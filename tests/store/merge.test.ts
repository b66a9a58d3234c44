/** Where an attempt from a file belongs among those kept: by what stands in the logs, not by what a file claims. */
import { expect, test } from 'vitest';
import type { Attempt } from '../../src/attempt/record/attempt.ts';
import { appended, ENGINE } from '../../src/attempt/record/attempt.ts';
import { belongs } from '../../src/store/merge.ts';

const EMPTY: Attempt = { format: 2, engine: ENGINE, scenario: { id: 'a', title: 'A' }, entries: [] };

/** An attempt that left out tests with these names, one after the other. */
const left = (...tests: readonly string[]): Attempt =>
  tests.reduce(
    (attempt, name, i) => appended(attempt, { kind: 'record', test: name, leftOut: 'no-time' }, i, i),
    EMPTY,
  );

const kept = (id: string, attempt: Attempt) => ({ id, attempt });

test.each([
  ['nothing like it is kept', kept('n', left('p')), [kept('k', left('q'))], { as: 'another', id: 'n' }],
  ['the same log', kept('n', left('p', 'q')), [kept('k', left('p', 'q'))], { as: 'kept already', id: 'k' }],
  ['a shorter one of it', kept('n', left('p')), [kept('k', left('p', 'q'))], { as: 'kept already', id: 'k' }],
  ['a longer one of it', kept('n', left('p', 'q')), [kept('k', left('p'))], { as: 'longer', id: 'k' }],
  [
    'one that went another way',
    kept('n', left('p', 'r')),
    [kept('k', left('p', 'q'))],
    { as: 'another', id: 'n' },
  ],
  ['its id is taken', kept('k', left('p')), [kept('k', left('q'))], { as: 'another', id: 'k-2' }],
  [
    'so is the next',
    kept('k', left('p')),
    [kept('k', left('q')), kept('k-2', left('r'))],
    { as: 'another', id: 'k-3' },
  ],
  ['nothing in it, same id', kept('k', EMPTY), [kept('k', left('p'))], { as: 'kept already', id: 'k' }],
  ['nothing in it, other id', kept('n', EMPTY), [kept('k', EMPTY)], { as: 'another', id: 'n' }],
  [
    'of two that went apart, the one it continues',
    kept('n', left('p', 'q', 'r')),
    [kept('k', left('p', 's')), kept('m', left('p', 'q'))],
    { as: 'longer', id: 'm' },
  ],
] as const)('%s', (_, incoming, here, expected) => {
  expect(belongs(incoming, here)).toEqual(expected);
});

test('a log that claims the same hashes with another content replaces nothing', () => {
  const honest = left('p', 'q');
  const [first, ...others] = left('p', 'q', 'r').entries;
  const forged = { ...honest, entries: [{ ...first, leftOut: 'forged' }, ...others] } as Attempt;
  expect(belongs(kept('n', forged), [kept('k', honest)])).toEqual({ as: 'another', id: 'n' });
});

test('an honest file is not taken for a kept copy that claims other marks; one that claims none is', () => {
  const log = left('p', 'q');
  const honest = { ...log, marks: { total: 61 } };
  const doctored = kept('k', { ...log, marks: { total: 100 } });
  expect(belongs(kept('n', honest), [doctored])).toEqual({ as: 'another', id: 'n' });
  expect(belongs(kept('n', honest), [kept('k', log)])).toEqual({ as: 'kept already', id: 'k' });
  expect(belongs(kept('n', left('p')), [doctored])).toEqual({ as: 'kept already', id: 'k' });
});
