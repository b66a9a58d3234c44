/**
 * Trainees of a given skill: how often each knows, reads, sees and records rightly, drawn by seed. What they do not
 * know they guess, and each concludes from what was judged, not from what is true.
 */

import { saysSound } from '../../src/attempt/marks/verdict.ts';
import { rightConclusion } from '../../src/attempt/marks/worked.ts';
import type { Answer, Attempt, NotedOf } from '../../src/attempt/record/attempt.ts';
import type { Run } from '../../src/attempt/record/run.ts';
import type { Seed } from '../../src/bench/draw.ts';
import { drawer } from '../../src/bench/draw.ts';
import { faultsAmong } from '../../src/faults/catalogue.ts';
import type { Scenario } from '../../src/scenario/scenario.ts';
import type { TestAction } from '../../src/verification/testAction.ts';
import type { Person } from './person.ts';
import {
  ALL_WELL,
  ANSWERS_ALL,
  AS_ON_A_CORRECT_UNIT,
  attemptOf,
  inTask,
  leftOut,
  NOT_AS_ON_ONE,
  NOT_SHOWN,
  notFit,
  rejected,
} from './person.ts';

/** Each the share in which it is done rightly. */
export interface Skill {
  readonly name: string;
  /** Lines and figures that are known; the other lines are guessed among three, the other figures not said. */
  readonly knows: number;
  readonly reads: number;
  /** Signs, test voltages and what tripped are written down. */
  readonly records: number;
  /** What is right is seen to be; else it is taken for not shown, or for wrong. */
  readonly accepts: number;
  /** Of what is right and not seen to be: taken for wrong. */
  readonly alarms: number;
  /** What is wrong is seen to be; else it is judged as on a correct unit. */
  readonly rejects: number;
  /** Tests that are not left out. */
  readonly does: number;
  /** The cause is found where something wrong was seen; else the block of it, in as many cases; else another. */
  readonly finds: number;
  /** Whether a lone alarm is looked at again before a verdict is based on it. */
  readonly looksAgain: boolean;
}

export const WEAK: Skill = {
  name: 'weak',
  knows: 0.3,
  reads: 0.7,
  records: 0.6,
  accepts: 0.7,
  alarms: 0.4,
  rejects: 0.3,
  does: 0.85,
  finds: 0.1,
  looksAgain: false,
};
export const MIDDLING: Skill = {
  name: 'middling',
  knows: 0.75,
  reads: 0.9,
  records: 0.85,
  accepts: 0.9,
  alarms: 0.1,
  rejects: 0.75,
  does: 0.95,
  finds: 0.5,
  looksAgain: true,
};
export const EXCELLENT: Skill = {
  name: 'excellent',
  knows: 0.97,
  reads: 0.99,
  records: 0.99,
  accepts: 0.99,
  alarms: 0,
  rejects: 0.99,
  does: 1,
  finds: 1,
  looksAgain: true,
};
/** From the least to the greatest. */
export const SKILLS: readonly Skill[] = [WEAK, MIDDLING, EXCELLENT];

/** A trainee of this skill on this scenario; another seed has another day. */
export function attemptBySkill(scenario: Scenario, file: unknown, skill: Skill, seed: Seed): Attempt {
  const draw = drawer(seed);
  const isDrawn = (share: number, what: string): boolean =>
    draw(`${skill.name} ${scenario.id} ${what}`) < share;
  return attemptOf(scenario, file, {
    predict: (right) => predicted(right, skill, isDrawn),
    type: (shown) => typed(shown, skill, isDrawn),
    judge: (right, run, action) => judged(right, run, action, skill, isDrawn),
    leavesOut: (action) => action.optional !== true && !isDrawn(skill.does, `does ${action.id}`),
    says: leftOut,
    looksAgain: skill.looksAgain,
    conclude: (run) => inTask(scenario, concluded(run, skill, isDrawn)),
  } satisfies Person);
}

type Drawn = (share: number, what: string) => boolean;

function predicted(right: NotedOf<'prediction'>, { knows }: Skill, isDrawn: Drawn): NotedOf<'prediction'> {
  const { test, lines, figures } = right;
  const guess = (of: string): Answer =>
    isDrawn(1 / 3, `guess ${of}`)
      ? (ANSWERS_ALL[0] as Answer)
      : (ANSWERS_ALL[isDrawn(1 / 2, `second guess ${of}`) ? 1 : 2] as Answer);
  return {
    ...right,
    lines: lines.map(({ id, answer }) => ({
      id,
      answer: isDrawn(knows, `knows ${test} ${id}`) ? answer : guess(`${test} ${id}`),
    })),
    figures: figures.filter(({ id }) => isDrawn(knows, `knows ${test} ${id}`)),
  };
}

function typed(
  shown: NotedOf<'observation'>,
  { reads, records }: Skill,
  isDrawn: Drawn,
): NotedOf<'observation'> {
  const { reading, value } = shown;
  const { tripped: _, volts: __, ...bare } = shown;
  const written = isDrawn(records, `records ${reading}`) ? shown : { ...bare, qualifier: null };
  // Two digits changed over, or a dot in the wrong place, is a tenth off and more.
  return isDrawn(reads, `reads ${reading}`) || value === null ? written : { ...written, value: 1.4 * value };
}

function judged(
  right: NotedOf<'judgement'>,
  run: Run,
  action: TestAction,
  { accepts, alarms, rejects }: Skill,
  isDrawn: Drawn,
): NotedOf<'judgement'> {
  const should = new Map(action.expectations(run.papers).map((line) => [line.id, line.should]));
  const { test } = right;
  return {
    ...right,
    lines: right.lines.map(({ id, judged: truth }) => {
      const correct = AS_ON_A_CORRECT_UNIT(should.get(id) === true);
      const wrong = NOT_AS_ON_ONE(should.get(id) === true);
      if (truth === wrong) return { id, judged: isDrawn(rejects, `rejects ${test} ${id}`) ? wrong : correct };
      if (isDrawn(accepts, `accepts ${test} ${id}`)) return { id, judged: truth };
      return { id, judged: isDrawn(alarms, `alarms ${test} ${id}`) ? wrong : NOT_SHOWN };
    }),
    limits: right.limits.map((one) => {
      const what = `${test} ${one.id} ${one.reading}`;
      if (one.judged === 'outside')
        return { ...one, judged: isDrawn(rejects, `rejects ${what}`) ? 'outside' : 'within' };
      return { ...one, judged: isDrawn(accepts, `accepts ${what}`) ? one.judged : 'too-close' };
    }),
  };
}

/** The verdict follows from what was called wrong; an alarm that is looked at again and was none is dropped. */
function concluded(run: Run, { looksAgain, finds }: Skill, isDrawn: Drawn): NotedOf<'conclusion'> {
  const right = rightConclusion(run);
  const all = rejected(run);
  const holds = all.filter((one) =>
    right.findings.some(({ test, id }) => test === one.test && id === one.id),
  );
  const findings = looksAgain ? holds : all;
  // What the papers say of a symptom is found like a cause.
  if (findings.length === 0) return saysSound(right.verdict) && isDrawn(finds, 'cause') ? right : ALL_WELL;
  const [fault] = faultsAmong(run.scenario.faults);
  if (isDrawn(finds, 'cause')) return { ...right, findings };
  if (isDrawn(finds, 'block')) return notFit({ cause: null, family: fault?.family ?? 'pilot', findings });
  const family = fault?.family === 'pilot' ? 'switching' : 'pilot';
  return notFit({ cause: null, family, findings });
}
