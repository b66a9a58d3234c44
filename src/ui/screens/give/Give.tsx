/**
 * Giving out: one job or a set, for a group, with a word for the board; as a link with its QR code, or as a file, sealed or
 * not. Beside the form stands exactly what the learner will see. What was given out is kept here, since the tutor's own
 * copy decides when it is collected.
 */
import { useMemo, useState } from 'react';
import { Link } from 'wouter';
import type { Rung } from '../../../attempt/record/rung.ts';
import { RUNGS } from '../../../attempt/record/rung.ts';
import type { Giving } from '../../../desk/giving.ts';
import { givingId, LONGEST_MINUTES, onRung, readingGiving } from '../../../desk/giving.ts';
import { heldBy } from '../../../desk/heldBy.ts';
import { allDealt } from '../../../desk/variantOf.ts';
import { keepGiving } from '../../../store/givings.ts';
import { WHY_NOT_KEPT } from '../../../words/keeping.ts';
import { inWords } from '../../../words/problems.ts';
import { RUNG_NAMES } from '../../../words/rungs.ts';
import { useSliced } from '../../flow/useSliced.ts';
import { webCrypto } from '../../flow/webCrypto.ts';
import { Foot } from '../../parts/Foot.tsx';
import { Keys } from '../../parts/Keys.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { Problems } from '../../parts/Problems.tsx';
import { TextField } from '../../parts/TextField.tsx';
import { GivenOut } from './GivenOut.tsx';
import { JobsChosen } from './JobsChosen.tsx';
import { LookedAt } from './LookedAt.tsx';
import { labelsIn } from './labels.ts';
import type { GivingDrafting, GivingForm } from './useGivingDraft.ts';
import { useGivingDraft } from './useGivingDraft.ts';
import { Variants } from './Variants.tsx';
import { drawnDigits, firstWord } from './words.ts';

const RUNG_OPTIONS = RUNGS.map(String) as readonly `${Rung}`[];
const RUNG_WORDS = Object.fromEntries(RUNGS.map((rung) => [String(rung), RUNG_NAMES[rung]])) as Record<
  `${Rung}`,
  string
>;

const NOBODY: readonly string[] = [];

/** What no job of a set may have. */
const RULE = { noCritical: true, noUnsound: true };

export function Give() {
  const drafting = useGivingDraft();
  return drafting === null ? <p className="columns">Loading …</p> : <GivingOut drafting={drafting} />;
}

function GivingOut({ drafting }: { readonly drafting: GivingDrafting }) {
  const { form, problem } = drafting;
  const { jobs, group, word, rung, isHeld, second, variants, clears, pass, time } = form;
  const [passphrase, setPassphrase] = useState('');
  const [digits, setDigits] = useState(drawnDigits);
  const [given, setGiven] = useState<Giving | null>(null);
  const [isKept, setKept] = useState(true);
  const change = (part: Partial<GivingForm>) => {
    drafting.change(part);
    setGiven(null);
  };

  const wanted = Number(pass) || Math.ceil(0.8 * jobs.length);
  /** How many are to be passed; null of one job alone. */
  const toPass = jobs.length < 2 ? null : Math.min(wanted, jobs.length);
  const minutes = Number(time);
  const isTime = time === '' || (Number.isInteger(minutes) && minutes >= 1 && minutes <= LONGEST_MINUTES);
  const labels = useMemo(() => labelsIn(form.labels), [form.labels]);
  const listed = variants.length === 0 ? NOBODY : labels.listed;
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

  const giveOut = async () => {
    if (giving === null) return;
    const whole: Giving = {
      ...giving,
      tutor: {
        ...(isHeld ? { second } : {}),
        sealed: passphrase !== '',
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
    drafting.given();
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
      {problem === null ? null : (
        <p className="columns one" role="alert">
          <strong>What you type here is not kept.</strong> {WHY_NOT_KEPT[problem]} Give it out before you
          close the page.
        </p>
      )}
      <main className="columns give">
        <div className="wide-stack not-printed">
          <JobsChosen jobs={jobs} onChange={(jobs) => change({ jobs })} />
          <section className="stack" aria-labelledby="whom-heading">
            <h2 id="whom-heading">For whom, and how</h2>
            <div className="fields">
              <TextField label="group" value={group} maxLength={60} onChange={(group) => change({ group })} />
              <TextField
                label="a word for the board"
                value={word}
                maxLength={60}
                error={word.trim() === '' ? 'Without a word nobody can tell one lesson from another.' : null}
                onChange={(word) => change({ word })}
              />
            </div>
            <Keys
              legend="how much they are told"
              options={RUNG_OPTIONS}
              words={RUNG_WORDS}
              value={`${rung}`}
              onChange={(value) => change({ rung: Number(value) as Rung })}
            />
            <Keys
              legend="the debrief"
              options={['at-once', 'held'] as const}
              words={{ 'at-once': 'at once', held: 'held until a second word' }}
              value={isHeld ? 'held' : 'at-once'}
              onChange={(value) => change({ isHeld: value === 'held' })}
            />
            {isHeld ? (
              <TextField
                label="the second word, for when all have finished"
                value={second}
                maxLength={60}
                onChange={(second) => change({ second })}
              />
            ) : null}
            <TextField
              label="minutes that it is meant to take (may stay empty); nothing ends by the clock"
              value={time}
              numeric
              maxLength={3}
              error={isTime ? null : `A whole number from 1 to ${LONGEST_MINUTES} is expected.`}
              onChange={(time) => change({ time })}
            />
            {jobs.length < 2 ? null : (
              <TextField
                label={`jobs to be passed, of ${jobs.length} (left empty: ${Math.ceil(0.8 * jobs.length)}); and no critical act, and no unsound unit accepted`}
                value={pass}
                numeric
                maxLength={2}
                onChange={(pass) => change({ pass })}
              />
            )}
            <label className="tick">
              <input
                type="checkbox"
                checked={clears}
                onChange={(event) => change({ clears: event.target.checked })}
              />
              Shared computers: a code in place of a name, and nothing stays after handing in
            </label>
          </section>
          <Variants
            jobs={jobs}
            word={word}
            variants={variants}
            onVariants={(variants) => change({ variants })}
            typed={form.labels}
            labels={labels}
            onTyped={(typed) => change({ labels: typed })}
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
                label="passphrase (may stay empty: not sealed); it is kept nowhere"
                value={passphrase}
                maxLength={200}
                onChange={(typed) => {
                  setPassphrase(typed);
                  setGiven(null);
                }}
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
              <LookedAt read={result.value} />
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
                change({ word: firstWord() });
                setDigits(drawnDigits());
              }}
            />
          ) : null}
        </div>
      </main>
      <Foot />
    </>
  );
}
