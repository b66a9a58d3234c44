/**
 * Ways of earning marks without knowing anything, or without one thing that must be known. None of them may pass
 * anywhere; tests and `npm run bench -- marks` try them on the scenarios.
 */

import { saysNotSound, saysSound } from '../../src/attempt/marks/verdict.ts';
import { rightConclusion } from '../../src/attempt/marks/worked.ts';
import type { Attempt, NotedOf } from '../../src/attempt/record/attempt.ts';
import type { Run } from '../../src/attempt/record/run.ts';
import { note, startRun } from '../../src/attempt/record/run.ts';
import type { Rung } from '../../src/attempt/record/rung.ts';
import type { Scenario } from '../../src/scenario/scenario.ts';
import { verify } from '../../src/scenario/verify.ts';
import type { TestAction } from '../../src/verification/testAction.ts';
import type { Person, Ways } from './person.ts';
import {
  ALL_WELL,
  ANSWERS_ALL,
  AS_ON_A_CORRECT_UNIT,
  attemptOf,
  doTest,
  FIT,
  inTask,
  leftOut,
  NOT_FINISHED,
  NOT_FIT,
  NOT_SHOWN,
  ONE_JUDGEMENT,
  SHOULD,
} from './person.ts';

export interface Strategy {
  readonly name: string;
  readonly attempt: (scenario: Scenario, file: unknown) => Attempt;
}

const person = (name: string, who: Person): Strategy => ({
  name,
  attempt: (scenario, file) =>
    attemptOf(scenario, file, {
      ...who,
      conclude: (run) => {
        const said = who.conclude(run);
        return said === null ? null : inTask(scenario, said);
      },
    }),
});

const concludesRightly = (run: Run): NotedOf<'conclusion'> => rightConclusion(run);

const answering = (answer: NotedOf<'prediction'>['lines'][number]['answer']): Ways => ({
  predict: (right) => ({
    ...right,
    lines: right.lines.map(({ id }) => ({ id, answer })),
    figures: [],
  }),
});

const judging = ({ line, limit }: (typeof ONE_JUDGEMENT)[number]): Ways => ({
  judge: (right) => ({
    ...right,
    lines: right.lines.map(({ id }) => ({ id, judged: line })),
    limits: right.limits.map((one) => ({ ...one, judged: limit })),
  }),
});

const asOnACorrectUnit: Ways = {
  judge: (right, run, action) => {
    const should = new Map(action.expectations(run.papers).map((line) => [line.id, line.should]));
    return {
      ...right,
      lines: right.lines.map(({ id }) => ({ id, judged: AS_ON_A_CORRECT_UNIT(should.get(id) === true) })),
      limits: right.limits.map((one) => ({ ...one, judged: 'within' as const })),
    };
  },
};

/** Another verdict than the right one, with everything else of the conclusion as it should be. */
const saying =
  (which: 0 | 1) =>
  (run: Run): NotedOf<'conclusion'> => {
    const right = rightConclusion(run);
    const all = ([FIT, NOT_FIT, NOT_FINISHED] as const).map(
      (verdict) => inTask(run.scenario, { ...right, verdict }).verdict,
    );
    // That nothing is wrong is right of what is as designed too.
    const others = all.filter(
      (verdict) =>
        saysSound(verdict) !== saysSound(right.verdict) ||
        saysNotSound(verdict) !== saysNotSound(right.verdict),
    );
    return { ...right, verdict: others[which] as NotedOf<'conclusion'>['verdict'] };
  };

const ALL_BUT_VERDICT: readonly Strategy[] = ([2, 3, 4] as Rung[]).flatMap((rung) =>
  ([0, 1] as const).map((which) =>
    person(`all right but the verdict, ${which === 0 ? 'one' : 'the other'}, rung ${rung}`, {
      rung,
      conclude: saying(which),
    }),
  ),
);

/** Done first without a thought; then once more, as it was told. */
const repeatedAsTold: Strategy = {
  name: 'every test repeated as it was told',
  attempt: (scenario, file) => {
    const careless: Ways = { ...answering(SHOULD), ...asOnACorrectUnit, type: tenPerCent };
    let run = startRun(scenario, file);
    for (const action of expectedTests(scenario)) run = doTest(doTest(run, action, careless), action, {});
    return note(run, rightConclusion(run), 0).attempt;
  },
};

const expectedTests = (scenario: Scenario): readonly TestAction[] =>
  verify(scenario).actions.map(({ action }) => action);

function tenPerCent(shown: NotedOf<'observation'>): NotedOf<'observation'> {
  const raised = (['low', 'duty', 'amps', 'tripMs'] as const).flatMap((name) =>
    shown[name] === undefined ? [] : [[name, 1.1 * shown[name]] as const],
  );
  return {
    ...shown,
    value: shown.value === null ? null : 1.1 * shown.value,
    ...Object.fromEntries(raised),
  };
}

const nothingDone = (name: string, conclusion: NotedOf<'conclusion'> | null, says: boolean): Strategy =>
  person(name, {
    leavesOut: () => true,
    says: (test) => (says ? leftOut(test) : null),
    conclude: () => conclusion,
  });

export const STRATEGIES: readonly Strategy[] = [
  ...ANSWERS_ALL.map((answer, i) =>
    person(`one answer to everything: ${answer}`, {
      ...answering(answer),
      ...judging(ONE_JUDGEMENT[i] as (typeof ONE_JUDGEMENT)[number]),
      looksAgain: true,
      conclude: () => ALL_WELL,
    }),
  ),
  ...ANSWERS_ALL.map((answer) =>
    person(`every prediction: ${answer}, all else right`, {
      ...answering(answer),
      conclude: concludesRightly,
    }),
  ),
  ...ONE_JUDGEMENT.map((one) =>
    person(`every judgement: ${one.line}, all else right`, {
      ...judging(one),
      looksAgain: true,
      conclude: concludesRightly,
    }),
  ),
  person('not shown everywhere, verdict fit', {
    judge: (right) => ({ ...right, lines: right.lines.map(({ id }) => ({ id, judged: NOT_SHOWN })) }),
    conclude: () => ALL_WELL,
  }),
  person('every prediction should, figures right, judged as on a correct unit, verdict fit', {
    ...answering(SHOULD),
    ...asOnACorrectUnit,
    conclude: () => ALL_WELL,
  }),
  repeatedAsTold,
  ...ALL_BUT_VERDICT,
  person('every figure 10 % wrong', { type: tenPerCent, conclude: concludesRightly }),
  nothingDone('all left out, each with a reason', ALL_WELL, true),
  nothingDone('nothing done, verdict fit', ALL_WELL, false),
  nothingDone('nothing done', null, false),
];
