/**
 * What a tutor gave out, as a learner opens it: by a link, whose content is behind the # and reaches no server, or by a
 * file. What is sealed asks for its passphrase first.
 */
import { useEffect, useMemo, useState } from 'react';
import { Link } from 'wouter';
import type { ReadGiving } from '../../../desk/giving.ts';
import { LARGEST_GIVING, looksLikeGiving, readingGiving } from '../../../desk/giving.ts';
import { madeWhole, textInLink } from '../../../desk/link.ts';
import type { Sealed } from '../../../desk/seal.ts';
import { looksSealed, readSealed, unsealed } from '../../../desk/seal.ts';
import { isListed } from '../../../desk/variantOf.ts';
import { parseJson } from '../../../scenario/json.ts';
import type { Parsed, Problem } from '../../../scenario/problems.ts';
import { clearHandedIn } from '../../../store/keptAttempt.ts';
import { inWords } from '../../../words/problems.ts';
import type { Bench } from '../../flow/bench.ts';
import { beginningGiven } from '../../flow/startGiven.ts';
import { useKeptHere } from '../../flow/useKeptHere.ts';
import { useSliced } from '../../flow/useSliced.ts';
import { webCrypto } from '../../flow/webCrypto.ts';
import { Foot } from '../../parts/Foot.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { Problems } from '../../parts/Problems.tsx';
import { TextField } from '../../parts/TextField.tsx';
import { setLink } from '../questions/asked.ts';
import { OFFERED } from '../shelf.ts';
import type { Wish } from '../wish.ts';
import { GivenCard } from './GivenCard.tsx';

interface Props {
  /** What the address carries; null where it came by a file. */
  readonly letters: string | null;
  readonly text: string;
  readonly onBegin: (making: () => Generator<null, Bench>) => void;
  readonly onWish: (wish: Wish) => void;
}

export function Given({ letters, text, onBegin, onWish }: Props) {
  const came = useMemo(() => (letters === null ? text : textInLink(letters)), [letters, text]);
  const [opened, setOpened] = useState<string | null>(null);
  const value = useMemo(() => valueIn(opened ?? came), [opened, came]);
  const sealed = useMemo(
    () => (value.ok && looksSealed(value.value) ? readSealed(value.value) : null),
    [value],
  );
  const { result } = useSliced(
    useMemo(() => (sealed === null ? () => reading(value) : null), [value, sealed]),
  );
  const name = letters === null ? 'The file' : 'The link';
  const problems = sealed?.ok === false ? sealed.problems : result?.ok === false ? result.problems : null;
  return (
    <>
      <PageHead
        title={
          result?.ok === true && result.value.giving.group !== '' ? result.value.giving.group : 'Given out'
        }
        about="work that a tutor gave out"
        takesFocus
        acts={
          <Link href="/" className="button">
            Home
          </Link>
        }
      />
      <main className="columns">
        {problems !== null ? (
          <Problems file={name} problems={inWords(problems)} kept="Nothing here was changed." />
        ) : sealed?.ok === true ? (
          <Unseal sealed={sealed.value} onOpened={setOpened} />
        ) : result?.ok === true ? (
          <Jobs read={result.value} onBegin={onBegin} onWish={onWish} />
        ) : (
          <p role="status">Reading what was given out …</p>
        )}
      </main>
      <Foot />
    </>
  );
}

const NOT_WHOLE: readonly Problem[] = [
  { path: '', message: 'is damaged or cut short: ask for it again, or for the file' },
];

function valueIn(text: string | null): Parsed<unknown> {
  if (text === null) return { ok: false, problems: NOT_WHOLE };
  return parseJson(text, LARGEST_GIVING);
}

function* reading(value: Parsed<unknown>): Generator<null, Parsed<ReadGiving>> {
  if (!value.ok) return value;
  if (!looksLikeGiving(value.value)) return { ok: false, problems: NOT_WHOLE };
  const whole = madeWhole(value.value, OFFERED);
  return whole.ok ? yield* readingGiving(whole.value) : whole;
}

interface UnsealProps {
  readonly sealed: Sealed;
  readonly onOpened: (text: string) => void;
}

