/** A limit or a stated figure of the tutor's own decides wherever the standard's would: verification, fairness, what is judged, and words. */
import { describe, expect, test } from 'vitest';
import { debriefOf } from '../../src/attempt/marks/debrief.ts';
import { mark } from '../../src/attempt/marks/mark.ts';
import { rightConclusion } from '../../src/attempt/marks/worked.ts';
import { toItsEnd } from '../../src/bench/toItsEnd.ts';
import { lookingUp } from '../../src/fairness/dictionary.ts';
import { readScenario } from '../../src/scenario/readScenario.ts';
import { papersOf } from '../../src/scenario/scenario.ts';
import { verify } from '../../src/scenario/verify.ts';
import { ACTIONS, actionNamed } from '../../src/verification/actions.ts';
import { replaceableIn } from '../../src/verification/replaceable.ts';
import { limitSum, lineInWords, lineText } from '../../src/words/actions.ts';
import { ownLimitLines } from '../../src/words/ownLimits.ts';
import { sourceText } from '../../src/words/sources.ts';
import { attemptOf } from '../helpers/person.ts';
import { scenarioIds, scenarioNamed } from '../helpers/scenarios.ts';

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

const stated = (limit: string, value: number) => ({
  limit,
  value,
  source: 'maker’s manual, page 7',
  why: 'This make is set so.',
});

describe('a figure that a line states', () => {
  const readPeak = verify(usual)
    .actions.find(({ action }) => action.id === 'state-b')
    ?.run.samples.flatMap(({ readings }) => readings)
    .find(({ quantity, value }) => quantity === 'pilot' && value !== null && value < 10)?.value;
  if (readPeak == null) throw new Error('no peak in B was read');
  const { scenario, file: own } = jobWith([stated('state-b/high-least', 9.55)]);
  const lineOf = (of: typeof scenario, test: string, id: string) => {
    const judgedOf = verify(of).actions.find(({ action }) => action.id === test);
    const found = judgedOf?.expectations.find(({ expectation }) => expectation.id === id);
    if (found === undefined) throw new Error(`no line ${test} ${id}`);
    return found;
  };

  test('decides in the verification, in what fairness is worked out from and in the mark', () => {
    expect(readPeak).toBeLessThan(9.5);
    expect(lineOf(usual, 'state-b', 'high').finding).toBe('met');
    expect(lineOf(scenario, 'state-b', 'high').finding).toBe('broken');
    const cells = (of: typeof scenario) =>
      toItsEnd(lookingUp(of, { only: [] })).rows[0]?.cells.get('state-b');
    expect(cells(usual)?.broken).toEqual([]);
    expect(cells(scenario)?.broken).toContain('high');
    const marks = mark(scenario, attemptOf(scenario, own, { conclude: rightConclusion }));
    expect(marks.parts.judgement).toBe(marks.weights.judgement);
  });

  test('is said in the line, with its source and its reason, and in the papers', () => {
    const { expectation } = lineOf(scenario, 'state-b', 'high');
    const { text, why, source } = lineInWords('state-b', expectation);
    expect(text).toBe('brings the pilot’s positive peak to about 9 V (9.55 to 9.59 V)');
    expect(why).toMatch(/ Set by the tutor: This make is set so\.$/);
    expect(sourceText(source)).toBe('maker’s manual, page 7 (set by the tutor)');
    expect(ownLimitLines(papersOf(scenario))[0]?.text).toMatch(
      /\(9\.55 to 9\.59 V\) \(maker’s manual, page 7\)\. This make is set so\.$/,
    );
    const line = debriefOf(scenario, attemptOf(scenario, own, { conclude: rightConclusion }))
      .tests.find(({ test }) => test === 'state-b')
      ?.lines.find(({ id }) => id === 'high');
    expect(line && lineInWords('state-b', line).why).toMatch(/Set by the tutor/);
  });

  test('goes with the limit beside it where both are one figure', () => {
    const { scenario: quick } = jobWith([stated('c-to-b/opening', 0.01)]);
    const { expectation, finding } = lineOf(quick, 'c-to-b', 'off-in-time');
    expect(finding).toBe('broken');
    expect(lineText('c-to-b', expectation)).toBe(
      'switches the outlet off within 10 ms of the end of the request',
    );
    expect(lineOf(usual, 'c-to-b', 'off-in-time').finding).toBe('met');
  });

  test('is waited for where a test waits for it', () => {
    const socket = scenarioIds
      .map((id) => scenarioNamed(id))
      .find(({ scenario: one }) => one.unit.outlet === 'socket');
    if (socket === undefined) throw new Error('no job with a socket-outlet');
    const read = readScenario({
      ...(socket.file as object),
      allowed: 'all',
      own: [stated('release/after-going-greatest', 8)],
    });
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    const release = actionNamed('release');
    expect(release?.steps(papersOf(read.scenario))).toContainEqual({ op: 'wait', seconds: 8 });
    expect(release?.steps(papersOf(socket.scenario))).not.toContainEqual({ op: 'wait', seconds: 8 });
  });
});

