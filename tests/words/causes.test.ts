import { describe, expect, test } from 'vitest';
import { CATALOGUE } from '../../src/faults/catalogue.ts';
import { CAUSE_WORDS } from '../../src/words/causes.ts';
import { CAUSE_TITLES, causeTitle } from '../../src/words/causeTitles.ts';

describe('the words of the catalogue', () => {
  test('every entry has them, and nothing else has', () => {
    const ids = CATALOGUE.map(({ id }) => id).sort();
    expect(Object.keys(CAUSE_WORDS).sort()).toEqual(ids);
    expect(Object.keys(CAUSE_TITLES).sort()).toEqual(ids);
  });

  test('no two are called alike', () => {
    expect(new Set(CATALOGUE.map(({ id }) => causeTitle(id))).size).toBe(CATALOGUE.length);
  });

  test.each(CATALOGUE)('$id: who is at risk is said of what is a fault, and of nothing else', (entry) => {
    expect(CAUSE_WORDS[entry.id]?.hazard !== undefined).toBe(entry.kind === 'fault');
  });
});
