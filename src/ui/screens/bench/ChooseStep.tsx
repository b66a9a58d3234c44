/** Between tests: one is chosen from those of an aim, something is put right, or the work is concluded. */
import type { RefObject } from 'react';
import type { AimId } from '../../../scenario/aims.ts';
import { testPurpose } from '../../../words/actions.ts';
import { AIM_WORDS } from '../../../words/aims.ts';
import { testTitle } from '../../../words/testTitles.ts';
import { Symptom } from '../../parts/Symptom.tsx';
import { AimList } from './AimList.tsx';
import type { AskedAim } from './askedAims.ts';
import { StepFrame } from './StepFrame.tsx';

interface Props {
  readonly aims: readonly AskedAim[];
  readonly open: AimId | null;
  /** Of a job that asks what is behind one: then its few tests stand side by side, each with what was found in it. */
  readonly symptom: Symptomatic | null;
  /** Whether the aims stand in the rail: then only the open one is shown here. */
  readonly hasRail: boolean;
  readonly heading: RefObject<HTMLHeadingElement | null>;
  /** The test just judged, as long as it may be judged again. */
  readonly again: string | null;
  /** The next in order, where they are led through in it. */
  readonly next: string | null;
  /** Every test of the job was done once. */
  readonly isAllDone: boolean;
  readonly onOpen: (aim: AimId | null) => void;
  readonly onChoose: (test: string) => void;
  readonly onAgain: () => void;
  readonly onPutRight: () => void;
  readonly onConclude: () => void;
}

interface Symptomatic {
  readonly text: string;
  readonly found: (test: string) => string | null;
}

export function ChooseStep(props: Props) {
  const { aims, open, symptom, hasRail, heading, again, next, isAllDone } = props;
  const shown = aims.length === 1 || hasRail ? (aims.find(({ id }) => id === open) ?? aims[0]) : undefined;
  return (
    <section className="step" aria-labelledby="choose-heading">
      <div className="step-title">
        <h2 id="choose-heading" ref={heading} tabIndex={-1}>
          Choose a test
        </h2>
      </div>
      <StepFrame
        bar={
          <>
            {again === null ? (
              <p className="bar-line note">
                {next !== null
                  ? 'Led in order; any other test can be chosen too.'
                  : isAllDone
                    ? 'Every test was done once. Conclude, or do one again.'
                    : 'Any order; nothing stops a wrong choice.'}
              </p>
            ) : (
              <div className="acts apart">
                <span className="note">Judged: {testTitle(again)}.</span>
                <button type="button" className="plain" onClick={props.onAgain}>
                  Judge it again
                </button>
              </div>
            )}
            <div className="bar-acts">
              <button type="button" onClick={props.onPutRight} aria-haspopup="dialog">
                Put something right…
              </button>
              <button
                type="button"
                className={isAllDone && next === null ? 'main' : ''}
                onClick={props.onConclude}
              >
                Conclude…
              </button>
            </div>
            {next === null ? null : (
              <button type="button" className="main" onClick={() => props.onChoose(next)}>
                Next: {testTitle(next)}
              </button>
            )}
          </>
        }
      >
        {symptom !== null ? (
          <div className="stack">
            <Symptom text={symptom.text} />
            <ul className="tests-of">
              {aims
                .flatMap(({ tests }) => tests)
                .map(({ id }) => (
                  <li key={id}>
                    <button type="button" className="plain" onClick={() => props.onChoose(id)}>
                      {testTitle(id)}
                    </button>
                    {symptom.found(id) === null ? null : <p className="note">{symptom.found(id)}</p>}
                  </li>
                ))}
            </ul>
          </div>
        ) : shown !== undefined ? (
          <section className="stack" aria-labelledby="aim-heading">
            <h3 id="aim-heading">{AIM_WORDS[shown.id].question}</h3>
            <p className="note">{AIM_WORDS[shown.id].line}</p>
            <TestsOf aim={shown} onChoose={props.onChoose} withPurpose />
          </section>
        ) : (
          <AimList aims={aims} open={open} onOpen={props.onOpen}>
            {(aim) => <TestsOf aim={aim} onChoose={props.onChoose} />}
          </AimList>
        )}
      </StepFrame>
    </section>
  );
}

interface TestsProps {
  readonly aim: AskedAim;
  readonly onChoose: (test: string) => void;
  readonly withPurpose?: boolean;
}

function TestsOf({ aim, onChoose, withPurpose = false }: TestsProps) {
  return (
    <ul className="tests-of">
      {aim.tests.map(({ id }) => (
        <li key={id}>
          <button type="button" className="plain" onClick={() => onChoose(id)}>
            {testTitle(id)}
          </button>
          {withPurpose ? <p className="note">{testPurpose(id)}</p> : null}
        </li>
      ))}
    </ul>
  );
}
