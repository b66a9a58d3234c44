/**
 * The debrief: was the verdict right, the gates, marks by part, what was sure and wrong, one goal; below it every
 * line with truth, reason and source, the cause, and the log. All of it is recomputed from the log.
 */

import { useCallback, useMemo } from 'react';
import type { Debrief as Told } from '../../../attempt/debrief.ts';
import { debriefing } from '../../../attempt/debrief.ts';
import { eliminating, seekingUndone } from '../../../attempt/elimination.ts';
import { rungOf } from '../../../attempt/rung.ts';
import { tellingStep, timelineOf } from '../../../attempt/timeline.ts';
import type { Lockstep, Progress } from '../../../attempt/twin.ts';
import { followingLog } from '../../../attempt/twin.ts';
import { stopWhy, testTitle } from '../../../words/actions.ts';
import { goalText } from '../../../words/goal.ts';
import { unsafeActText } from '../../../words/unsafeActs.ts';
import type { Bench } from '../../flow/bench.ts';
import { makingBench } from '../../flow/bench.ts';
import type { Sliced } from '../../flow/useSliced.ts';
import { useSliced } from '../../flow/useSliced.ts';
import { EditionNote } from '../../parts/EditionNote.tsx';
import { ExportButton } from '../../parts/ExportButton.tsx';
import { Foot } from '../../parts/Foot.tsx';
import { GoalKeeper } from '../../parts/GoalKeeper.tsx';
import { HandIn } from '../../parts/HandIn.tsx';
import { NotKept } from '../../parts/NotKept.tsx';
import { useFocus } from '../../parts/useFocus.ts';
import { verdictTitle } from '../../words/answers.ts';
import { RUNG_NAMES } from '../../words/rungs.ts';
import { unitLine } from '../offered.ts';
import { DebriefTests } from './DebriefTests.tsx';
import { Log } from './Log.tsx';
import { MarkedBy } from './MarkedBy.tsx';
import { Marks } from './Marks.tsx';
import { pageTitleOf, usePageTitle } from './pageTitle.ts';
import { Repeated } from './Repeated.tsx';
import { Replay } from './Replay.tsx';
import { SureAndWrong } from './SureAndWrong.tsx';
import { Truth } from './Truth.tsx';
import { useStepping } from './useStepping.ts';

interface Props {
  readonly bench: Bench;
  readonly keepFailed: boolean;
  readonly onAgain: (making: () => Generator<null, Bench>) => void;
}

export function Debrief(props: Props) {
  const { scenario, attempt } = props.bench.run;
  const { result, failed } = useSliced(useCallback(() => debriefing(scenario, attempt), [scenario, attempt]));
  if (result !== null) return <WholeDebrief {...props} told={result} />;
  return (
    <>
      <header className="head">
        <div className="head-title">
          <h1>{scenario.title}</h1>
          <p>
            concluded · <strong>training only</strong>
          </p>
        </div>
        {failed === null ? null : (
          <div className="head-acts">
            <ExportButton attempt={attempt} />
          </div>
        )}
      </header>
      <main className="columns marking">
        <p role="status">
          {failed === null
            ? 'Marking, by doing it all once more …'
            : `This cannot be marked: ${failed}. The attempt is kept and can be exported.`}
        </p>
      </main>
      <Foot />
    </>
  );
}

