/** The card of the test in hand: its name, its purpose, the four steps, and the step that is open. */

import { useMemo, useRef, useState } from 'react';
import type { Entry, EntryOf } from '../../../attempt/attempt.ts';
import { linesToChooseFrom, testFigures, testLines } from '../../../attempt/lines.ts';
import { entriesAbout } from '../../../attempt/run.ts';
import type { Rung } from '../../../attempt/rung.ts';
import { rungOf } from '../../../attempt/rung.ts';
import { lastSitting } from '../../../attempt/sitting.ts';
import { limitsOf } from '../../../attempt/truth.ts';
import type { Scenario } from '../../../scenario/scenario.ts';
import { linesOf } from '../../../site/site.ts';
import type { TestAction } from '../../../verification/testAction.ts';
import { figureInWords, lineInWords, testPurpose, testTitle } from '../../../words/actions.ts';
import type { AttemptActor, AttemptState } from '../../flow/attemptMachine.ts';
import type { Measuring } from '../../flow/useMeasuring.ts';
import type { Step } from '../../parts/Steps.tsx';
import { Steps } from '../../parts/Steps.tsx';
import { useFocus } from '../../parts/useFocus.ts';
import { Observe } from '../observe/Observe.tsx';
import { unwrittenSince } from '../observe/records.ts';
import { ChooseLines } from './ChooseLines.tsx';
import { Given } from './Given.tsx';
import { Judge } from './Judge.tsx';
import { Predict } from './Predict.tsx';
import { SetUp } from './SetUp.tsx';
import { Told } from './Told.tsx';

interface Props {
  readonly state: AttemptState;
  readonly action: TestAction;
  readonly send: AttemptActor['send'];
  readonly wall: () => number;
  readonly measuring: Measuring;
  /** Where somebody is led through: to what comes after this test. */
  readonly onNext: (() => void) | null;
}

const STEPS_OF = {
  'setting up': ['Set up', 'Predict'],
  observing: ['Observe', 'Judge'],
  judging: ['Judge'],
  told: [],
} as const satisfies Record<string, readonly Step[]>;
export type Stage = keyof typeof STEPS_OF;

const HEADINGS: Readonly<Record<Stage, string>> = {
  'setting up': 'Set up',
  observing: 'Observe',
  judging: 'Judge again',
  told: 'What was true',
};

export function TestCard(props: Props) {
  const { state, action } = props;
  const stage = stageOf(state);
  // Each step begins at its own heading.
  const heading = useFocus<HTMLHeadingElement>(stage);
  return (
    <section className="test-card stack" aria-labelledby="test-heading">
      <div>
        <h2 id="test-heading">{testTitle(action.id)}</h2>
        <p className="note">{testPurpose(action.id)}</p>
      </div>
      <Steps open={STEPS_OF[stage]} />
      <h3 ref={heading} tabIndex={-1}>
        {HEADINGS[stage]}
      </h3>
      <OpenSteps {...props} />
    </section>
  );
}

/** The steps of the open test that a state shows. */
export const stepsOf = (state: AttemptState): readonly Step[] =>
  state.context.test === null ? [] : STEPS_OF[stageOf(state)];

/** Behind a sheet (stopping, harm) the card stays at the step it was in. */
export function stageOf({ context: { step } }: AttemptState): Stage {
  if (step === 'harmed') return 'observing';
  return step in STEPS_OF ? (step as Stage) : 'setting up';
}

const linesOn = (rung: Rung, scenario: Scenario, action: TestAction) =>
  (rung === 3 ? linesToChooseFrom(scenario, action) : testLines(scenario, action)).map((line) =>
    lineInWords(action.id, line),
  );

/** Every line in turn, or all of them to choose from. */
const askedOn = (rung: Rung) => (rung === 3 ? ChooseLines : Predict);

