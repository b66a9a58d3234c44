/**
 * What causes.json holds is what the bench does: a share of it is acted out again. And which act of a log is unsafe, by the
 * documents: HSE GS38 and HSG85 (isolate, lock off, prove dead with a detector proved before and after), EAWR 1989 regs 12
 * to 14 as quoted there.
 */
import { describe, expect, test } from 'vitest';
import CAUSES from '../../src/quiz/causes.json' with { type: 'json' };
import { LOGS, unsafeIn } from '../../src/quiz/kinds/acts.ts';
import { brokenBy } from '../../src/quiz/workOutCauses.ts';
import { SITES } from '../../src/scenario/aims.ts';

describe.each(SITES)('at %s', (site) => {
  const table: Readonly<Record<string, object>> = CAUSES[site];
  const causes = Object.keys(table);
  // Every ninth, beginning elsewhere on each site.
  const share = causes.filter((_, i) => i % 9 === SITES.indexOf(site));

  test.each(share)('%s breaks what the table says', (cause) => {
    expect(brokenBy(site, cause)).toEqual(table[cause]);
  });
});

/** The first unsafe act of each log; null: none. */
const FIRST_UNSAFE: Readonly<Record<string, string | null>> = {
  // Everything in its order.
  'off-locked open-cover prove-at-unit unit-off insulation': null,
  'off-locked open-cover prove-at-unit unit-off unit-on close-cover on voltage': null,
  'off-locked open-cover prove-at-unit continuity close-cover on': null,
  // HSG85: locked off, so that nobody switches on meanwhile.
  'off-not-locked open-cover prove-at-unit': 'off-not-locked',
  // EAWR reg. 14: the cover of a live unit.
  'open-cover off-locked prove-at-unit unit-off': 'open-cover',
  // HSG85: proved dead where the work is, before anything is touched.
  'off-locked open-cover unit-off insulation': 'unit-off',
  'off-locked prove-at-board open-cover unit-off': 'unit-off',
  // GS38: the detector is proved before and after the test; a meter is none.
  'off-locked open-cover prove-before-only unit-off': 'prove-before-only',
  'off-locked open-cover prove-with-meter': 'prove-with-meter',
  'off-locked open-cover prove-not-at-all unit-off': 'prove-not-at-all',
  // EAWR reg. 14: live terminals within reach; and conductors that hang free.
  'off-locked open-cover prove-at-unit on': 'on',
  'off-locked open-cover prove-at-unit unit-off close-cover on': 'on',
};

test('every log is judged by the documents too', () => {
  expect(LOGS.map((log) => log.join(' ')).sort()).toEqual(Object.keys(FIRST_UNSAFE).sort());
});

test.each(LOGS.map((log) => [log.join(' '), log] as const))('%s', (name, log) => {
  for (const site of ['single-pme', 'single-tns'] as const)
    expect(unsafeIn(site, log)[0]?.act ?? null, site).toBe(FIRST_UNSAFE[name]);
});
