/** The card of the test in hand: its name, its purpose, the four steps, and the step that is open. */
import { useEffect, useRef } from 'react';
import type { Entry, EntryOf } from '../../../attempt/attempt.ts';
import { linesToChooseFrom, testFigures, testLines } from '../../../attempt/lines.ts';
import type { Rung } from '../../../attempt/rung.ts';
import { rungOf } from '../../../attempt/rung.ts';
import { lastSitting } from '../../../attempt/sitting.ts';
import { limitsOf } from '../../../attempt/truth.ts';
import { linesOf } from '../../../site/site.ts';
import type { TestAction } from '../../../verification/testAction.ts';
import type { AttemptActor, AttemptState } from '../../flow/attemptMachine.ts';
import type { Measuring } from '../../flow/useMeasuring.ts';
import type { Step } from '../../parts/Steps.tsx';
import { Steps } from '../../parts/Steps.tsx';
import { Observe } from '../observe/Observe.tsx';
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
}

const STEP_OF = {
  'setting up': 'Set up',
  predicting: 'Predict',
  observing: 'Observe',
  judging: 'Judge',
  told: 'Judge',
} as const satisfies Record<string, Step>;
export type Stage = keyof typeof STEP_OF;

export function TestCard({ state, action, send, wall, measuring }: Props) {
  const stage = stageOf(state);
  const heading = useRef<HTMLHeadingElement>(null);
  // Each step begins at its own heading, for keys and for whoever listens.
  // biome-ignore lint/correctness/useExhaustiveDependencies: the step is the very occasion
  useEffect(() => heading.current?.focus(), [stage]);
  return (
    <section className="test-card stack" aria-labelledby="test-heading">
      <div>
        <h2 id="test-heading">{action.title}</h2>
        <p className="note">{action.purpose}</p>
      </div>
      <Steps open={STEP_OF[stage]} allDone={stage === 'told'} />
      <h3 ref={heading} tabIndex={-1}>
        {stage === 'told' ? 'What was true' : STEP_OF[stage]}
      </h3>
      <OpenStep stage={stage} state={state} action={action} send={send} wall={wall} measuring={measuring} />
    </section>
  );
}

/** The step of the open test that a state shows; null between tests. */
export const stepOf = (state: AttemptState): Step | null =>
  state.context.test === null ? null : STEP_OF[stageOf(state)];

/** Behind a sheet (stopping, harm) the card stays at the step it was in. */
export function stageOf({ context: { step } }: AttemptState): Stage {
  if (step === 'harmed') return 'observing';
  return step in STEP_OF ? (step as Stage) : 'setting up';
}

/** Every line in turn, or all of them to choose from. */
const askedOn = (rung: Rung) => (rung === 3 ? ChooseLines : Predict);

function OpenStep({ stage, state, action, send, wall, measuring }: Props & { readonly stage: Stage }) {
  const { bench, draft, answers, figures, since, failed } = state.context;
  const { scenario, papers, attempt } = bench.run;
  const rung = rungOf(scenario.support, attempt);
  const lines = rung === 3 ? linesToChooseFrom(scenario, action) : testLines(scenario, action);
  const Asked = askedOn(rung);
  const prediction = asPrediction(attempt.entries[since]);
  switch (stage) {
    case 'setting up':
      return (
        <SetUp
          outlet={papers.sheet.outlet}
          lines={linesOf(papers.site)}
          now={bench.position}
          draft={draft}
          onDraft={(next) => send({ type: 'draft', draft: next })}
          onReady={() => send({ type: 'ready' })}
          onLeave={() => send({ type: 'leave' })}
        />
      );
    case 'predicting':
      return rung === 1 ? (
        <Given
          lines={lines}
          figures={testFigures(scenario, action)}
          onLock={() => send({ type: 'lock', sure: null, wall: wall() })}
          onBack={() => send({ type: 'back' })}
        />
      ) : (
        <Asked
          lines={lines}
          figures={testFigures(scenario, action)}
          answers={answers}
          typed={figures}
          onAnswer={(id, answer) => send({ type: 'answer', id, answer })}
          onFigure={(id, value) => send({ type: 'figure', id, value })}
          onLock={(sure) => send({ type: 'lock', sure, wall: wall() })}
          onBack={() => send({ type: 'back' })}
        />
      );
    case 'observing':
      return (
        <Observe
          bench={bench}
          papers={papers}
          test={action.id}
          since={since}
          prediction={prediction}
          lines={lines}
          tellsWhy={rung < 4}
          failed={failed}
          measuring={measuring}
          onDo={(operation) => send({ type: 'do', operation, wall: wall() })}
          onNote={(note) => send({ type: 'note', note, wall: wall() })}
          onJudge={() => send({ type: 'judge' })}
        />
      );
    case 'judging':
      return (
        <Judge
          run={bench.run}
          lines={lines.filter(({ judged }) => judged)}
          limits={limitsOf(bench.run, action, lastSitting(bench.run, action.id))}
          prediction={prediction}
          onJudged={(judgement) =>
            send({ type: 'judged', note: { kind: 'judgement', test: action.id, ...judgement }, wall: wall() })
          }
          onBack={() => send({ type: 'back' })}
        />
      );
    case 'told':
      return (
        <Told run={bench.run} action={action} prediction={prediction} onNext={() => send({ type: 'next' })} />
      );
  }
}

const asPrediction = (entry: Entry | undefined): EntryOf<'prediction'> | undefined =>
  entry?.kind === 'prediction' ? entry : undefined;
