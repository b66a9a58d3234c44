/**
 * The debrief: was the verdict right, the gates, marks by part, what was sure and wrong, one goal; below it every
 * line with truth, reason and source, the cause, and the log. All of it is recomputed from the log.
 */
import { useEffect, useMemo, useRef } from 'react';
import { headOf } from '../../../attempt/attempt.ts';
import type { Debrief as Told } from '../../../attempt/debrief.ts';
import { debriefOf } from '../../../attempt/debrief.ts';
import { makeAttemptText } from '../../../attempt/file.ts';
import type { Bench } from '../../flow/bench.ts';
import { newBench } from '../../flow/bench.ts';
import { ExportButton } from '../../parts/ExportButton.tsx';
import { Foot } from '../../parts/Foot.tsx';
import { HandIn } from '../../parts/HandIn.tsx';
import { NotKept } from '../../parts/NotKept.tsx';
import { benchTime } from '../../words/figures.ts';
import { SUPPORT_WORDS, unitLine } from '../offered.ts';
import { DebriefTests } from './DebriefTests.tsx';
import { Log } from './Log.tsx';
import { Marks } from './Marks.tsx';
import { Repeated } from './Repeated.tsx';
import { SureAndWrong } from './SureAndWrong.tsx';
import { Truth } from './Truth.tsx';

interface Props {
  readonly bench: Bench;
  readonly keepFailed: boolean;
  readonly onAgain: (bench: Bench) => void;
}

export function Debrief({ bench, keepFailed, onAgain }: Props) {
  const { scenario, attempt } = bench.run;
  const told = useMemo(() => debriefOf(scenario, attempt), [scenario, attempt]);
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  return (
    <>
      <header className="head">
        <div className="head-title">
          <h1>Debrief</h1>
          <p>
            {scenario.title} · {unitLine(scenario)} · {SUPPORT_WORDS[scenario.support]} ·{' '}
            <strong>training only</strong>
          </p>
        </div>
        <div className="head-acts">
          <button type="button" onClick={() => window.print()}>
            Print
          </button>
          <ExportButton attempt={attempt} text={makeAttemptText({ ...attempt, marks: told.marks })} />
          <button
            type="button"
            className="main"
            onClick={() => onAgain(newBench(scenario, attempt.scenario, attempt.trainee))}
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
            <Marks marks={told.marks} scenario={scenario} />
            <p className="note">
              One scenario is practice: a grade needs about ten. Marks are recomputed from the log.
            </p>
          </section>
          <section className="stack" aria-labelledby="goal-heading">
            <h2 id="goal-heading">One goal for next time</h2>
            <p>{told.goal}</p>
          </section>
        </div>
        <div className="wide-stack">
          <SureAndWrong told={told} />
          <Truth told={told} />
          <Repeated told={told} />
          <DebriefTests told={told} />
          <Log attempt={attempt} />
          <TitleBlock told={told} />
        </div>
      </main>
      <Foot />
    </>
  );
}

const verdictText = ({ verdict: { said, right } }: Told): string =>
  said === null
    ? 'No verdict.'
    : `“${said.charAt(0).toUpperCase()}${said.slice(1)}”: ${right ? 'right' : 'not right'}.`;

const titleOf = ({ tests }: Told, id: string): string => tests.find(({ test }) => test === id)?.title ?? id;

const TRUTH_WORDS = {
  sound: 'finds nothing broken here and finishes: fit for service.',
  'not sound': 'finds something broken here: not fit for service.',
  'could not finish': 'cannot finish here.',
} as const;

function Gates({ told }: { readonly told: Told }) {
  const { critical, verdict } = told.marks.gates;
  const names = [...new Set(critical.map(({ act }) => act))];
  return (
    <>
      <p>
        {told.repaired.length === 0 ? 'A' : 'As the unit stood at the end, a'} faultless trainee{' '}
        {TRUTH_WORDS[told.verdict.truth]}
      </p>
      <p>
        <strong>
          Gates: {names.length === 0 && verdict ? 'both met.' : told.marks.passed ? 'set aside.' : 'not yet.'}
        </strong>{' '}
        {names.length === 0 ? 'No critical act. ' : `Critical: ${names.join('; ')}. `}
        {verdict ? 'No dangerous unit accepted.' : 'A unit that is not sound was accepted.'}
      </p>
      {told.stopped === null ? null : (
        <p className="note">
          {told.repaired.length === 0 ? 'A' : 'As it was met, a'} faultless trainee stops at “
          {titleOf(told, told.stopped.action)}”: {told.stopped.why}.
        </p>
      )}
    </>
  );
}

function TitleBlock({ told }: { readonly told: Told }) {
  const { scenario, attempt } = told.run;
  return (
    <dl className="title-block sheet">
      <div>
        <dt>job</dt>
        <dd>{scenario.title}</dd>
      </div>
      {attempt.trainee === undefined ? null : (
        <div>
          <dt>trainee</dt>
          <dd>{attempt.trainee}</dd>
        </div>
      )}
      <div>
        <dt>rules</dt>
        <dd>{scenario.rules}</dd>
      </div>
      <div>
        <dt>bench time</dt>
        <dd>{benchTime(told.run.times.at(-1) ?? 0)}</dd>
      </div>
      <div>
        <dt>record</dt>
        <dd>{headOf(attempt).toUpperCase()}</dd>
      </div>
      <div>
        <dt>training record</dt>
        <dd>no certificate, no evidence of competence on real equipment</dd>
      </div>
    </dl>
  );
}
