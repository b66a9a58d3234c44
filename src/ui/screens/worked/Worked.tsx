/**
 * A worked run: the job done by somebody who does it rightly, one step after the other, forward and back. Nothing of
 * it is kept or marked; at its end the same job is the trainee's own, with the lines filled in.
 */

import { useCallback, useState } from 'react';
import { supportOf } from '../../../attempt/record/rung.ts';
import { scenarioIn } from '../../../scenario/scenario.ts';
import { answerText, JUDGED_WORDS, LIMIT_WORDS } from '../../../words/answers.ts';
import { benchTime } from '../../../words/benchTime.ts';
import { causeTitle } from '../../../words/causeTitles.ts';
import { readingTitle } from '../../../words/readings.ts';
import { RUNG_NAMES } from '../../../words/rungs.ts';
import { OWN_WORDS, SUBJECT_WORDS } from '../../../words/subjects.ts';
import { operationText } from '../../../words/trade.ts';
import { NEXT_WORDS, TELL_WORDS, VERDICT_WORDS } from '../../../words/verdicts.ts';
import { useSliced } from '../../flow/useSliced.ts';
import { figureText, shownText } from '../../format/figures.ts';
import { Foot } from '../../parts/Foot.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { Why } from '../../parts/Why.tsx';
import { recordText } from '../measure/records.ts';
import type { Offered } from '../offered.ts';
import { unitLine } from '../offered.ts';
import { WorkedSheet } from './WorkedSheet.tsx';
import type { WorkedStep } from './workedSteps.ts';
import { workingSteps } from './workedSteps.ts';

interface Props {
  readonly offered: Offered;
  readonly onNowYou: () => void;
  readonly onLeave: () => void;
}

export function Worked({ offered, onNowYou, onLeave }: Props) {
  const [at, setAt] = useState(0);
  const { result, failed } = useSliced(useCallback(() => workingOut(offered), [offered]));
  const steps = result ?? [];
  const isWorking = result === null && failed === null;
  const step = steps[at];
  const isLast = at >= steps.length - 1;
  return (
    <>
      <PageHead
        title={`${offered.title}: shown`}
        about={`${unitLine(offered)} · a worked run`}
        takesFocus
        acts={
          <button type="button" onClick={onLeave}>
            Leave
          </button>
        }
      />
      <main className="columns bench-columns leads-open worked">
        <div className="in-view">{step === undefined ? null : <WorkedSheet step={step} />}</div>
        <div className="stack card-column">
          <p className="note">
            Somebody who knows does this job here, and it shows what is wrong with it, if anything. Nothing of
            it is kept or marked.
          </p>
          <section className="stack" aria-live="polite" aria-labelledby="step-heading">
            <p className="lettering">{isWorking ? 'a moment' : `step ${at + 1} of ${steps.length}`}</p>
            <h2 id="step-heading">
              {step !== undefined
                ? titleOf(step)
                : isWorking
                  ? 'The whole job is being done …'
                  : 'This job cannot be shown'}
            </h2>
            {step === undefined ? null : <StepShown step={step} />}
          </section>
          <div className="well acts apart thumb">
            <div className="acts">
              <button type="button" disabled={at === 0} onClick={() => setAt(0)}>
                First
              </button>
              <button type="button" disabled={at === 0} onClick={() => setAt(at - 1)}>
                Step back
              </button>
              <button
                type="button"
                className={isLast ? '' : 'main'}
                disabled={isLast}
                onClick={() => setAt(at + 1)}
              >
                Step on
              </button>
            </div>
            <button type="button" className={isLast ? 'main' : 'plain'} onClick={onNowYou}>
              Now you: {RUNG_NAMES[1]}
            </button>
          </div>
        </div>
      </main>
      <Foot />
    </>
  );
}

function workingOut(offered: Offered): Generator<null, readonly WorkedStep[]> {
  const file = { ...offered, support: supportOf(1) };
  return workingSteps(scenarioIn(file), file);
}

