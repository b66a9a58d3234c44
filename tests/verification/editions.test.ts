/** Which edition of the wiring rules is cited is the rule set's business: a test action names none. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { RULE_SET_NAMES } from '../../src/verification/rules/ruleSet.ts';
import { rulesFor } from '../../src/verification/rules/rules.ts';
import { editionNamed, editionNote } from '../../src/words/sources.ts';

const FOLDER = join(import.meta.dirname, '../../src/verification/actions');

test('no test action types an edition of the wiring rules', () => {
  const files = readdirSync(FOLDER);
  expect(files.length).toBeGreaterThan(50);
  const typed = files.filter((name) => /BS 7671:20/.test(readFileSync(join(FOLDER, name), 'utf8')));
  expect(typed).toEqual([]);
});

test.each(RULE_SET_NAMES)('%s cites itself', (name) => {
  const { regulation, remembered } = rulesFor({ rules: name });
  expect(regulation('643.1')).toEqual({ basis: 'published', where: `${name} 643.1` });
  expect(remembered('643.1')).toEqual({ basis: 'from-memory', where: `${name} 643.1` });
});

// By four trade pages: A4:2026, published 15 April 2026, is the only edition from 15 October 2026.
test('the second amendment says that it is no longer current, by what it was replaced, and what is not covered', () => {
  const { edition } = rulesFor({ rules: 'BS 7671:2018+A2:2022' });
  expect(edition.inForce).toBe(false);
  for (const said of ['A4:2026', '15 October 2026', 'A3:2024', 'Section 722'])
    expect(editionNote('BS 7671:2018+A2:2022')).toContain(said);
  expect(editionNamed('BS 7671:2018+A2:2022')).toBe('BS 7671:2018+A2:2022, no longer the current edition');
});