describe('of all figures that a line states', () => {
  // No job that ships has a unit with ventilation.
  const { unit } = file as { readonly unit: object };
  const ventilated = readScenario({ ...(file as object), unit: { ...unit, ventilation: true } });
  if (!ventilated.ok) throw new Error(JSON.stringify(ventilated.problems));
  const jobs = [...scenarioIds.map((id) => scenarioNamed(id).scenario), ventilated.scenario];
  const all = jobs.flatMap((scenario) => {
    return ACTIONS.filter((action) => action.applies(papersOf(scenario))).flatMap((action) =>
      replaceableIn(action, papersOf(scenario)).flatMap((one) =>
        'figure' in one ? [{ action, one, scenario }] : [],
      ),
    );
  });

  test('those are named that a local code or a maker may put otherwise, and none that keeps somebody from harm', () => {
    expect([...new Set(all.map(({ one }) => one.name))].toSorted()).toEqual(
      [
        ...[
          'energise',
          'finish',
          'pe-open',
          'pilot-open',
          'state-a',
          'state-b',
          'state-c',
          'state-d',
          'unplug',
        ].map((id) => `${id}/high`),
        ...['state-b/frequency', 'state-b/low', 'state-c/low', 'state-c/line-to-line'],
        ...['supply-volts/line-to-line', 'supply-volts/line-to-neutral'],
      ]
        .flatMap((range) => [`${range}-least`, `${range}-greatest`])
        .concat('release/after-going-greatest', 'release/after-fault-greatest')
        .toSorted(),
    );
    for (const { action, one } of all) expect(action.stops).not.toContain(one.line.id);
  });

  test('each stands in the words of its line, as it is replaced', () => {
    const seen = new Set<string>();
    for (const { action, one, scenario } of all) {
      if (seen.has(one.name)) continue;
      seen.add(one.name);
      const value = Number((one.figure.usual + 0.123).toFixed(3));
      const papers = { ...papersOf(scenario), own: [stated(one.name, value)] };
      const line = action.expectations(papers).find(({ id }) => id === one.line.id);
      expect(line && lineText(action.id, line), one.name).toContain(String(value).replace('-', '−'));
      expect(line?.source.basis, one.name).toBe('tutor');
    }
  });

  // By plain arithmetic: an example of what is wrong that lies in the range would be right.
  test('no example of what a faulty unit would show lies in the range, however wide it is made', () => {
    const seen = new Set<string>();
    for (const { action, one, scenario } of all) {
      const key = `${action.id}/${one.line.id}`;
      if (seen.has(key)) continue;
      seen.add(key);
      const states = one.line.states ?? [];
      const wider = states.map(({ id, usual }) =>
        stated(
          `${action.id}/${id}`,
          Number((usual + (id.endsWith('-least') ? -1 : 1) * 0.3 * Math.abs(usual)).toFixed(2)),
        ),
      );
      for (const own of [[], wider]) {
        const line = action.expectations({ ...papersOf(scenario), own }).find(({ id }) => id === one.line.id);
        const said = line && lineInWords(action.id, line).otherwise;
        if (said == null || line === undefined) continue;
        const figures = [...said.matchAll(/−?\d+(?:\.\d+)?/g)].map(([text]) =>
          Number(text.replace('−', '-')),
        );
        for (const { id } of states.filter((state) => state.id.endsWith('-least'))) {
          const [least, greatest] = ['least', 'greatest'].map((end) =>
            Number(line.values?.[id.replace(/least$/, end)]),
          ) as [number, number];
          expect(greatest, key).toBeGreaterThan(least);
          expect(
            figures.filter((figure) => figure >= least && figure <= greatest),
            `${key}: ${said}`,
          ).toEqual([]);
        }
      }
    }
    expect(seen.size).toBeGreaterThan(12);
  });
});

test.each([
  [[{ ...strict, limit: 'loop/zz' }], 'own[0].limit', 'no test here has the limit "loop/zz"'],
  [[strict, strict], 'own[1].limit', 'stands in it already'],
  [[{ ...strict, limit: 'loop' }], 'own[0].limit', 'a test and its limit are expected'],
  [[{ ...strict, why: '' }], 'own[0].why', 'too short'],
  [[stated('prove-dead/live-greatest', 60)], 'own[0].limit', 'no test here has the limit'],
  [[stated('state-b/high-least', 9.7)], 'own[0].value', 'the range would end before it begins'],
  [[stated('state-b/high-least', -9)], 'own[0].value', 'a figure below 0 is expected for a negative peak'],
])('a limit that cannot be is refused, with its place', (own, path, told) => {
  const read = reading(own);
  expect(read.ok ? [] : read.problems).toContainEqual({ path, message: expect.stringContaining(told) });
});
