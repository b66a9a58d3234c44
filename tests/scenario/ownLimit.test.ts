/** A limit of the tutor's own decides wherever the standard's would: verification, fairness, what is judged, and words. */
import { describe, expect, test } from 'vitest';
import { mark } from '../../src/attempt/marks/mark.ts';
import { rightConclusion } from '../../src/attempt/marks/worked.ts';
import { toItsEnd } from '../../src/bench/toItsEnd.ts';
import { lookingUp } from '../../src/fairness/dictionary.ts';
import { readScenario } from '../../src/scenario/readScenario.ts';
import { papersOf } from '../../src/scenario/scenario.ts';
import { verify } from '../../src/scenario/verify.ts';
import { limitSum } from '../../src/words/actions.ts';
import { ownLimitLines } from '../../src/words/ownLimits.ts';
import { sourceText } from '../../src/words/sources.ts';
import { attemptOf } from '../helpers/person.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';

const { file } = scenarioNamed('harbour-mews');

const reading = (own: readonly object[]) => readScenario({ ...(file as object), allowed: 'all', own });

function jobWith(own: readonly object[]) {
  const read = reading(own);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read;
}

const usual = jobWith([]).scenario;
const loop = verify(usual).actions.find(({ action }) => action.id === 'loop');
const judged = loop?.limits.find(
  ({ limit, value }) => limit.quantity === 'loop' && limit.kind === 'most' && value !== null,
);
if (judged?.value == null) throw new Error('no loop limit to replace');
const name = `loop/${judged.limit.id}`;
/** Under what the sound unit reads there. */
const strict = {
  limit: name,
  value: judged.value / 2,
  source: 'college rule 4',
  why: 'The site wants a margin.',
};

describe('a stricter loop limit on a sound unit', () => {
  const { scenario, file: own } = jobWith([strict]);

  test('is broken where the standard’s is met', () => {
    expect(verify(usual).conclusion).toBe('sound');
    expect(verify(scenario).conclusion).toBe('not sound');
    const cells = (of: typeof scenario) => toItsEnd(lookingUp(of, { only: [] })).rows[0]?.cells.get('loop');
    expect(cells(usual)?.broken).toEqual([]);
    expect(cells(scenario)?.broken).toContain(judged.limit.id);
  });

  test('is what a trainee is marked by: whoever judges by it earns everything', () => {
    const marks = mark(scenario, attemptOf(scenario, own, { conclude: rightConclusion }));
    expect(marks.parts.judgement).toBe(marks.weights.judgement);
    expect(marks.gates.verdict).toBe(true);
  });

  test('is said with its source and its reason, beside the one it replaces', () => {
    const limit = verify(scenario)
      .actions.flatMap(({ limits }) => limits)
      .find((one) => one.limit.own !== undefined)?.limit;
    if (limit === undefined) throw new Error('no limit was replaced');
    expect(limitSum('loop', limit)).toMatch(
      /^at most .+Ω, set by the tutor: The site wants a margin\. \(in place of at most /,
    );
    expect(sourceText(limit.source)).toBe('college rule 4 (set by the tutor)');
    expect(ownLimitLines(papersOf(scenario))).toEqual([
      {
        term: 'Loop impedance at the outlet',
        text: expect.stringMatching(/^loop: at most .+ \(college rule 4\)\. The site wants a margin\.$/),
      },
    ]);
  });
});

test.each([
  [[{ ...strict, limit: 'loop/zz' }], 'own[0].limit', 'no test here has the limit "loop/zz"'],
  [[strict, strict], 'own[1].limit', 'stands in it already'],
  [[{ ...strict, limit: 'loop' }], 'own[0].limit', 'a test and its limit are expected'],
  [[{ ...strict, why: '' }], 'own[0].why', 'too short'],
])('a limit that cannot be is refused, with its place', (own, path, told) => {
  const read = reading(own);
  expect(read.ok ? [] : read.problems).toContainEqual({ path, message: expect.stringContaining(told) });
});
