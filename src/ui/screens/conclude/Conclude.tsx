/**
 * The conclusion: verdict, cause, how sure, the findings it rests on, which tests a repair makes due, what next, whom
 * to tell, and why tests were left out. Nothing is filled in beforehand.
 */

import type { FormEvent } from 'react';
import { useState } from 'react';
import { NOTHING } from '../../../attempt/marks/diagnosis.ts';
import { asksLeftOut, asksSteps, saysNotSound, verdictsOf } from '../../../attempt/marks/verdict.ts';
import type { EntryOf, Sure, Verdict } from '../../../attempt/record/attempt.ts';
import { LEFT_OUT, NEXT_STEPS, SURENESS, TELL } from '../../../attempt/record/attempt.ts';
import { entriesAbout } from '../../../attempt/record/run.ts';
import { CATALOGUE, entryNamed } from '../../../faults/catalogue.ts';
import type { Scenario } from '../../../scenario/scenario.ts';
import { allowedActions } from '../../../scenario/scenario.ts';
import { AIM_WORDS } from '../../../words/aims.ts';
import { SURE_WORDS } from '../../../words/answers.ts';
import { testTitle } from '../../../words/testTitles.ts';
import { LEFT_OUT_WORDS, NEXT_WORDS, TELL_WORDS, VERDICT_WORDS } from '../../../words/verdicts.ts';
import type { AttemptActor } from '../../flow/attemptMachine.ts';
import type { Bench, Note } from '../../flow/bench.ts';
import { hasStopped } from '../../flow/bench.ts';
import { useAfterPicture, useDrawnSoFar } from '../../flow/useAfterPicture.ts';
import { useKept } from '../../flow/useKept.ts';
import { CauseChoice, FAMILY_NAMES } from '../../parts/CauseChoice.tsx';
import { Choice } from '../../parts/Choice.tsx';
import { Foot } from '../../parts/Foot.tsx';
import { Keys } from '../../parts/Keys.tsx';
import { Symptom } from '../../parts/Symptom.tsx';
import { TextField } from '../../parts/TextField.tsx';
import { useFocus } from '../../parts/useFocus.ts';
import { Head } from '../bench/Head.tsx';
import { YourTests } from '../bench/YourTests.tsx';
import { Findings } from './Findings.tsx';
import { judgedFindings } from './judgedFindings.ts';
import { OtherCauses } from './OtherCauses.tsx';
import { Repeats } from './Repeats.tsx';

interface Props {
  readonly bench: Bench;
  readonly send: AttemptActor['send'];
  readonly wall: () => number;
  readonly keepFailed: boolean;
}

type Conclusion = EntryOf<'conclusion'>;

/** Not known, in the list of causes. */
const UNKNOWN = 'unknown';
const NO_CAUSE = [
  [NOTHING, 'nothing is wrong'],
  [UNKNOWN, 'something, cause not known'],
] as const;
const CAUSES = [NOTHING, UNKNOWN, ...CATALOGUE.map(({ id }) => id)];
/** A further cause that was asked for and is not chosen yet is empty. */
const OTHER_CAUSES = ['', ...CATALOGUE.map(({ id }) => id)];

/** What the verdict is about: the whole unit, one aim, or what is behind the symptom. */
const legendOf = ({ task, aim }: Scenario): string =>
  aim !== null ? `${AIM_WORDS[aim].question} You found` : task === 'find' ? 'You found' : 'The unit is';

const causeHeading = ({ task }: Scenario, hasRepaired: boolean): string =>
  task === 'find' ? 'What is behind it' : hasRepaired ? 'What was wrong as you met it' : 'What is wrong';

/** Of the tests left out; more would be a long task on a slow phone. */
const ROWS_WITH_EACH = 8;

