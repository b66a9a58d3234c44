/** The test in hand: its name, the four steps, and the one that is open. */

import type { RefObject } from 'react';
import { useEffect, useMemo, useRef, useState } from 'react';
import type { Entry, EntryOf } from '../../../attempt/record/attempt.ts';
import { linesToChooseFrom, testFigures, testLines } from '../../../attempt/record/lines.ts';
import type { Rung } from '../../../attempt/record/rung.ts';
import { rungOf } from '../../../attempt/record/rung.ts';
import { lastSitting } from '../../../attempt/record/sitting.ts';
import { limitsOf } from '../../../attempt/record/truth.ts';
import type { Scenario } from '../../../scenario/scenario.ts';
import { linesOf } from '../../../site/site.ts';
import type { TestAction } from '../../../verification/testAction.ts';
import { figureInWords, lineInWords, testPurpose } from '../../../words/actions.ts';
import { testTitle } from '../../../words/testTitles.ts';
import type { Hand } from '../../drawing/hands.ts';
import type { AttemptActor, AttemptState } from '../../flow/attemptMachine.ts';
import { stepIn } from '../../flow/attemptMachine.ts';
import type { Bench } from '../../flow/bench.ts';
import type { Measuring } from '../../flow/useMeasuring.ts';
import { perceived } from '../../flow/whatIsKnown.ts';
import type { Step } from '../../parts/Steps.tsx';
import { Steps } from '../../parts/Steps.tsx';
import { useFocus } from '../../parts/useFocus.ts';
import { MeasureStep } from '../measure/MeasureStep.tsx';
import { unwrittenSince } from '../measure/records.ts';
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
  /** The part of the bench whose positions the bar offers. */
  readonly hand: Hand | null;
  readonly onHand: (hand: Hand | null) => void;
  /** What comes after this test, by its name. */
  readonly next: { readonly name: string; readonly go: () => void };
  /** Whether another test can be chosen. */
  readonly hasOthers: boolean;
}

const STEP_OF = {
  'setting up': 'Set up',
  predicting: 'Predict',
  observing: 'Measure',
  judging: 'Judge',
  told: null,
} as const satisfies Record<string, Step | null>;
export type TestStep = keyof typeof STEP_OF;

/** Letters of a name that fit on a phone's line in the usual size; a longer one is set smaller, in two lines if need be. */
const ONE_LINE = 44;

export function TestCard(props: Props) {
  const { state, action } = props;
  const title = testTitle(action.id);
  const step = testStepOf(state);
  const name = STEP_OF[step];
  // Each step begins at its own heading.
  const heading = useFocus<HTMLHeadingElement>(step);
  return (
    <section className="step" aria-labelledby="test-heading">
      <div className="step-title">
        <h2
          id="test-heading"
          className={title.length > ONE_LINE ? 'long' : undefined}
          title={testPurpose(action.id)}
        >
          {title}
        </h2>
        {name === null ? null : (
          <h3 ref={heading} tabIndex={-1} className="unseen">
            {name}
          </h3>
        )}
      </div>
      <Steps open={name} />
      <OpenStep {...props} heading={heading} />
      <NoticedAtLock bench={state.context.bench} since={state.context.since} />
    </section>
  );
}

/** Says once what was seen and heard as the set-up acted, which happens before the next step is there; further acts that step says. */
function NoticedAtLock({ bench: { happened }, since }: { readonly bench: Bench; readonly since: number }) {
  const before = useRef(since);
  const [text, setText] = useState('');
  useEffect(() => {
    if (since === before.current) return;
    before.current = since;
    const first = happened.findIndex(({ entry }) => entry > since);
    setText(
      first < 0
        ? ''
        : perceived(happened, first)
            .map((noticed) => noticed.text)
            .join('. '),
    );
  }, [happened, since]);
  return (
    <p role="status" className="unseen">
      {text}
    </p>
  );
}

/** The step of the open test that a state shows. */
export const stepOf = (state: AttemptState): Step | null =>
  state.context.test === null ? null : STEP_OF[testStepOf(state)];

/** Behind a sheet (stopping, harm) the card stays at the step it was in. */
export function testStepOf(state: AttemptState): TestStep {
  const step = stepIn(state);
  if (step === 'harmed') return 'observing';
  return step in STEP_OF ? (step as TestStep) : 'setting up';
}