function OpenSteps(props: Props) {
  const { state, action, onNext } = props;
  const { bench, since } = state.context;
  switch (stageOf(state)) {
    case 'setting up':
      return <BeforeLock key={action.id} {...props} />;
    case 'observing':
      return <AfterLock {...props} />;
    case 'judging':
      return (
        <div className="stack">
          <JudgeStep {...props} before={entriesAbout(bench.run.attempt, 'judgement', action.id).at(-1)} />
          <button type="button" className="plain" onClick={() => props.send({ type: 'back' })}>
            Leave it as it was judged
          </button>
        </div>
      );
    case 'told':
      return (
        <Told
          run={bench.run}
          action={action}
          prediction={asPrediction(bench.run.attempt.entries[since])}
          onNext={onNext}
        />
      );
  }
}

/** What is set and what is said: both open until the lock, so that either can be changed. */
function BeforeLock({ state, action, send, wall }: Props) {
  const { bench, draft, answers, figures } = state.context;
  const { scenario, papers, attempt } = bench.run;
  const rung = rungOf(scenario.support, attempt);
  const [fits, setFits] = useState(true);
  const heading = useRef<HTMLHeadingElement>(null);
  const Asked = askedOn(rung);
  const asking = {
    heading,
    fits,
    lines: linesOn(rung, scenario, action),
    figures: testFigures(scenario, action).map((figure) => figureInWords(action.id, figure)),
  };
  return (
    <div className="wide-stack">
      <SetUp
        outlet={papers.sheet.outlet}
        lines={linesOf(papers.site)}
        now={bench.position}
        draft={draft}
        onDraft={(next) => send({ type: 'draft', draft: next })}
        onFits={setFits}
        onPredict={() => heading.current?.focus()}
        onLeave={() => send({ type: 'leave' })}
      />
      {rung === 1 ? (
        <Given {...asking} onLock={() => send({ type: 'lock', sure: null, wall: wall() })} />
      ) : (
        <Asked
          {...asking}
          answers={answers}
          typed={figures}
          onAnswer={(id, answer) => send({ type: 'answer', id, answer })}
          onFigure={(id, value) => send({ type: 'figure', id, value })}
          onLock={(sure, lessSure) => send({ type: 'lock', sure, lessSure, wall: wall() })}
        />
      )}
    </div>
  );
}

/** What is read and how it is judged: both open until the last line is judged. */
function AfterLock(props: Props) {
  const { state, action, send, wall, measuring } = props;
  const { bench, since, failed } = state.context;
  const { scenario, papers, attempt } = bench.run;
  const rung = rungOf(scenario.support, attempt);
  return (
    <div className="wide-stack">
      <Observe
        bench={bench}
        papers={papers}
        test={action.id}
        since={since}
        prediction={asPrediction(attempt.entries[since])}
        lines={linesOn(rung, scenario, action)}
        tellsWhy={rung < 4}
        failed={failed}
        measuring={measuring}
        onDo={(operation) => send({ type: 'do', operation, wall: wall() })}
        onNote={(note) => send({ type: 'note', note, wall: wall() })}
      />
      <JudgeStep {...props} />
    </div>
  );
}

interface JudgeProps extends Props {
  readonly before?: EntryOf<'judgement'> | undefined;
}

function JudgeStep({ state, action, send, wall, before }: JudgeProps) {
  const { bench, since } = state.context;
  const { run } = bench;
  const limits = useMemo(() => limitsOf(run, action, lastSitting(run, action.id)), [run, action]);
  return (
    <Judge
      run={run}
      test={action.id}
      lines={linesOn(rungOf(run.scenario.support, run.attempt), run.scenario, action).filter(
        ({ judged }) => judged,
      )}
      limits={limits}
      prediction={asPrediction(run.attempt.entries[since])}
      unwritten={unwrittenSince(bench, action.id, since)}
      before={before}
      onJudged={(judgement) =>
        send({ type: 'judged', note: { kind: 'judgement', test: action.id, ...judgement }, wall: wall() })
      }
    />
  );
}

const asPrediction = (entry: Entry | undefined): EntryOf<'prediction'> | undefined =>
  entry?.kind === 'prediction' ? entry : undefined;
