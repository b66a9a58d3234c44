/**
 * Somebody who changes nothing finds out on one page how marks are made: every part with its points, every hurdle, every
 * gate with all critical acts, the pass mark, and what never costs anything. Points, hurdles and gates are written here
 * once more by hand, from the paper that the marks were designed by; what the marks do with them is held in tests/attempt.
 */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import { Router } from 'wouter';
import { HURDLES } from '../../src/attempt/marks/hurdles.ts';
import type { UnsafeId } from '../../src/bench/unsafe.ts';
import { UNSAFE_ACTS } from '../../src/bench/unsafe.ts';
import { PARTS } from '../../src/scenario/tasks.ts';
import { HowMarked } from '../../src/ui/screens/desk/HowMarked.tsx';
import { UNSAFE_ACT_WORDS } from '../../src/words/unsafeActs.ts';

const page = renderToStaticMarkup(
  <Router ssrPath="/desk/marks">
    <HowMarked />
  </Router>,
)
  .replaceAll('&#x27;', "'")
  .replaceAll('&amp;', '&');
const text = page.replaceAll(/<[^>]+>/g, ' ').replaceAll(/\s+/g, ' ');

describe('the page on how marks are made', () => {
  const points = { prediction: 15, observation: 10, judgement: 30, record: 10, diagnosis: 20, reasons: 15 };

  test('has each part with its points, 100 in all', () => {
    expect(Object.keys(points).toSorted()).toEqual(Object.keys(PARTS).toSorted());
    expect(Object.values(points).reduce((sum, one) => sum + one, 0)).toBe(100);
    const rows = [...page.matchAll(/<tr><th scope="row">(.*?)<\/th><td>(\d+)<\/td><td>(\d+)<\/td>/g)];
    expect(rows.map(([, , whole]) => Number(whole))).toEqual(
      Object.keys(PARTS).map((part) => points[part as keyof typeof points]),
    );
    expect(rows.reduce((sum, [, , , find]) => sum + Number(find), 0)).toBe(100);
  });

  const hurdles = {
    verdict: 'the right verdict',
    judgement: 'judgement at least 60 %; at least half of what was wrong rejected',
    diagnosis: 'diagnosis at least half',
    prediction: 'prediction at least half, with guessing taken off',
    observation: 'observation at least half, and half of the readings with a figure other than 0',
  };
  test.each(HURDLES)('has the hurdle: %s', (hurdle) => {
    expect(text).toContain(hurdles[hurdle]);
  });

  test('has the pass mark, both gates, and that a gate set aside is shown', () => {
    expect(text).toContain('Passed means 70 points');
    expect(text).toContain('a critical unsafe act');
    expect(text).toContain('a unit that is not sound called fit for service');
    expect(text).toContain('A tutor may set a gate aside, with a reason; both are shown');
  });

  test.each((Object.keys(UNSAFE_ACTS) as UnsafeId[]).filter((id) => UNSAFE_ACTS[id].critical))(
    'publishes the critical act %s with its reason',
    (id) => {
      expect(text).toContain(UNSAFE_ACT_WORDS[id].act);
      expect(text).toContain(UNSAFE_ACT_WORDS[id].why);
    },
  );

  test('says that marks come of the replay alone, that sureness and time are in none, and that one job is practice', () => {
    expect(text).toContain('Marks are never read from a file');
    expect(text).toContain('How sure somebody was. It is told, and never marked.');
    expect(text).toContain('Time, and the number of tests');
    expect(text).toContain('a grade needs about ten');
  });
});
