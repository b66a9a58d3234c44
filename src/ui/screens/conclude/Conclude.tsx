/**
 * The conclusion: verdict, cause, how sure, the findings it rests on, what next, whom to tell, and why tests were
 * left out. Nothing is filled in beforehand.
 */
import type { FormEvent } from 'react';
import { useEffect, useRef, useState } from 'react';
import type { EntryOf, Sure, Verdict } from '../../../attempt/attempt.ts';
import { NEXT_STEPS, SURENESS, TELL, VERDICTS } from '../../../attempt/attempt.ts';
import { NOTHING } from '../../../attempt/diagnosis.ts';
import { CATALOGUE } from '../../../faults/catalogue.ts';
import type { Family } from '../../../faults/families.ts';
import { FAMILIES } from '../../../faults/families.ts';
import { allowedActions } from '../../../scenario/scenario.ts';
import type { AttemptActor } from '../../flow/attemptMachine.ts';
import type { Bench, Note } from '../../flow/bench.ts';
import { hasStopped } from '../../flow/bench.ts';
import { useKept } from '../../flow/useKept.ts';
import { Choice } from '../../parts/Choice.tsx';
import { Foot } from '../../parts/Foot.tsx';
import { Keys } from '../../parts/Keys.tsx';
import { TextField } from '../../parts/TextField.tsx';
import { Head } from '../bench/Head.tsx';
import { YourTests } from '../bench/Tests.tsx';
import { Findings } from './Findings.tsx';
import { judgedFindings } from './judgedFindings.ts';

interface Props {
  readonly bench: Bench;
  readonly send: AttemptActor['send'];
  readonly wall: () => number;
  readonly keepFailed: boolean;
}

type Conclusion = EntryOf<'conclusion'>;

/** Not known, in the list of causes. */
const UNKNOWN = 'unknown';
const CAUSES = [NOTHING, UNKNOWN, ...CATALOGUE.map(({ id }) => id)];
const FAMILY_NAMES = Object.entries(FAMILIES) as [Family, string][];

