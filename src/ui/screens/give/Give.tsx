/**
 * Giving out: one job or a set, for a group, with a word for the board; as a link with its QR code, or as a file, sealed or
 * not. Beside the form stands exactly what the learner will see. What was given out is kept here, since the tutor's own
 * copy decides when it is collected.
 */
import { useCallback, useEffect, useMemo, useState } from 'react';
import { Link } from 'wouter';
import type { Rung } from '../../../attempt/record/rung.ts';
import { RUNGS } from '../../../attempt/record/rung.ts';
import type { Giving } from '../../../desk/giving.ts';
import { givingId, LONGEST_MINUTES, onRung, readingGiving } from '../../../desk/giving.ts';
import { heldBy } from '../../../desk/heldBy.ts';
import { allDealt } from '../../../desk/variantOf.ts';
import { keptDraft } from '../../../store/deskDraft.ts';
import { keepGiving } from '../../../store/givings.ts';
import { inWords } from '../../../words/problems.ts';
import { RUNG_NAMES } from '../../../words/rungs.ts';
import { useSliced } from '../../flow/useSliced.ts';
import { webCrypto } from '../../flow/webCrypto.ts';
import { Foot } from '../../parts/Foot.tsx';
import { Keys } from '../../parts/Keys.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { Problems } from '../../parts/Problems.tsx';
import { TextField } from '../../parts/TextField.tsx';
import { GivenCard } from './GivenCard.tsx';
import { GivenOut } from './GivenOut.tsx';
import { JobsChosen } from './JobsChosen.tsx';
import { labelsIn, Variants } from './Variants.tsx';
import { drawnDigits, firstWord, secondWord } from './words.ts';

const RUNG_OPTIONS = RUNGS.map(String) as readonly `${Rung}`[];
const RUNG_WORDS = Object.fromEntries(RUNGS.map((rung) => [String(rung), RUNG_NAMES[rung]])) as Record<
  `${Rung}`,
  string
>;

/** What no job of a set may have. */
const RULE = { noCritical: true, noUnsound: true };