function Unseal({ sealed, onOpened }: UnsealProps) {
  const [passphrase, setPassphrase] = useState('');
  const [stands, setStands] = useState<'typed' | 'opening' | 'wrong'>('typed');
  const crypto = webCrypto();
  if (crypto === null)
    return (
      <div role="alert" className="found first stack">
        <p>
          <strong>This is sealed, and cannot be opened here.</strong> The page came by plain http, and there a
          browser has nothing to open seals with. Open the page by https, or ask for the giving-out without a
          seal.
        </p>
      </div>
    );
  const open = async () => {
    setStands('opening');
    const text = await unsealed(sealed, passphrase, crypto.subtle);
    if (text === null) setStands('wrong');
    else onOpened(text);
  };
  return (
    <form
      className="stack prose"
      onSubmit={(event) => {
        event.preventDefault();
        void open();
      }}
    >
      <h2>Sealed</h2>
      <p>Your tutor gives the passphrase in the lesson.</p>
      <TextField
        label="passphrase"
        value={passphrase}
        maxLength={200}
        error={
          stands === 'wrong'
            ? 'It does not open by this passphrase. Capital letters count. If the passphrase is right, the link or file was damaged: ask for it again.'
            : null
        }
        onChange={(text) => {
          setStands('typed');
          setPassphrase(text);
        }}
      />
      <div className="acts">
        <button type="submit" className="main" disabled={stands === 'opening' || passphrase === ''}>
          {stands === 'opening' ? 'Opening …' : 'Open'}
        </button>
      </div>
    </form>
  );
}

interface JobsProps extends Pick<Props, 'onBegin' | 'onWish'> {
  readonly read: ReadGiving;
}

function Jobs(props: JobsProps) {
  const [isCleared, setCleared] = useState(false);
  // Whoever sat here before has handed in: nothing of it is shown to the next.
  useEffect(() => {
    const go = () => setCleared(true);
    clearHandedIn().then(go, go);
  }, []);
  return isCleared ? <JobsHere {...props} /> : <div className="marking" />;
}

function JobsHere({ read, onBegin, onWish }: JobsProps) {
  const kept = useKeptHere();
  const [label, setLabel] = useState('');
  const [asked, setAsked] = useState(false);
  const { giving, jobs } = read;
  const mine = (kept?.all ?? []).filter((about) => about.given?.id === giving.giving);
  // On a shared computer nobody is told who sat there before.
  const before = giving.clears ? '' : (mine[0]?.trainee ?? '');
  const known = label.trim() === '' ? before : label.trim();
  return (
    <div className="wide-stack">
      <h2 className="unseen">What is to be done</h2>
      <TextField
        label={
          giving.clears
            ? 'your code, never your name; your tutor has the list'
            : 'your label, by which your tutor knows you, such as ash-07'
        }
        value={label === '' ? before : label}
        maxLength={60}
        error={asked && known === '' ? 'Without a label nobody knows whose work it is.' : null}
        onChange={setLabel}
      />
      {known === '' || isListed(giving, known) ? null : (
        <p role="status" className="prose">
          <strong>“{known}” is not on your tutor’s list.</strong> Look how it is written there: with another
          label you may get the figures of somebody else.
        </p>
      )}
      {giving.quiz === undefined ? null : (
        <p className="acts">
          <a href={setLink(giving.quiz)} className="button main">
            Begin the quiz
          </a>
        </p>
      )}
      <GivenCard
        read={read}
        beside={(at) => {
          const own = mine.find(
            ({ scenario, trainee }) => scenario === jobs[at]?.scenario.id && trainee === known,
          );
          const others = jobs.findIndex(
            ({ scenario }) => !mine.some((one) => one.scenario === scenario.id && one.trainee === known),
          );
          return (
            <div className="acts">
              {own === undefined ? (
                <button
                  type="button"
                  className={at === others ? 'main' : ''}
                  onClick={() => {
                    if (known === '') setAsked(true);
                    else onBegin(() => beginningGiven(read, at, known));
                  }}
                >
                  Begin <span className="unseen">{jobs[at]?.scenario.title}</span>
                </button>
              ) : (
                <>
                  <span className="note">
                    {own.handedIn !== null
                      ? 'handed in'
                      : own.concluded
                        ? 'concluded, not handed in'
                        : 'begun'}
                  </span>
                  <button type="button" onClick={() => onWish({ kind: 'go on', about: own })}>
                    {own.concluded ? 'Open' : 'Go on'}{' '}
                    <span className="unseen">{jobs[at]?.scenario.title}</span>
                  </button>
                </>
              )}
            </div>
          );
        }}
      />
    </div>
  );
}
