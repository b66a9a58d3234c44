// What mattered most comes in its order, each in a sentence with test, line and figure, and the first is the goal.

import { describe, expect, test } from 'vitest';
import { debriefOf } from '../../src/attempt/marks/debrief.ts';
import { mattered } from '../../src/attempt/marks/mattered.ts';
import { FIGURES } from '../../src/ui/screens/debrief/figures.ts';
import { goalText, reasonOf } from '../../src/words/mattered.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';
import type { Habits } from '../helpers/trainee.ts';
import { attemptBy } from '../helpers/trainee.ts';

function toldOf(id: string, habits: Habits = {}) {
  const { scenario, file } = scenarioNamed(id);
  const told = debriefOf(scenario, attemptBy(scenario, file, habits));
  const all = mattered(told);
  return {
    kinds: all.map(({ what }) => what),
    reasons: all.map((one) => reasonOf(one, told, FIGURES)),
    goal: goalText(all[0] ?? null, FIGURES),
  };
}

/** Of the poor joint that this circuit has, all is judged as if it were fine. */
const ACCEPTING: Habits = {
  judge: (_, sound) => sound,
  judgeLimit: () => 'within',
};
const CALLING_FIT: Habits = {
  conclude: (right) => ({ ...right, verdict: 'fit', cause: 'nothing', family: null }),
};

describe('what mattered most', () => {
  test('nothing, where nothing that counts was wrong', () => {
    expect(toldOf('mill-race')).toEqual({
      kinds: [],
      reasons: [],
      goal: 'Do the same on a unit that you have not seen.',
    });
  });

  test('a limit judged wrongly names the figure as it was written, and the limit', () => {
    const { kinds, reasons, goal } = toldOf('mill-race', ACCEPTING);
    const at = kinds.indexOf('misjudged limit');
    expect(kinds.slice(0, at)).toEqual([]);
    expect(reasons[at]?.test).not.toBe(null);
    expect(reasons[at]?.text).toMatch(
      /^You wrote \d+\.\d+\u202fΩ against at most \d+\.\d+\u202fΩ and judged it within; it is outside\.$/,
    );
    expect(goal).toMatch(
      /^“.+”: you wrote \d.+ against at most .+ and judged it within\. Next time judge it outside\.$/,
    );
    // Of one test one of a kind.
    expect(new Set(reasons.map(({ test: of, text }) => `${of} ${text}`)).size).toBe(reasons.length);
  });

  test('a unit called fit comes before what was misjudged, with the figure that speaks against it', () => {
    const { kinds, reasons, goal } = toldOf('mill-race', { ...ACCEPTING, ...CALLING_FIT });
    expect(kinds[0]).toBe('called fit');
    expect(kinds).toContain('misjudged limit');
    expect(reasons[0]?.text).toMatch(
      /^You said “fit for service”: .+ reads [^,]*\d.*, and .*\d.* on a correct unit\.$/,
    );
    expect(goal).toMatch(
      /^Before you find nothing wrong, hold the figures of “.+” against its lines: .+\d.+\.$/,
    );
  });

  test('a critical act comes before all, by its test', () => {
    const { kinds, reasons, goal } = toldOf('mill-race', {
      ...CALLING_FIT,
      operations: (_, steps) => steps.filter(({ op }) => op !== 'isolate'),
    });
    expect(kinds[0]).toBe('critical act');
    expect(kinds).toContain('called fit');
    expect(kinds.lastIndexOf('critical act')).toBeLessThan(kinds.indexOf('called fit'));
    expect(reasons[0]?.text).toMatch(/^You did what is never safe: /);
    expect(goal).toMatch(/^Next time, in “.+”, without this: /);
  });

  test('what was sure and wrong comes before what was not sure', () => {
    const wrongIn = (sure: 'would-sign' | 'guessing') => ({
      predict: ((right, _, { id }) =>
        id === 'papers'
          ? { ...right, sure, lines: right.lines.map((line) => ({ ...line, answer: 'cant-tell' as const })) }
          : right) satisfies Habits['predict'],
      judgeLimit: () => 'within' as const,
    });
    expect(toldOf('mill-race', wrongIn('would-sign')).kinds[0]).toBe('wrong line');
    const unsure = toldOf('mill-race', wrongIn('guessing'));
    expect(unsure.kinds[0]).toBe('misjudged limit');
    expect(unsure.kinds.at(-1)).toBe('wrong line');
    expect(unsure.reasons.at(-1)?.text).toMatch(/^“.+”: you said “can’t tell”, right is “should( not)?”/);
  });

  test('a misreading says what was shown and what was written', () => {
    const { kinds, reasons, goal } = toldOf('harbour-mews', {
      type: (typed, { test: of }) =>
        of === 'ze' && typed.value !== null ? { ...typed, value: 10 * typed.value } : typed,
    });
    expect(kinds[0]).toBe('misread');
    expect(reasons[0]?.text).toMatch(/^The display showed .*\d.*[VΩ] \(.+\), and you wrote .*\d.*[VΩ]\.$/);
    expect(goal).toMatch(
      /^“.+”: write the figure that the display shows, with its unit\. The display showed .+\.$/,
    );
  });

  test('tests left out are named, two of them, and how many more', () => {
    const { kinds, reasons, goal } = toldOf('harbour-mews', {
      tests: (all) => all.filter(({ id }) => !['diode', 'recovery', 'stop'].includes(id)),
    });
    expect(kinds).toContain('tests left out');
    const { text } = reasons[kinds.indexOf('tests left out')] ?? { text: '' };
    expect(text).toMatch(/^You left out “[^”]+”, “[^”]+” and 1 more\.$/);
    expect(goal).toMatch(/^Do the tests that you left out: “/);
  });
});
