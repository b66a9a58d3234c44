/**
 * The debrief. Its first screen: was the verdict right, the gates, what mattered most, one goal, and what to do next.
 * Folded below it marks by part, what was sure and wrong, the replay beside the correct twin, the cause, every line with
 * truth, reason and source, and the log. All of it is recomputed from the log.
 */

import { useCallback, useContext, useMemo, useState } from 'react';
import { flushSync } from 'react-dom';
import { Link } from 'wouter';
import type { Debrief as Told } from '../../../attempt/marks/debrief.ts';
import { debriefing } from '../../../attempt/marks/debrief.ts';
import { mattered, testsOf } from '../../../attempt/marks/mattered.ts';
import { eliminating, seekingUndone } from '../../../attempt/opened/elimination.ts';
import { tellingStep, timelineOf } from '../../../attempt/opened/timeline.ts';
import type { Lockstep, Progress } from '../../../attempt/opened/twin.ts';
import { followingLog } from '../../../attempt/opened/twin.ts';
import { rungOf } from '../../../attempt/record/rung.ts';
import { tellingOn } from '../../../fairness/told.ts';
import { stopWhy } from '../../../words/actions.ts';
import { goalText, reasonOf, TRUTH_WORDS } from '../../../words/mattered.ts';
import { RUNG_NAMES } from '../../../words/rungs.ts';
import { testTitle } from '../../../words/testTitles.ts';
import { unsafeActText } from '../../../words/unsafeActs.ts';
import { verdictTitle } from '../../../words/verdicts.ts';
import { BesideAttempt } from '../../flow/attemptContext.ts';
import type { Bench } from '../../flow/bench.ts';
import { makingBench } from '../../flow/bench.ts';
import { questionsLink } from '../../flow/questionsLink.ts';
import type { Sliced } from '../../flow/useSliced.ts';
import { useSliced } from '../../flow/useSliced.ts';
import { EditionNote } from '../../parts/EditionNote.tsx';
import { ExportButton } from '../../parts/ExportButton.tsx';
import { Foot } from '../../parts/Foot.tsx';
import { GoalKeeper } from '../../parts/GoalKeeper.tsx';
import { HandIn, isDue } from '../../parts/HandIn.tsx';
import { NotKept } from '../../parts/NotKept.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { usePageTitle } from '../../parts/pageTitle.ts';
import { Symptom } from '../../parts/Symptom.tsx';
import { useFocus } from '../../parts/useFocus.ts';
import { unitLine } from '../offered.ts';
import { DebriefTests } from './DebriefTests.tsx';
import { Fold, isRoomy, OpenedFold } from './Fold.tsx';
import { FIGURES } from './figures.ts';
import { Log } from './Log.tsx';
import { Doubts, MarkedBy } from './MarkedBy.tsx';
import { Marks, wholeOf } from './Marks.tsx';
import { NextForYou } from './NextForYou.tsx';
import { pageTitleOf } from './pageTitle.ts';
import { printFullRecord } from './printing.ts';
import { Repeated } from './Repeated.tsx';
import { Replay } from './Replay.tsx';
import { RuledOut } from './RuledOut.tsx';
import { SureAndWrong } from './SureAndWrong.tsx';
import { TestsInLines } from './TestsInLines.tsx';
import { Truth } from './Truth.tsx';
import { useNext, weakIn } from './useNext.ts';
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
      <PageHead
        title={scenario.title}
        about="concluded"
        acts={failed === null ? null : <ExportButton attempt={attempt} />}
      />
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
  const telling = useSliced(
    useMemo(() => {
      if (scenario.task !== 'find' || timeline === null || undone.result === null) return null;
      const path = timeline.tests.map(({ test }) => test);
      return () => tellingOn(scenario, path);
    }, [scenario, timeline, undone.result]),
  );
  const stepping = useStepping((lockstep?.steps.length ?? 1) - 1);
  const stepOf = (test: string) => (lockstep === null ? null : tellingStep(lockstep, test));
  const wrongSteps = (timeline?.tests ?? [])
    .filter(({ wrong }) => wrong.length > 0)
    .flatMap(({ test }) => stepOf(test) ?? []);
  const [isReplayOpen, setReplayOpen] = useState(isRoomy);
  const show = (test: string) => {
    stepping.go(stepOf(test) ?? 0);
    flushSync(() => setReplayOpen(true));
    const replay = document.getElementById('replay-heading');
    replay?.scrollIntoView({ block: 'nearest' });
    replay?.focus({ preventScroll: true });
  };
  const reasons = useMemo(() => mattered(told), [told]);
  const beside = useContext(BesideAttempt);
  const next = useNext(told);
  const weak = useMemo(() => weakIn(told), [told]);
  // Where it was at first: what comes of handing in is said there.
  const [handInFirst] = useState(() => isDue(told, beside));
  const heading = useFocus<HTMLHeadingElement>();
  usePageTitle(useMemo(() => pageTitleOf(told), [told]));
  return (
    <>
      <PageHead
        title="Debrief"
        about={`${scenario.title} · ${unitLine(scenario)} · ${RUNG_NAMES[rungOf(scenario.support, attempt)]}`}
      >
        {handInFirst ? <HandIn told={told} /> : null}
        {keepFailed ? <NotKept attempt={attempt} /> : null}
      </PageHead>
      <main className="columns debrief">
        <div className="wide-stack">
          <div className="debrief-first">
            <section aria-labelledby="verdict-heading">
              <h2 id="verdict-heading" className="result" ref={heading} tabIndex={-1}>
                {verdictText(told)}
              </h2>
              {scenario.symptom === null ? null : <Symptom text={scenario.symptom} />}
              <p>
                <strong>Gates: {gatesText(told)}</strong> {told.marks.total} of {wholeOf(told.marks)}
                {told.marks.passed === null ? '' : told.marks.passed ? ': passed' : ': not yet'}.
              </p>
            </section>
            <section aria-labelledby="mattered-heading">
              <h2 id="mattered-heading">What mattered most</h2>
              {reasons.length === 0 ? <p>Nothing that counts was wrong.</p> : null}
              <ol className="mattered">
                {reasons
                  .slice(0, MOST_REASONS)
                  .map((one) => reasonOf(one, told, FIGURES))
                  .map(({ test, text }) => (
                    <li key={`${test} ${text}`}>
                      {test === null ? null : <strong>{test}. </strong>}
                      {text}
                    </li>
                  ))}
              </ol>
            </section>
            <section aria-labelledby="goal-heading">
              <h2 id="goal-heading">One goal for next time</h2>
              <GoalKeeper
                suggested={goalText(reasons[0] ?? null, FIGURES)}
                tests={testsOf(reasons[0] ?? null)}
              />
            </section>
          </div>
          {weak.length === 0 ? null : (
            <p className="not-printed">
              <a href={`#${questionsLink(weak, 3, 'attempt')}`}>Three questions on what went wrong</a>
            </p>
          )}
          <Doubts told={told} />
          {scenario.task !== 'find' ? null : (
            <Fold id="ruled-out-heading" title="What each test ruled out" inSummary>
              {timeline === null || ruledOut === null ? (
                <p className="note">
                  {elimination.failed === null
                    ? 'Being worked out …'
                    : 'It cannot be worked out. All else stands.'}
                </p>
              ) : (
                <RuledOut
                  timeline={timeline}
                  elimination={ruledOut}
                  undone={undone.result?.best ?? null}
                  told={telling.result}
                />
              )}
            </Fold>
          )}
          <Fold id="marks-heading" title="Marks by part" inSummary>
            <Gates told={told} />
            <Marks marks={told.marks} given={told.given} />
            <MarkedBy told={told} />
            <EditionNote rules={scenario.rules} />
            <p className="note">
              One scenario is practice: a grade needs about ten. Marks are recomputed from the log.{' '}
              <Link href="/desk/marks" className="lone not-printed">
                How marks are made
              </Link>
            </p>
          </Fold>
          <SureAndWrong
            told={told}
            timeline={timeline}
            shown={lockstep?.steps[stepping.step]?.test ?? null}
            onShow={show}
          />
          <section className="stack not-printed" aria-labelledby="files-heading">
            <h2 id="files-heading">On paper, and as a file</h2>
            <div className="acts">
              <button type="button" onClick={() => window.print()}>
                Print the summary
              </button>
              <button type="button" onClick={printFullRecord}>
                Print the full record
              </button>
              <ExportButton attempt={{ ...attempt, marks: told.marks }} />
            </div>
            {handInFirst ? null : <HandIn told={told} />}
          </section>
          <TestsInLines told={told} />
        </div>
        <div className="wide-stack">
          <OpenedFold
            id="replay-heading"
            title="Step by step, beside the correct twin"
            isOpen={isReplayOpen}
            onToggle={setReplayOpen}
          >
            {lockstep === null || timeline === null ? (
              <Following following={following} />
            ) : (
              <Replay
                told={told}
                lockstep={lockstep}
                timeline={timeline}
                elimination={elimination}
                undone={undone.result?.best ?? null}
                stepping={stepping}
                wrongSteps={wrongSteps}
              />
            )}
          </OpenedFold>
          <Truth told={told} />
          <Repeated told={told} />
          <DebriefTests told={told} />
          <Log attempt={attempt} />
        </div>
      </main>
      <NextForYou
        next={next}
        isMain={!handInFirst}
        onAgain={() => onAgain(() => makingBench(scenario, attempt.scenario, attempt))}
      />
      <Foot />
    </>
  );
}