export function Conclude({ bench, send, wall, keepFailed }: Props) {
  const { scenario, attempt } = bench.run;
  const actions = allowedActions(scenario);
  const tested = entriesAbout(attempt, 'prediction').map(({ test }) => test);
  const undone = asksLeftOut(scenario) ? actions.filter(({ id }) => !tested.includes(id)) : [];
  const done = [...new Set(tested)].flatMap((test) => actions.find(({ id }) => id === test) ?? []);
  const verdicts = verdictsOf(scenario);
  const [verdict, setVerdict] = useKept<Verdict | null>('conclude verdict', null, verdicts);
  const [because, setBecause] = useKept('conclude because', '');
  const [cause, setCause] = useKept('conclude cause', '', CAUSES);
  const [family, setFamily] = useKept(
    'conclude family',
    '',
    FAMILY_NAMES.map(([id]) => id),
  );
  const [others, setOthers] = useKept<readonly string[]>('conclude other causes', [], OTHER_CAUSES);
  const [sure, setSure] = useKept<Sure | null>('conclude sure', null, SURENESS);
  const [cited, setCited] = useKept<readonly string[]>('conclude findings', []);
  const [repeated, setRepeated] = useKept<readonly string[]>('conclude repeats', []);
  const [next, setNext] = useKept('conclude next', '', NEXT_STEPS);
  const [tell, setTell] = useKept('conclude tell', '', TELL);
  const [leftOut, setLeftOut] = useKept<Readonly<Record<string, string>>>('conclude left out', {}, [
    '',
    ...LEFT_OUT,
  ]);
  const [tried, setTried] = useState(false);
  const isShown = useAfterPicture();
  const drawn = useDrawnSoFar(undone.length, ROWS_WITH_EACH);
  const heading = useFocus<HTMLHeadingElement>();
  const findings = judgedFindings(bench.run, actions);

  const hasRepaired = bench.run.repairs.length > 0;
  const asksRepeats = hasRepaired || (verdict === 'not-fit' && cause !== '' && cause !== NOTHING);

  const isAskedSteps = asksSteps(scenario, verdict !== null && saysNotSound(verdict));

  const missing = [
    verdict === null ? 'the verdict' : '',
    cause === '' ? 'what is wrong' : '',
    sure === null ? 'how sure' : '',
    isAskedSteps && next === '' ? 'what next' : '',
    isAskedSteps && tell === '' ? 'whom to tell' : '',
  ].filter((what) => what !== '');

  const submit = (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    if (missing.length > 0 || verdict === null || sure === null) return;
    const records = undone.flatMap(({ id }): Note[] => {
      const why = LEFT_OUT.find((reason) => reason === leftOut[id]);
      return why === undefined ? [] : [{ kind: 'record', test: id, leftOut: why }];
    });
    const further = others.flatMap((id) => {
      const entry = entryNamed(id);
      return entry === undefined || cause === NOTHING ? [] : [{ cause: id, family: entry.family }];
    });
    const conclusion: Note = {
      kind: 'conclusion',
      verdict,
      because: because.trim(),
      cause: cause === UNKNOWN ? null : cause,
      family: FAMILY_NAMES.find(([id]) => id === family)?.[0] ?? null,
      ...(further.length === 0 ? {} : { others: further }),
      sure,
      findings: findings.filter(({ key }) => cited.includes(key)).map(({ test, id }) => ({ test, id })),
      ...(isAskedSteps ? { next: next as Conclusion['next'], tell: tell as Conclusion['tell'] } : {}),
      ...(asksRepeats ? { repeat: [...repeated] } : {}),
    };
    send({ type: 'concluded', notes: [...records, conclusion], wall: wall() });
  };

  const chooseCause = (id: string) => {
    setCause(id);
    // The block follows from a named cause; without one it stays the trainee's own.
    const entry = entryNamed(id);
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
          {scenario.symptom === null ? null : <Symptom text={scenario.symptom} />}
          <Keys
            legend={legendOf(scenario)}
            options={verdicts}
            words={VERDICT_WORDS}
            value={verdict}
            onChange={setVerdict}
          />
          <TextField label="because" lines maxLength={1000} value={because} onChange={setBecause} />
          <section className="stack" aria-labelledby="cause-heading">
            <h3 id="cause-heading">{causeHeading(scenario, hasRepaired)}</h3>
            <CauseChoice value={cause} others={NO_CAUSE} isToCome={!isShown} onChange={chooseCause} />
            <Choice
              label="the block it is in"
              none="not known"
              options={FAMILY_NAMES}
              value={family}
              onChange={setFamily}
            />
            {cause === '' || cause === NOTHING ? null : <OtherCauses others={others} onChange={setOthers} />}
            <Keys
              legend="How sure of that"
              options={SURENESS}
              words={SURE_WORDS}
              value={sure}
              onChange={setSure}
            />
          </section>
          <Findings findings={findings} cited={cited} onCite={setCited} />
          {asksRepeats ? <Repeats done={done} named={repeated} onName={setRepeated} /> : null}
          {isAskedSteps ? (
            <section aria-labelledby="next-heading">
              <h3 id="next-heading">Then</h3>
              <Choice
                label="what next"
                none="choose"
                options={NEXT_STEPS.map((step) => [step, NEXT_WORDS[step]])}
                value={next}
                onChange={setNext}
              />
              <Choice
                label="whom to tell"
                none="choose"
                options={TELL.map((who) => [who, TELL_WORDS[who]])}
                value={tell}
                onChange={setTell}
              />
            </section>
          ) : null}
          {undone.length === 0 ? null : (
            <section className="stack" aria-labelledby="left-heading">
              <h3 id="left-heading">Tests left out, and why</h3>
              {undone.slice(0, drawn).map(({ id }) => (
                <Choice
                  key={id}
                  label={testTitle(id)}
                  none="no reason given"
                  options={LEFT_OUT.map((why) => [why, LEFT_OUT_WORDS[why]])}
                  value={leftOut[id] ?? ''}
                  onChange={(text) => setLeftOut({ ...leftOut, [id]: text })}
                />
              ))}
              {undone.length < 2 || drawn < undone.length ? null : (
                <button
                  type="button"
                  className="plain"
                  onClick={() => {
                    const first = leftOut[undone[0]?.id ?? ''] ?? '';
                    setLeftOut(Object.fromEntries(undone.map(({ id }) => [id, leftOut[id] || first])));
                  }}
                >
                  Same reason for all without one
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
        <YourTests bench={bench} />
      </main>
      <Foot />
    </>
  );
}
