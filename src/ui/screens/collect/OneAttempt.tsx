/**
 * One attempt, to be defended: every part with where its marks were lost, the replay at that moment, what to ask there, a
 * comment, and gates set aside with their reasons. On paper it is one page.
 */
import { useCallback, useEffect, useMemo, useState } from 'react';
import { Link } from 'wouter';
import type { Debrief as Told } from '../../../attempt/marks/debrief.ts';
import { debriefing } from '../../../attempt/marks/debrief.ts';
import { eliminating } from '../../../attempt/opened/elimination.ts';
import { tellingStep, timelineOf } from '../../../attempt/opened/timeline.ts';
import type { Lockstep } from '../../../attempt/opened/twin.ts';
import { followingLog } from '../../../attempt/opened/twin.ts';
import type { ClassRow } from '../../../desk/class.ts';
import { labelOf } from '../../../desk/class.ts';
import type { Held, Marked } from '../../../desk/collect.ts';
import { asGivenOut, Copies, heldAgainst } from '../../../desk/collect.ts';
import type { Giving, Note, ReadGiving } from '../../../desk/giving.ts';
import { readingGiving } from '../../../desk/giving.ts';
import { visible } from '../../../scenario/quoted.ts';
import type { AskedAbout } from '../../../words/asked.ts';
import { questionsAt } from '../../../words/asked.ts';
import { gatesWords, lookText, passedWords, verdictWords } from '../../../words/collect.ts';
import { TRUTH_WORDS } from '../../../words/mattered.ts';
import { RUNG_NAMES } from '../../../words/rungs.ts';
import { useSliced } from '../../flow/useSliced.ts';
import { recordNumber } from '../../format/figures.ts';
import { Foot } from '../../parts/Foot.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { Replay } from '../debrief/Replay.tsx';
import { useStepping } from '../debrief/useStepping.ts';
import { OFFERED } from '../shelf.ts';
import { AttemptSheet } from './AttemptSheet.tsx';
import { lostIn } from './lost.ts';
import { PartsLost } from './PartsLost.tsx';
import { TutorNote } from './TutorNote.tsx';

interface Props {
  readonly one: ClassRow;
  readonly row: Marked;
  readonly text: string | null;
  /** The moment that was asked for, or the test that is to be shown in class. */
  readonly entry: number | null;
  readonly shown: string | null;
  readonly givings: readonly Giving[];
  readonly onChange: (giving: Giving, change: (kept: Giving) => Giving) => Promise<void>;
}

export function OneAttempt(props: Props) {
  const { one, row, text, entry, shown, givings, onChange } = props;
  const [isShown, setShown] = useState(shown !== null);
  const giving = givings.find((each) => each.giving === row.giving) ?? null;
  const [asWas] = useState(giving);
  const { result, failed } = useSliced(useCallback(() => telling(text ?? '', asWas), [text, asWas]));
  const label = visible(labelOf(row));
  return (
    <div className={isShown ? 'projector one' : 'one'}>
      <PageHead
        title={isShown ? row.job.title : label}
        about={`${isShown ? '' : `${row.job.title} · record ${recordNumber(row.code)} · `}${RUNG_NAMES[row.rung]}`}
        takesFocus
        acts={
          <>
            <Link href="/collect" className="button">
              The class
            </Link>
            <button type="button" aria-pressed={isShown} onClick={() => setShown(!isShown)}>
              {isShown ? 'Back to the marks' : 'Show in class'}
            </button>
            <button type="button" onClick={() => print()}>
              Print
            </button>
          </>
        }
      />
      <main className="columns debrief">
        {result === null ? (
          <div className="wide-stack">
            <Verdict one={one} row={row} isShown={isShown} />
            <p role="status" className="note">
              {failed === null ? 'Replaying it once more …' : `It cannot be shown: ${failed}.`}
            </p>
          </div>
        ) : (
          <Inside
            told={result}
            one={one}
            entry={entry}
            shown={shown}
            isShown={isShown}
            row={row}
            word={giving?.word ?? null}
            onNote={
              giving === null
                ? null
                : (note) =>
                    onChange(giving, (kept) => ({
                      ...kept,
                      tutor: { ...kept.tutor, notes: { ...kept.tutor?.notes, [row.code]: note } },
                    }))
            }
          />
        )}
      </main>
      <Foot />
    </div>
  );
}

