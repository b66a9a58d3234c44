/**
 * The first screen: one sentence, one filled button that says what is next and why, the doors, what leads to the symptoms,
 * and the twelve aims.
 * What simulates is loaded when a job begins.
 */
import { useMemo, useRef, useState } from 'react';
import { Link } from 'wouter';
import { FIRST_RUN } from '../../../store/choices.ts';
import type { DueTopics } from '../../../store/comesBack.ts';
import { aimAttempts } from '../../../store/jobResults.ts';
import type { Next } from '../../../store/next.ts';
import { nextForYou } from '../../../store/next.ts';
import { aimWithMinutes } from '../../../words/aims.ts';
import { dueText, QUESTIONS_NAME, whyText } from '../../../words/next.ts';
import { aimLink, anySeed } from '../../flow/aimLinks.ts';
import type { Kept } from '../../flow/useKeptHere.ts';
import { useKeptHere } from '../../flow/useKeptHere.ts';
import type { OpenAttempt } from '../../flow/useOpenAttempt.ts';
import { dayMonthText } from '../../format/dates.ts';
import { CAUTION_LINE, Cautions } from '../../parts/Cautions.tsx';
import { Foot } from '../../parts/Foot.tsx';
import { HeadLinks } from '../../parts/HeadLinks.tsx';
import { KeptHere, unfinishedIn } from '../../parts/KeptHere.tsx';
import { NewVersion } from '../../parts/NewVersion.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { Problems } from '../../parts/Problems.tsx';
import type { Refused, Wish } from '../wish.ts';
import { AimTable } from './AimTable.tsx';

interface Props {
  readonly refused: Refused | null;
  readonly openAttempt: OpenAttempt | null;
  readonly onWish: (wish: Wish) => void;
  readonly onReturn: () => void;
}

export function Home(props: Props) {
  const [cautions, setCautions] = useState(false);
  const kept = useKeptHere();
  return (
    <div className="home">
      <PageHead
        title="Charge point trainer"
        about="simulated units"
        acts={<HeadLinks onCautions={() => setCautions(true)} />}
      />
      {kept === null ? <main className="marking" /> : <Main {...props} kept={kept} />}
      {/* Not before what would push it away, and with it a focus that has come there. */}
      {kept === null ? null : <Foot />}
      {cautions ? <Cautions rules={null} onClose={() => setCautions(false)} /> : null}
    </div>
  );
}

function Main({ refused, openAttempt, onWish, onReturn, kept }: Props & { readonly kept: Kept }) {
  const [putAway, setPutAway] = useState<readonly string[]>([]);
  const [seed] = useState(anySeed);
  const table = useRef<HTMLHeadingElement>(null);
  const unfinished = unfinishedIn(kept, openAttempt, putAway);
  const next = useMemo(
    () =>
      nextForYou({
        kept: kept.all,
        goal: kept.goal,
        due: kept.due,
        hadFirstRun: FIRST_RUN.kept() === 'done',
        now: Date.now(),
      }),
    [kept],
  );
  return (
    <main>
      <div className="wide-stack">
        <div className="opening">
          <p className="sentence">
            Say what a sound charge point should do, measure it, and find what is wrong before it hurts
            anyone.
          </p>
          <NextLink next={next} seed={seed} isFirst={unfinished === null} />
        </div>
        <NewVersion openAttempt={openAttempt} />
        <KeptHere
          kept={kept}
          unfinished={unfinished}
          onGoOn={() =>
            unfinished === null || unfinished.about === null
              ? onReturn()
              : onWish({ kind: 'go on', about: unfinished.about })
          }
          onPutAway={(id) => {
            setPutAway([...putAway, id]);
            onWish({ kind: 'put away', id });
          }}
        />
        {refused === null ? null : (
          <Problems
            file={refused.name}
            problems={refused.problems}
            kept={
              openAttempt === null ? 'Nothing here was changed.' : 'The attempt in progress is unchanged.'
            }
          />
        )}
        <Doors
          due={kept.due}
          onTable={() => {
            table.current?.scrollIntoView();
            table.current?.focus();
          }}
        />
        <section className="stack" aria-labelledby="find-heading">
          <div className="acts apart">
            <h2 id="find-heading">What is wrong with it?</h2>
            <p className="note">what somebody says of a unit, four to eight tests, ten minutes at most.</p>
          </div>
          <p className="acts">
            <Link href="/jobs" className="button">
              Choose what to look into
            </Link>
          </p>
        </section>
        <section className="stack" aria-labelledby="aims-heading">
          <div className="acts apart">
            <h2 id="aims-heading" ref={table} tabIndex={-1}>
              Jobs by aim
            </h2>
            <p className="note">tests wholly right, of those done; last date. A touch begins the job.</p>
          </div>
          <AimTable attempts={useMemo(() => aimAttempts(kept.all), [kept])} seed={seed} />
        </section>
        <div className="acts apart">
          <p className="note prose">{CAUTION_LINE} Local codes come first.</p>
          <p className="link-row acts">
            <Link href="/jobs">Whole jobs, 20 to 40 minutes</Link>
            <Link href="/jobs">From a file</Link>
          </p>
        </div>
      </div>
    </main>
  );
}

interface NextProps {
  readonly next: Next;
  readonly seed: number;
  /** The one filled button; where an attempt is unfinished that one is filled. */
  readonly isFirst: boolean;
}

function NextLink({ next, seed, isFirst }: NextProps) {
  const look = isFirst ? 'next filled' : 'next';
  return next.kind === 'first run' ? (
    <Link href="/first-run" className={look}>
      <strong>Start here</strong> <span>your first charge point, 4 minutes</span>
    </Link>
  ) : (
    <Link
      href={next.kind === 'questions' ? '/questions' : aimLink(next.aim, next.rung, seed)}
      className={look}
    >
      <strong>Next for you: {next.kind === 'questions' ? QUESTIONS_NAME : aimWithMinutes(next.aim)}</strong>{' '}
      <span>{whyText(next.why, dayMonthText)}</span>
    </Link>
  );
}

interface DoorsProps {
  readonly due: DueTopics;
  readonly onTable: () => void;
}

function Doors({ due, onTable }: DoorsProps) {
  return (
    <nav className="doors" aria-label="Where to">
      <button type="button" onClick={onTable}>
        <strong>Practise a job</strong> <span>One aim, three to nine minutes</span>
      </button>
      <Link href="/questions">
        <strong>{QUESTIONS_NAME}</strong>{' '}
        <span>{due.topics === 0 ? 'Ten, made from the model' : dueText(due, dayMonthText)}</span>
      </Link>
      <Link href="/record">
        <strong>My record</strong> <span>What you did, and what to do again</span>
      </Link>
      <Link href="/desk">
        <strong>Set work</strong> <span>A job for a group</span>
      </Link>
      <Link href="/words">
        <strong>Words</strong> <span>Trade words, and what they mean here</span>
      </Link>
      <Link href="/sources">
        <strong>Sources</strong> <span>Where each limit is from</span>
      </Link>
    </nav>
  );
}