/** More than three are not kept in mind; the rest stands below. */
const MOST_REASONS = 3;

function Following({ following }: { readonly following: Sliced<Progress, Lockstep> }) {
  const { progress, failed } = following;
  return (
    // Its place is kept, so that nothing below moves in sight when it comes.
    <div className={failed === null ? 'marking' : ''}>
      <p className="note">
        {failed === null
          ? `Replaying on this unit and on its correct twin${progress === null ? ' …' : `: operation ${progress.done} of ${progress.of}`}`
          : `The log cannot be replayed: ${failed}. All else stands.`}
      </p>
    </div>
  );
}

const verdictText = ({ verdict: { said, right } }: Told): string =>
  said === null ? 'No verdict.' : `“${verdictTitle(said)}”: ${right ? 'right' : 'not right'}.`;

function gatesText({ marks }: Told): string {
  const { critical, verdict } = marks.gates;
  if (critical.length === 0 && verdict) return 'both met.';
  return verdict && critical.every(({ setAside }) => setAside !== null) ? 'set aside.' : 'not yet.';
}

function Gates({ told }: { readonly told: Told }) {
  const { critical, verdict } = told.marks.gates;
  const names = [...new Set(critical.map(({ id }) => unsafeActText(id)))];
  return (
    <>
      <p>
        {told.repaired.length === 0 ? 'A' : 'As the unit stood at the end, a'} faultless trainee{' '}
        {TRUTH_WORDS[told.verdict.truth]}
      </p>
      <p>
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