function titleOf(step: WorkedStep): string {
  if (step.kind === 'concluded') return 'Concluded';
  const what = { lines: 'what a correct one does', done: 'done and read', judged: 'judged' }[step.kind];
  return `${step.number}. ${step.title}: ${what}`;
}

function StepShown({ step }: { readonly step: WorkedStep }) {
  switch (step.kind) {
    case 'lines':
      return <Lines step={step} />;
    case 'done':
      return <Done step={step} />;
    case 'judged':
      return <Judged step={step} />;
    case 'concluded':
      return <Concluded step={step} />;
  }
}

type Of<K extends WorkedStep['kind']> = { readonly step: Extract<WorkedStep, { kind: K }> };

function Lines({ step }: Of<'lines'>) {
  return (
    <>
      <p>{step.purpose}</p>
      <ol className="statement-list given">
        {step.lines.map((line) => (
          <li key={line.id}>
            <div>
              <span className="note">{SUBJECT_WORDS[line.subject]} </span>
              {line.text}
              <Why line={line} isOpen />
            </div>
            <strong>{answerText(line.answer)}</strong>
          </li>
        ))}
        {step.figures.map((figure) => (
          <li key={figure.id}>
            <div>
              {figure.text}
              <Why line={figure} isOpen />
            </div>
            <strong>{figureText(figure.value, figure.unit)}</strong>
          </li>
        ))}
      </ol>
    </>
  );
}

function Done({ step: { operations, noticed, readings } }: Of<'done'>) {
  return (
    <>
      <ol className="choices">
        {operations.map(({ entry, at, operation }) => (
          <li key={entry}>
            <span className="note">{benchTime(at)}</span> {operationText(operation)}
          </li>
        ))}
      </ol>
      {noticed.length === 0 ? null : (
        <ul className="choices note">
          {noticed.map(({ at, text }) => (
            <li key={`${at} ${text}`}>
              {benchTime(at)} {text}
            </li>
          ))}
        </ul>
      )}
      {readings.map(({ reading, typed }) => (
        <div key={readingTitle(reading)} className="reading">
          <p className="reading-title note">{readingTitle(reading)}</p>
          <p className="shown">{shownText(reading)}</p>
          {typed === undefined ? null : (
            <p>
              written down: <strong>{recordText(typed)}</strong>
            </p>
          )}
        </div>
      ))}
    </>
  );
}

function Judged({ step: { lines, limits } }: Of<'judged'>) {
  return (
    <ol className="statement-list given">
      {lines.map(({ text, subject, judged }) => (
        <li key={text}>
          <div>
            <span className="note">{OWN_WORDS[subject]} </span>
            {text}
          </div>
          <strong>{JUDGED_WORDS[judged]}</strong>
        </li>
      ))}
      {limits.map(({ text, sum, typed, judged }, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a list that never changes
        <li key={i}>
          <div>
            {text}
            <span className="note">
              {' '}
              {typed === undefined ? '' : `${recordText(typed)} · `}limit: {sum}
            </span>
          </div>
          <strong>{LIMIT_WORDS[judged]}</strong>
        </li>
      ))}
    </ol>
  );
}

function Concluded({ step: { conclusion } }: Of<'concluded'>) {
  const { verdict, cause, next, tell } = conclusion;
  return (
    <dl className="told">
      <dt>verdict</dt>
      <dd className="true">{VERDICT_WORDS[verdict]}</dd>
      <dt>cause</dt>
      <dd>{cause === null ? 'not known' : causeTitle(cause)}</dd>
      {next === undefined ? null : (
        <>
          <dt>what next</dt>
          <dd>{NEXT_WORDS[next]}</dd>
        </>
      )}
      {tell === undefined ? null : (
        <>
          <dt>whom to tell</dt>
          <dd>{TELL_WORDS[tell]}</dd>
        </>
      )}
    </dl>
  );
}
