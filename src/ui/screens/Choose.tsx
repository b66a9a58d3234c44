/** Whole jobs and others that come with the page or from a file: which, on which rung, and begin. */
import { memo, useMemo, useState } from 'react';
import { Link } from 'wouter';
import type { Rung } from '../../attempt/record/rung.ts';
import { rungOf } from '../../attempt/record/rung.ts';
import type { About } from '../../store/about.ts';
import { scenarioResult } from '../../store/jobResults.ts';
import { resultText } from '../../words/next.ts';
import { useKeptHere } from '../flow/useKeptHere.ts';
import type { OpenAttempt } from '../flow/useOpenAttempt.ts';
import { dayMonthText } from '../format/dates.ts';
import { CAUTION_LINE, Cautions } from '../parts/Cautions.tsx';
import { Foot } from '../parts/Foot.tsx';
import { HeadLinks } from '../parts/HeadLinks.tsx';
import { OpenFile } from '../parts/OpenFile.tsx';
import { PageHead } from '../parts/PageHead.tsx';
import { Problems } from '../parts/Problems.tsx';
import { RungChoice } from '../parts/RungChoice.tsx';
import { TextField } from '../parts/TextField.tsx';
import type { Entry, Offered } from './offered.ts';
import { apartBy, keyOf, SUPPORT_WORDS, unitLine } from './offered.ts';
import { entriesWith } from './shelf.ts';
import type { Refused, Wish } from './wish.ts';

interface Props {
  readonly refused: Refused | null;
  /** Scenario files opened from the device. */
  readonly opened: readonly Entry[];
  readonly openAttempt: OpenAttempt | null;
  readonly onWish: (wish: Wish) => void;
}

export function Choose({ refused, opened, openAttempt, onWish }: Props) {
  const [cautions, setCautions] = useState(false);
  const kept = useKeptHere();
  const all = useMemo(() => entriesWith(opened), [opened]);
  const [key, setKey] = useState<string | null>(null);
  const chosen = all.find((entry) => keyOf(entry) === key) ?? all[0];
  return (
    <>
      <PageHead
        title="Scenarios"
        about="faults to find, ten minutes, whole jobs, 20 to 40, and short ones"
        takesFocus
        acts={<HeadLinks onCautions={() => setCautions(true)} />}
      />
      {kept === null ? (
        <main className="columns marking" />
      ) : (
        <main className="columns">
          <div className="wide-stack">
            <p className="note prose">{CAUTION_LINE}</p>
            {refused === null ? null : (
              <Problems
                file={refused.name}
                problems={refused.problems}
                kept={
                  openAttempt === null ? 'Nothing here was changed.' : 'The attempt in progress is unchanged.'
                }
              />
            )}
            <ScenarioList all={all} chosen={chosen} kept={kept.all} onChoose={setKey} />
          </div>
          <div className="wide-stack">
            {chosen === undefined ? null : (
              <BeginForm key={keyOf(chosen)} offered={chosen.scenario} kept={kept.all} onWish={onWish} />
            )}
            <section className="stack" aria-labelledby="file-heading">
              <h2 id="file-heading">From a file</h2>
              <p className="note">A scenario, what a tutor gave out, or an attempt that you exported.</p>
              <OpenFile label="Open a file…" onFile={(file) => onWish({ kind: 'open', file })} />
            </section>
            <section className="stack" aria-labelledby="tutors-heading">
              <h2 id="tutors-heading">For tutors</h2>
              <p className="note">Give a job to a group, and collect what comes back.</p>
              <div className="acts">
                <Link href="/give" className="button">
                  Give out
                </Link>
                <Link href="/collect" className="button">
                  Collect
                </Link>
              </div>
            </section>
          </div>
        </main>
      )}
      {/* Not before what would push it away, and with it a focus that has come there. */}
      {kept === null ? null : <Foot />}
      {cautions ? <Cautions rules={null} onClose={() => setCautions(false)} /> : null}
    </>
  );
}

interface ListProps {
  readonly all: readonly Entry[];
  readonly chosen: Entry | undefined;
  readonly kept: readonly About[];
  readonly onChoose: (key: string) => void;
}