const linesOn = (rung: Rung, scenario: Scenario, action: TestAction) =>
  (rung === 3 ? linesToChooseFrom(scenario, action) : testLines(scenario, action)).map((line) =>
    lineInWords(action.id, line),
  );

/** `heading`: where the focus goes; a step that is told has its own. */
function OpenStep(props: Props & { readonly heading: RefObject<HTMLHeadingElement | null> }) {
  const { state, action, next, send, heading } = props;
  const { bench, since } = state.context;
  switch (testStepOf(state)) {
    case 'setting up':
      return <SetUpStep key={action.id} {...props} />;
    case 'predicting':
      return <PredictStep key={action.id} {...props} />;
    case 'observing':
      return <MeasuringStep {...props} />;
    case 'judging':
      return <JudgeStep {...props} />;
    case 'told':
      return (
        <Told
          bench={bench}
          action={action}
          prediction={asPrediction(bench.run.attempt.entries[since])}
          heading={heading}
          onAgain={() => send({ type: 'choose', test: action.id })}
          next={next}
        />
      );
  }
}

/** What is set: it acts at the lock. */
function SetUpStep({ state, send, hand, onHand, hasOthers }: Props) {
  const { bench, draft } = state.context;
  const { papers } = bench.run;
  return (
    <SetUp
      outlet={papers.sheet.outlet}
      lines={linesOf(papers.site)}
      now={bench.position}
      draft={draft}
      hand={hand}
      onHand={onHand}
      onDraft={(next) => send({ type: 'draft', draft: next })}
      onPredict={() => send({ type: 'predict' })}
      onLeave={hasOthers ? () => send({ type: 'leave' }) : null}
    />
  );
}

/** What is said of a correct unit; until the lock it can be taken back, and the set-up too. */
function PredictStep({ state, action, send, wall }: Props) {
  const { bench, answers, figures } = state.context;
  const { scenario, attempt } = bench.run;
  const rung = rungOf(scenario.support, attempt);
  const asking = {
    lines: linesOn(rung, scenario, action),
    figures: testFigures(scenario, action).map((figure) => figureInWords(action.id, figure)),
    onBack: () => send({ type: 'back' }),
  };
  if (rung === 1)
    return <Given {...asking} onLock={() => send({ type: 'lock', sure: null, wall: wall() })} />;
  const Asked = rung === 3 ? ChooseLines : Predict;
  return (
    <Asked
      {...asking}
      answers={answers}
      typed={figures}
      onAnswer={(id, answer) => send({ type: 'answer', id, answer })}
      onFigure={(id, value) => send({ type: 'figure', id, value })}
      onLock={(sure, lessSure) => send({ type: 'lock', sure, lessSure, wall: wall() })}
    />
  );
}

function MeasuringStep({ state, action, send, wall, measuring, hand, onHand }: Props) {
  const { bench, since, failed } = state.context;
  const { scenario, papers, attempt } = bench.run;
  const rung = rungOf(scenario.support, attempt);
  return (
    <MeasureStep
      bench={bench}
      papers={papers}
      test={action.id}
      stage={action.stage}
      since={since}
      prediction={asPrediction(attempt.entries[since])}
      lines={linesOn(rung, scenario, action)}
      tellsWhy={rung < 4}
      failed={failed}
      measuring={measuring}
      rung={rung}
      hand={hand}
      onHand={onHand}
      onDo={(...operations) => {
        const [only, ...more] = operations;
        if (only === undefined) return;
        if (more.length === 0) send({ type: 'do', operation: only, wall: wall() });
        else send({ type: 'do in a row', operations, wall: wall() });
      }}
      onNote={(note) => send({ type: 'note', note, wall: wall() })}
      onJudge={() => send({ type: 'judge' })}
    />
  );
}

function JudgeStep({ state, action, send, wall }: Props) {
  const { bench, since } = state.context;
  const { run } = bench;
  const limits = useMemo(() => limitsOf(run, action, lastSitting(run, action.id)), [run, action]);
  const before = run.attempt.entries.findLast(
    (entry, i): entry is EntryOf<'judgement'> =>
      entry.kind === 'judgement' && entry.test === action.id && i > since,
  );
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
      onBack={() => send({ type: 'back' })}
      onJudged={(judgement) =>
        send({ type: 'judged', note: { kind: 'judgement', test: action.id, ...judgement }, wall: wall() })
      }
    />
  );
}

const asPrediction = (entry: Entry | undefined): EntryOf<'prediction'> | undefined =>
  entry?.kind === 'prediction' ? entry : undefined;