function WholeDebrief({ bench, keepFailed, onAgain, told }: Props & { readonly told: Told }) {
  const { scenario, attempt } = bench.run;
  const following = useSliced(useCallback(() => followingLog(scenario, attempt), [scenario, attempt]));
  const lockstep = following.result;
  const elimination = useSliced(
    useMemo(() => (lockstep === null ? null : () => eliminating(lockstep)), [lockstep]),
  );
  const ruledOut = elimination.result;
  const undone = useSliced(
    useMemo(
      () => (lockstep === null || ruledOut === null ? null : () => seekingUndone(lockstep, ruledOut)),
      [lockstep, ruledOut],
    ),
  );
  const timeline = useMemo(
    () => (lockstep === null ? null : timelineOf(lockstep, told.sureAndWrong)),
    [lockstep, told],
  );
  const stepping = useStepping((lockstep?.steps.length ?? 1) - 1);
  const stepOf = (test: string) => (lockstep === null ? null : tellingStep(lockstep, test));
  const wrongSteps = (timeline?.tests ?? [])
    .filter(({ wrong }) => wrong.length > 0)
    .flatMap(({ test }) => stepOf(test) ?? []);
  const show = (test: string) => {
    stepping.go(stepOf(test) ?? 0);
    const replay = document.getElementById('replay-heading');
    replay?.scrollIntoView({ block: 'nearest' });
    replay?.focus({ preventScroll: true });
  };
  const heading = useFocus<HTMLHeadingElement>();
  usePageTitle(useMemo(() => pageTitleOf(told), [told]));
  return (
    <>
      <header className="head">
        <div className="head-title">
          <h1>Debrief</h1>
          <p>
            {scenario.title} · {unitLine(scenario)} · {RUNG_NAMES[rungOf(scenario.support, attempt)]} ·{' '}
            <strong>training only</strong>
          </p>
        </div>
        <div className="head-acts">
          <button type="button" onClick={() => window.print()}>
            Print
          </button>
          <ExportButton attempt={{ ...attempt, marks: told.marks }} />
          <button
            type="button"
            className="main"
            onClick={() => onAgain(() => makingBench(scenario, attempt.scenario, attempt))}
          >
            Practise this again
          </button>
        </div>
        <HandIn told={told} />
        {keepFailed ? <NotKept attempt={attempt} /> : null}
      </header>
      <main className="columns debrief">
        <div className="wide-stack">
          <section className="stack" aria-labelledby="verdict-heading">
            <h2 id="verdict-heading" className="result" ref={heading} tabIndex={-1}>
              {verdictText(told)}
            </h2>
            <Gates told={told} />
            <Marks marks={told.marks} given={told.given} />
            <MarkedBy told={told} />
            <EditionNote rules={scenario.rules} />
            <p className="note">
              One scenario is practice: a grade needs about ten. Marks are recomputed from the log.
            </p>
          </section>
          <SureAndWrong
            told={told}
            timeline={timeline}
            shown={lockstep?.steps[stepping.step]?.test ?? null}
            onShow={show}
          />
          <section className="stack" aria-labelledby="goal-heading">
            <h2 id="goal-heading">One goal for next time</h2>
            <GoalKeeper suggested={goalText(told.goal)} />
          </section>
        </div>
        <div className="wide-stack">
          {lockstep === null || timeline === null ? (
            <Following following={following} />
          ) : (
            <Replay
              told={told}
              lockstep={lockstep}
              timeline={timeline}
              elimination={elimination}
              undone={undone.result}
              stepping={stepping}
              wrongSteps={wrongSteps}
            />
          )}
          <Truth told={told} />
          <Repeated told={told} />
          <DebriefTests told={told} />
          <Log attempt={attempt} />
        </div>
      </main>
      <Foot />
    </>
  );
}

function Following({ following }: { readonly following: Sliced<Progress, Lockstep> }) {
  const { progress, failed } = following;
  return (
    // Its place is kept, so that nothing below moves in sight when it comes.
    <section className={`stack${failed === null ? ' marking' : ''}`} aria-labelledby="replay-heading">
      <h2 id="replay-heading" tabIndex={-1}>
        Step by step, beside the correct twin
      </h2>
      <p className="note">
        {failed === null
          ? `Replaying on this unit and on its correct twin${progress === null ? ' …' : `: operation ${progress.done} of ${progress.of}`}`
          : `The log cannot be replayed: ${failed}. All else stands.`}
      </p>
    </section>
  );
}

const verdictText = ({ verdict: { said, right } }: Told): string =>
  said === null ? 'No verdict.' : `“${verdictTitle(said)}”: ${right ? 'right' : 'not right'}.`;

const TRUTH_WORDS = {
  sound: 'finds nothing broken here and finishes: fit for service.',
  'not sound': 'finds something broken here: not fit for service.',
  'could not finish': 'cannot tell with the tests that are allowed here: could not finish.',
} as const;

function Gates({ told }: { readonly told: Told }) {
  const { critical, verdict } = told.marks.gates;
  const names = [...new Set(critical.map(({ id }) => unsafeActText(id)))];
  const isSetAside = verdict && critical.every(({ setAside }) => setAside !== null);
  return (
    <>
      <p>
        {told.repaired.length === 0 ? 'A' : 'As the unit stood at the end, a'} faultless trainee{' '}
        {TRUTH_WORDS[told.verdict.truth]}
      </p>
      <p>
        <strong>
          Gates: {names.length === 0 && verdict ? 'both met.' : isSetAside ? 'set aside.' : 'not yet.'}
        </strong>{' '}
        {names.length === 0 ? 'No critical act. ' : `Critical: ${names.join('; ')}. `}
        {verdict
          ? 'No dangerous unit accepted.'
          : 'A unit was called fit that could not be shown to be sound.'}
      </p>
      {told.stopped === null ? null : (
        <p className="note">
          {told.repaired.length === 0 ? 'A' : 'As it was met, a'} faultless trainee stops at “
          {testTitle(told.stopped.action)}”: {stopWhy(told.stopped.action, told.stopped.line)}.
        </p>
      )}
    </>
  );
}
