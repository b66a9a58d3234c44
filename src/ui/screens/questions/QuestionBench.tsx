/**
 * A question on the bench, handed over at the state that it shows, once it is settled: one test, with its lines filled
 * in. Nothing of it is kept or marked; the way back is to the session, where it stood.
 */
import type { ReactNode } from 'react';
import { useCallback, useEffect, useRef, useState } from 'react';
import { questionAgain } from '../../../quiz/draw.ts';
import type { Question } from '../../../quiz/question.ts';
import type { ShownState } from '../../../quiz/shown.ts';
import { shownFile, shownState } from '../../../quiz/shown.ts';
import type { KeptSession } from '../../../store/questionRecord.ts';
import { BENCH_OF_QUESTION, shownText, shownWords } from '../../../words/questionBench.ts';
import type { Bench } from '../../flow/bench.ts';
import { beginningOn } from '../../flow/start.ts';
import { useFlow } from '../../flow/useFlow.ts';
import type { OpenAttempt } from '../../flow/useOpenAttempt.ts';
import { useSliced } from '../../flow/useSliced.ts';
import { useThinkingTime } from '../../flow/useThinkingTime.ts';
import { BenchScreen } from '../bench/BenchScreen.tsx';
import { Reading } from '../Reading.tsx';
import { askedFor } from './asked.ts';
import { InAssessment, useAssessmentOn } from './InAssessment.tsx';
import { readInHand } from './sessionInHand.ts';

interface Props {
  readonly query: URLSearchParams;
  readonly openAttempt: OpenAttempt | null;
}

/** Null where it is not settled in the session in hand, or nothing is told in that one before its end. */
function settledIn(session: KeptSession | null, id: string): Question | null {
  const at = session?.ids.indexOf(id) ?? -1;
  if (session === null || at < 0 || session.answers[at] === undefined) return null;
  return askedFor(new URLSearchParams(session.address)).set === null ? questionAgain(id) : null;
}

const linkTo = (session: KeptSession | null): string =>
  session === null || session.address === '' ? '/questions' : `/questions?${session.address}`;

interface Found {
  readonly question: Question | null;
  readonly shown: ShownState | null;
  readonly back: string;
}

export function QuestionBench({ query, openAttempt }: Props) {
  const id = query.get('of') ?? '';
  const assessment = useAssessmentOn(openAttempt, id);
  const [found, setFound] = useState<Found | null>(null);
  useEffect(() => {
    let isStale = false;
    readInHand().then(({ kept: { session } }) => {
      if (isStale) return;
      const question = settledIn(session, id);
      setFound({
        question,
        shown: question === null ? null : shownState(question),
        back: linkTo(session),
      });
    });
    return () => {
      isStale = true;
    };
  }, [id]);
  if (found === null || assessment === undefined) return null;
  const { question, shown, back } = found;
  if (assessment !== null)
    return (
      <Plain back={null}>
        <InAssessment title={assessment} />
      </Plain>
    );
  if (question === null || shown === null)
    return (
      <Plain back={back}>
        <p>
          {question === null
            ? 'This question is not settled in the questions in hand. Its bench opens once it is answered.'
            : 'No bench could stand as this question shows.'}
        </p>
      </Plain>
    );
  return <Ready question={question} shown={shown} back={back} />;
}

/** `back`: null where no questions are asked. */
function Plain({ back, children }: { readonly back: string | null; readonly children: ReactNode }) {
  return (
    <Reading title={BENCH_OF_QUESTION} about="questions">
      <div className="stack prose">
        {children}
        {back === null ? null : (
          <p>
            <a className="lone" href={`#${back}`}>
              {BACK}
            </a>
          </p>
        )}
      </div>
    </Reading>
  );
}

const BACK = 'Back to the questions';
/** Lines are filled in, and judged. */
const RUNG = 1;

interface ReadyProps {
  readonly question: Question;
  readonly shown: ShownState;
  readonly back: string;
}

function Ready({ question, shown, back }: ReadyProps) {
  const make = useCallback(
    function* (): Generator<null, Bench> {
      const file = shownFile(question, shown, shownWords(question));
      return (yield* beginningOn(file, RUNG, '')).bench;
    },
    [question, shown],
  );
  const { result: bench, failed } = useSliced(make);
  return bench === null ? (
    <Plain back={back}>
      <p role="status">{failed ?? 'Getting the bench ready: it is handed over …'}</p>
    </Plain>
  ) : (
    <OnBench question={question} shown={shown} back={back} bench={bench} />
  );
}

function OnBench({ question, shown, back, bench }: ReadyProps & { readonly bench: Bench }) {
  const [state, send] = useFlow({ bench });
  const wall = useThinkingTime(0);
  const [from] = useState(() => ({ href: `#${back}`, name: 'Questions' }));
  const isBegun = useRef(false);
  const isBetween = state.matches({ working: 'choosing' });
  const hasStopped = state.matches('concluding');
  useEffect(() => {
    // Its one test is the bench: whoever leaves that, or stops, has seen it.
    if (hasStopped || (isBetween && isBegun.current)) location.replace(`#${back}`);
    else if (isBetween) send({ type: 'choose', test: shown.test });
    else isBegun.current = true;
  }, [hasStopped, isBetween, back, send, shown]);
  if (isBetween || hasStopped) return null;
  return (
    <BenchScreen
      state={state}
      send={send}
      wall={wall}
      keepFailed={false}
      beside={state.matches({ working: 'setting up' }) ? shownText(question, shown) : null}
      onNext={() => send({ type: 'next' })}
      nextName={BACK}
      from={from}
    />
  );
}