function ScenarioList({ all, chosen, kept, onChoose }: ListProps) {
  const groups = [...new Set(all.map(({ scenario }) => groupOf(scenario)))].sort(
    (x, y) => Number(y === FIND) - Number(x === FIND) || (x < y ? -1 : 1),
  );
  if (all.length === 0) return <p>No scenario came with this page. Open one from a file to begin.</p>;
  return (
    <>
      {groups.map((group) => (
        <fieldset key={group}>
          <legend className="group">
            <h2>{group}</h2>
          </legend>
          <div className="cards">
            {all
              .filter(({ scenario }) => groupOf(scenario) === group)
              .map((entry) => (
                <Card
                  key={keyOf(entry)}
                  value={keyOf(entry)}
                  scenario={entry.scenario}
                  apart={apartBy(entry, all)}
                  isChosen={entry === chosen}
                  result={resultLine(kept, entry.scenario.id)}
                  onChoose={onChoose}
                />
              ))}
          </div>
        </fieldset>
      ))}
    </>
  );
}

interface CardProps {
  readonly value: string;
  readonly scenario: Offered;
  /** What tells it from others of its title. */
  readonly apart: string | null;
  readonly isChosen: boolean;
  /** What came of it here; null where it was never concluded. */
  readonly result: string | null;
  readonly onChoose: (key: string) => void;
}

/** A choice changes two cards of many. */
const Card = memo(function Card({ value, scenario, apart, isChosen, result, onChoose }: CardProps) {
  return (
    <label className="card">
      <input type="radio" name="scenario" checked={isChosen} onChange={() => onChoose(value)} />
      <span className="card-title">{scenario.title}</span>
      {apart === null ? null : <span className="card-more note">{apart}</span>}
      {scenario.symptom == null ? null : <q className="card-more">{scenario.symptom}</q>}
      <span className="card-more brief">{scenario.brief}</span>
      <span className="card-more note">
        {unitLine(scenario)} · {SUPPORT_WORDS[scenario.support]} · {scenario.rules}
      </span>
      {result === null ? null : <strong className="card-more">{result}</strong>}
    </label>
  );
});

function resultLine(kept: readonly About[], id: string): string | null {
  const result = scenarioResult(kept, id);
  if (result === null) return null;
  return `${resultText(result)}${result.done === 0 ? '' : ' tests right'}, last ${dayMonthText(result.last)}`;
}

/** What is behind a symptom: one group for every kind of site, since the site may be what matters. */
const FIND = 'What is wrong with it? Ten minutes at most';

/** What others began is short; a whole job starts from isolation. */
const groupOf = ({ site, unit, handover, symptom }: Offered): string =>
  symptom != null
    ? FIND
    : `${handover ? 'Short jobs, handed over' : 'Whole jobs'}: ${site.phases === 1 ? 'single-phase' : 'three-phase'}, ${unit.outlet === 'socket' ? 'socket-outlet' : 'tethered'}`;

interface BeginProps {
  readonly offered: Offered;
  readonly kept: readonly About[];
  readonly onWish: (wish: Wish) => void;
}

function BeginForm({ offered, kept, onWish }: BeginProps) {
  const own = ownRung(offered);
  const [rung, setRung] = useState<Rung | 0>(own);
  const [trainee, setTrainee] = useState('');
  return (
    <form
      className="stack"
      onSubmit={(event) => {
        event.preventDefault();
        onWish(rung === 0 ? { kind: 'show', offered } : { kind: 'begin', offered, rung, trainee });
      }}
    >
      <h2>{offered.title}</h2>
      {own === 4 ? (
        <p className="note">Assessment: nothing is told until the end.</p>
      ) : (
        <RungChoice kept={kept} value={rung} onChange={setRung} />
      )}
      {rung === 0 ? null : (
        <TextField
          label="your label in the record (may stay empty; it stays on this device)"
          value={trainee}
          maxLength={60}
          onChange={setTrainee}
        />
      )}
      <button type="submit" className="main">
        {rung === 0 ? 'Show me' : 'Begin'}
      </button>
    </form>
  );
}

/** The rung that a scenario is made for; an assessment is nothing else. */
const ownRung = ({ support }: Offered): Rung => rungOf(support, {});