function Verdict({ one, row, isShown }: Pick<InsideProps, 'one' | 'row' | 'isShown'>) {
  return (
    <section className="stack" aria-labelledby="verdict-heading">
      <h2 id="verdict-heading" className="result">
        {verdictWords(row)}
      </h2>
      <p>A faultless trainee {TRUTH_WORDS[row.verdict.truth]}</p>
      {isShown ? null : (
        <p>
          <strong>
            {row.marks.total} of {row.summary.of}
          </strong>
          , {passedWords(one.passed)}. Gates: {gatesWords(one)}.
        </p>
      )}
      {isShown || one.looks.length === 0 ? null : (
        <>
          <h3>Needs a look</h3>
          <ul className="choices">
            {one.looks.map((look) => (
              <li key={lookText(look)}>{lookText(look)}</li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}

/** The attempt on the copy that decides, as it was collected. */
function* telling(text: string, giving: Giving | null): Generator<null, Told> {
  const read = giving === null ? null : yield* readingGiving(giving);
  const givings: readonly ReadGiving[] = read?.ok === true ? [read.value] : [];
  const held = yield* heldAgainst(text, new Copies(givings, OFFERED));
  if (!isHeld(held)) throw new Error('the giving-out that it is of is not here any more');
  return yield* debriefing(held.copy.scenario, asGivenOut(held));
}

const isHeld = (held: unknown): held is Held =>
  typeof held === 'object' && held !== null && 'copy' in held && 'attempt' in held;

interface InsideProps {
  readonly told: Told;
  readonly one: ClassRow;
  readonly entry: number | null;
  readonly shown: string | null;
  readonly isShown: boolean;
  readonly row: Marked;
  /** On the board; null where nobody gave it out. */
  readonly word: string | null;
  readonly onNote: ((note: Note) => Promise<void>) | null;
}

function Inside({ told, one, entry, shown, isShown, row, word, onNote }: InsideProps) {
  const { scenario, attempt } = told.run;
  const following = useSliced(useCallback(() => followingLog(scenario, attempt), [scenario, attempt]));
  const lockstep = following.result;
  const elimination = useSliced(
    useMemo(() => (lockstep === null ? null : () => eliminating(lockstep)), [lockstep]),
  );
  const timeline = useMemo(
    () => (lockstep === null ? null : timelineOf(lockstep, told.sureAndWrong)),
    [lockstep, told],
  );
  const stepping = useStepping((lockstep?.steps.length ?? 1) - 1);
  const [about, setAbout] = useState<AskedAbout | null>(null);
  const { go } = stepping;
  // The moment that was asked for; else the one that somebody would ask about first.
  const first = useMemo(
    () =>
      told.marks.gates.critical[0]?.entry ??
      lostIn(told).find(({ part }) => part === 'judgement')?.test ??
      null,
    [told],
  );
  useEffect(() => {
    const at = shown ?? entry ?? first;
    if (lockstep === null || at === null) return;
    go(typeof at === 'string' ? (tellingStep(lockstep, at) ?? 0) : stepAt(lockstep, at));
  }, [lockstep, shown, entry, first, go]);
  const critical =
    told.marks.gates.critical.find((act) => act.entry === entry) ?? told.marks.gates.critical[0];
  const asked: AskedAbout =
    about ??
    (critical === undefined ? { what: 'whole', part: 'diagnosis' } : { what: 'act', act: critical.id });
  const show = (test: string, what: AskedAbout) => {
    setAbout(what);
    if (lockstep !== null) go(tellingStep(lockstep, test) ?? 0);
    document.getElementById('replay-heading')?.scrollIntoView({ block: 'nearest' });
  };
  return (
    <>
      <AttemptSheet told={told} one={one} row={row} word={word} questions={questionsAt(asked)} />
      <div className="wide-stack not-printed">
        <Verdict one={one} row={row} isShown={isShown} />
        {isShown ? null : <PartsLost told={told} onShow={show} />}
        {isShown ? null : onNote === null ? (
          <p className="note prose">
            Of a job that nobody gave out here no comment is kept: give it out, and comments stand with it.
          </p>
        ) : (
          <TutorNote row={row} note={one.note} onNote={onNote} />
        )}
      </div>
      <div className="wide-stack not-printed">
        {/* The replay is named by this heading. */}
        <div className="stack">
          <h2 id="replay-heading" tabIndex={-1}>
            At that moment
          </h2>
          {isShown ? null : (
            <ol className="mattered">
              {questionsAt(asked).map((question) => (
                <li key={question}>{question}</li>
              ))}
            </ol>
          )}
          {lockstep === null || timeline === null ? (
            <p className="note" role="status">
              {following.failed === null
                ? 'Replaying on this unit and on its correct twin …'
                : `The log cannot be replayed: ${following.failed}. All else stands.`}
            </p>
          ) : (
            <Replay
              told={told}
              lockstep={lockstep}
              timeline={timeline}
              elimination={elimination}
              undone={null}
              stepping={stepping}
              wrongSteps={[]}
            />
          )}
        </div>
      </div>
    </>
  );
}

/** The step at an entry of the log, or the last before it. */
const stepAt = ({ steps }: Lockstep, entry: number): number =>
  Math.max(
    0,
    steps.findLastIndex((step) => (step.entry ?? -1) <= entry),
  );