export function Conclude({ bench, send, wall, keepFailed }: Props) {
  const { scenario, attempt } = bench.run;
  const actions = allowedActions(scenario);
  const undone = actions.filter(
    ({ id }) => !attempt.entries.some((entry) => entry.kind === 'prediction' && entry.test === id),
  );
  const [verdict, setVerdict] = useKept<Verdict | null>('conclude verdict', null, VERDICTS);
  const [because, setBecause] = useKept('conclude because', '');
  const [cause, setCause] = useKept('conclude cause', '', CAUSES);
  const [family, setFamily] = useKept('conclude family', '', Object.keys(FAMILIES));
  const [sure, setSure] = useKept<Sure | null>('conclude sure', null, SURENESS);
  const [cited, setCited] = useKept<readonly string[]>('conclude findings', []);
  const [next, setNext] = useKept('conclude next', '', NEXT_STEPS);
  const [tell, setTell] = useKept('conclude tell', '', TELL);
  const [leftOut, setLeftOut] = useKept<Readonly<Record<string, string>>>('conclude left out', {});
  const [tried, setTried] = useState(false);
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  const findings = judgedFindings(bench.run, actions);

  const missing = [
    verdict === null ? 'the verdict' : '',
    cause === '' ? 'what is wrong' : '',
    sure === null ? 'how sure' : '',
    next === '' ? 'what next' : '',
    tell === '' ? 'whom to tell' : '',
  ].filter((what) => what !== '');

  const submit = (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    if (missing.length > 0 || verdict === null || sure === null) return;
    const records = undone.flatMap(({ id }): Note[] => {
      const why = (leftOut[id] ?? '').trim();
      return why === '' ? [] : [{ kind: 'record', test: id, leftOut: why }];
    });
    const conclusion: Note = {
      kind: 'conclusion',
      verdict,
      because: because.trim(),
      cause: cause === UNKNOWN ? null : cause,
      family: FAMILY_NAMES.find(([id]) => id === family)?.[0] ?? null,
      sure,
      findings: findings.filter(({ key }) => cited.includes(key)).map(({ test, id }) => ({ test, id })),
      next: next as Conclusion['next'],
      tell: tell as Conclusion['tell'],
    };
    send({ type: 'concluded', notes: [...records, conclusion], wall: wall() });
  };

  const chooseCause = (id: string) => {
    setCause(id);
    // The block follows from a named cause; without one it stays the trainee's own.
    const entry = CATALOGUE.find((one) => one.id === id);
    if (entry !== undefined) setFamily(entry.family);
    if (id === NOTHING) setFamily('');
  };

  return (
    <>
      <Head bench={bench} keepFailed={keepFailed} />
      <main className="columns">
        <form className="wide-stack" onSubmit={submit} noValidate>
          <h2 ref={heading} tabIndex={-1}>
            Conclude
          </h2>
          <Keys legend="The unit is" options={VERDICTS} value={verdict} onChange={setVerdict} />
          <TextField label="because" lines maxLength={1000} value={because} onChange={setBecause} />
          <section className="stack" aria-labelledby="cause-heading">
            <h3 id="cause-heading">What is wrong</h3>
            <CauseChoice value={cause} onChange={chooseCause} />
            <Choice
              label="the block it is in"
              none="not known"
              options={FAMILY_NAMES}
              value={family}
              onChange={setFamily}
            />
            <Keys legend="How sure of that" options={SURENESS} value={sure} onChange={setSure} />
          </section>
          <Findings findings={findings} cited={cited} onCite={setCited} />
          <section aria-labelledby="next-heading">
            <h3 id="next-heading">Then</h3>
            <Choice
              label="what next"
              none="choose"
              options={NEXT_STEPS.map((step) => [step, step])}
              value={next}
              onChange={setNext}
            />
            <Choice
              label="whom to tell"
              none="choose"
              options={TELL.map((who) => [who, who])}
              value={tell}
              onChange={setTell}
            />
          </section>
          {undone.length === 0 ? null : (
            <section className="stack" aria-labelledby="left-heading">
              <h3 id="left-heading">Tests left out, and why</h3>
              {undone.map(({ id, title }) => (
                <TextField
                  key={id}
                  label={title}
                  value={leftOut[id] ?? ''}
                  maxLength={1000}
                  onChange={(text) => setLeftOut({ ...leftOut, [id]: text })}
                />
              ))}
              {undone.length < 2 ? null : (
                <button
                  type="button"
                  className="plain"
                  onClick={() => {
                    const first = leftOut[undone[0]?.id ?? ''] ?? '';
                    setLeftOut(Object.fromEntries(undone.map(({ id }) => [id, leftOut[id] || first])));
                  }}
                >
                  Same reason for all that are empty
                </button>
              )}
            </section>
          )}
          {tried && missing.length > 0 ? (
            <p className="error" role="alert">
              <strong>Not concluded.</strong>
              Still needed: {missing.join(', ')}.
            </p>
          ) : null}
          <div className="acts">
            <button type="submit" className="main">
              Conclude
            </button>
            {hasStopped(attempt.entries) ? null : (
              <button type="button" onClick={() => send({ type: 'go on' })}>
                Go on testing
              </button>
            )}
          </div>
        </form>
        <YourTests bench={bench} actions={actions} />
      </main>
      <Foot />
    </>
  );
}

function CauseChoice({
  value,
  onChange,
}: {
  readonly value: string;
  readonly onChange: (id: string) => void;
}) {
  return (
    <div className="field-row">
      <label htmlFor="cause">cause</label>
      <select id="cause" value={value} onChange={(event) => onChange(event.target.value)}>
        <option value="">choose</option>
        <option value={NOTHING}>nothing is wrong</option>
        <option value={UNKNOWN}>something, cause not known</option>
        {FAMILY_NAMES.map(([id, name]) => {
          const entries = CATALOGUE.filter(({ family }) => family === id);
          return entries.length === 0 ? null : (
            <optgroup key={id} label={name}>
              {entries.map((entry) => (
                <option key={entry.id} value={entry.id}>
                  {entry.title}
                </option>
              ))}
            </optgroup>
          );
        })}
      </select>
    </div>
  );
}