export function Give() {
  const [jobs, setJobs] = useState<readonly object[]>([]);
  const [group, setGroup] = useState('');
  const [word, setWord] = useState(firstWord);
  const [rung, setRung] = useState<Rung>(2);
  const [isHeld, setHeld] = useState(false);
  const [second, setSecond] = useState(secondWord);
  const [variants, setVariants] = useState<readonly number[]>([]);
  const [labels, setLabels] = useState('');
  const [clears, setClears] = useState(false);
  const [pass, setPass] = useState('');
  const [time, setTime] = useState('');
  const [passphrase, setPassphrase] = useState('');
  const [digits, setDigits] = useState(drawnDigits);
  const [given, setGiven] = useState<Giving | null>(null);
  const [isKept, setKept] = useState(true);

  // What was changed on the desk is what is given out, unless something else is chosen.
  useEffect(() => {
    let isStale = false;
    keptDraft().then(
      (draft) => {
        if (!isStale && draft !== null) setJobs((now) => (now.length === 0 ? [draft.file] : now));
      },
      () => {},
    );
    return () => {
      isStale = true;
    };
  }, []);

  const wanted = Number(pass) || Math.ceil(0.8 * jobs.length);
  /** How many are to be passed; null of one job alone. */
  const toPass = jobs.length < 2 ? null : Math.min(wanted, jobs.length);
  const minutes = Number(time);
  const isTime = time === '' || (Number.isInteger(minutes) && minutes >= 1 && minutes <= LONGEST_MINUTES);
  const listed = useMemo(() => (variants.length === 0 ? [] : labelsIn(labels)), [variants, labels]);
  const giving = useMemo((): Giving | null => {
    if (jobs.length === 0 || word.trim() === '') return null;
    const onIts = jobs.map((job) => onRung(job, rung));
    const content = { group, word, rung, jobs: onIts, variants, listed, clears, isHeld };
    const id = givingId(content, digits);
    return {
      format: 1,
      giving: id,
      group: group.trim(),
      word: word.trim(),
      rung,
      jobs: onIts,
      ...(toPass === null ? {} : { rule: { ...RULE, pass: toPass } }),
      ...(isTime && minutes > 0 ? { minutes } : {}),
      ...(isHeld ? { held: heldBy(id, second) } : {}),
      variants: [...variants],
      ...(listed.length === 0 ? {} : { dealt: [...allDealt(word, listed)] }),
      clears,
    };
  }, [jobs, group, word, rung, variants, listed, clears, isHeld, second, digits, toPass, isTime, minutes]);
  const { result } = useSliced(
    useMemo(() => (giving === null ? null : () => readingGiving(giving)), [giving]),
  );

  const change = useCallback(
    <T,>(set: (value: T) => void) =>
      (value: T) => {
        set(value);
        setGiven(null);
      },
    [],
  );
  const giveOut = async () => {
    if (giving === null) return;
    const whole: Giving = {
      ...giving,
      tutor: {
        ...(isHeld ? { second } : {}),
        ...(listed.length === 0 ? {} : { labels: [...listed] }),
        at: Date.now(),
        notes: {},
      },
    };
    try {
      await keepGiving(whole);
      setKept(true);
    } catch {
      setKept(false);
    }
    setGiven(whole);
  };

  return (
    <>
      <PageHead
        title="Give out"
        about="for your group"
        says="nothing leaves this device but by you"
        takesFocus
        acts={
          <Link href="/collect" className="button">
            Collect
          </Link>
        }
      />
      <main className="columns give">
        <div className="wide-stack not-printed">
          <JobsChosen jobs={jobs} onChange={change(setJobs)} />
          <section className="stack" aria-labelledby="whom-heading">
            <h2 id="whom-heading">For whom, and how</h2>
            <div className="fields">
              <TextField label="group" value={group} maxLength={60} onChange={change(setGroup)} />
              <TextField
                label="a word for the board"
                value={word}
                maxLength={60}
                error={word.trim() === '' ? 'Without a word nobody can tell one lesson from another.' : null}
                onChange={change(setWord)}
              />
            </div>
            <Keys
              legend="how much they are told"
              options={RUNG_OPTIONS}
              words={RUNG_WORDS}
              value={`${rung}`}
              onChange={change((value: `${Rung}`) => setRung(Number(value) as Rung))}
            />
            <Keys
              legend="the debrief"
              options={['at-once', 'held'] as const}
              words={{ 'at-once': 'at once', held: 'held until a second word' }}
              value={isHeld ? 'held' : 'at-once'}
              onChange={change((value: string) => setHeld(value === 'held'))}
            />
            {isHeld ? (
              <TextField
                label="the second word, for when all have finished"
                value={second}
                maxLength={60}
                onChange={change(setSecond)}
              />
            ) : null}
            <TextField
              label="minutes that it is meant to take (may stay empty); nothing ends by the clock"
              value={time}
              numeric
              maxLength={3}
              error={isTime ? null : `A whole number from 1 to ${LONGEST_MINUTES} is expected.`}
              onChange={change(setTime)}
            />
            {jobs.length < 2 ? null : (
              <TextField
                label={`jobs to be passed, of ${jobs.length} (left empty: ${Math.ceil(0.8 * jobs.length)}); and no critical act, and no unsound unit accepted`}
                value={pass}
                numeric
                maxLength={2}
                onChange={change(setPass)}
              />
            )}
            <label className="tick">
              <input
                type="checkbox"
                checked={clears}
                onChange={(event) => change(setClears)(event.target.checked)}
              />
              Shared computers: a code in place of a name, and nothing stays after handing in
            </label>
          </section>
          <Variants
            jobs={jobs}
            word={word}
            variants={variants}
            onVariants={change(setVariants)}
            labels={labels}
            onLabels={change(setLabels)}
          />
          <section className="stack" aria-labelledby="seal-heading">
            <h2 id="seal-heading">Sealed?</h2>
            <p className="note prose">
              A passphrase keeps link and file from being read before the lesson. It does not keep the answer
              from whoever has opened them: a page that runs a job holds its answer. For a grade, supervise.
            </p>
            {webCrypto() === null ? (
              <p className="prose">
                <strong>Not here.</strong> The page came by plain http, and there a browser has nothing to
                seal with. Open the page by https to seal; without a seal everything works.
              </p>
            ) : (
              <TextField
                label="passphrase (may stay empty: not sealed)"
                value={passphrase}
                maxLength={200}
                onChange={change(setPassphrase)}
              />
            )}
          </section>
        </div>
        <div className="wide-stack">
          <section className="stack preview not-printed" aria-labelledby="seen-heading">
            <h2 id="seen-heading">The learner will see</h2>
            {giving === null ? (
              <p>Choose a job: then it stands here as the learner will see it.</p>
            ) : result === null ? (
              <p role="status">Trying it …</p>
            ) : result.ok ? (
              <GivenCard read={result.value} beside={() => null} />
            ) : (
              <Problems file="The job" problems={inWords(result.problems)} kept="Nothing was given out." />
            )}
          </section>
          {given === null ? (
            <p className="acts not-printed">
              <button
                type="button"
                className="main"
                disabled={result?.ok !== true}
                onClick={() => void giveOut()}
              >
                Give it out
              </button>
            </p>
          ) : result?.ok === true ? (
            <GivenOut
              key={given.giving}
              giving={given}
              read={result.value}
              passphrase={passphrase}
              isKept={isKept}
              onAnother={() => {
                setGiven(null);
                setDigits(drawnDigits());
                setWord(firstWord());
              }}
            />
          ) : null}
        </div>
      </main>
      <Foot />
    </>
  );
}
