/** The first screen: what this is, one line of caution, the scenarios, and what was left unfinished. */
import { useEffect, useState } from 'react';
import type { Problem } from '../../scenario/problems.ts';
import { keptAttempt, putAwayAttempt } from '../../store/keptAttempt.ts';
import { CAUTION_LINE, Cautions } from '../parts/Cautions.tsx';
import { Foot } from '../parts/Foot.tsx';
import { Keys } from '../parts/Keys.tsx';
import { OpenFile } from '../parts/OpenFile.tsx';
import { Problems } from '../parts/Problems.tsx';
import { TextField } from '../parts/TextField.tsx';
import type { Offered } from './offered.ts';
import { OFFERED, SUPPORT_WORDS, unitLine } from './offered.ts';

/** What the rest of the page, loaded later, is asked to do. */
export type Wish =
  | {
      readonly kind: 'begin';
      readonly offered: Offered;
      readonly support: Offered['support'];
      readonly trainee: string;
    }
  | { readonly kind: 'open'; readonly name: string; readonly source: File | string };

interface Refused {
  readonly name: string;
  readonly problems: readonly Problem[];
}

interface Props {
  readonly refused: Refused | null;
  /** Scenario files opened from the device. */
  readonly opened: readonly Offered[];
  readonly inHand: string | null;
  readonly onWish: (wish: Wish) => void;
  readonly onReturn: () => void;
}

export function Choose({ refused, opened, inHand, onWish, onReturn }: Props) {
  const [cautions, setCautions] = useState(false);
  const all = [...opened, ...OFFERED];
  const [id, setId] = useState<string | null>(null);
  const chosen = all.find((offered) => offered.id === id) ?? all[0];
  return (
    <>
      <header className="head">
        <div className="head-title">
          <h1>Charge point trainer</h1>
          <p>
            verify a simulated a.c. charge point · <strong>training only</strong>
          </p>
        </div>
        <div className="head-acts">
          <button type="button" onClick={() => setCautions(true)}>
            Cautions
          </button>
        </div>
      </header>
      <main className="columns">
        <div className="wide-stack">
          <p className="note prose">{CAUTION_LINE}</p>
          {refused === null ? null : (
            <Problems
              file={refused.name}
              problems={refused.problems}
              kept={inHand === null ? 'Nothing here was changed.' : 'The attempt in progress is unchanged.'}
            />
          )}
          <p>
            <a href="#/first-run">First time here? Four minutes on a bench that is handed over.</a>
          </p>
          <ScenarioList all={all} chosen={chosen} onChoose={setId} />
        </div>
        <div className="wide-stack">
          <Unfinished inHand={inHand} onReturn={onReturn} onWish={onWish} />
          {chosen === undefined ? null : (
            <BeginForm key={chosen.id} offered={chosen} replaces={inHand !== null} onWish={onWish} />
          )}
          <section className="stack" aria-labelledby="file-heading">
            <h2 id="file-heading">From a file</h2>
            <p className="note">A scenario that a tutor made, or an attempt that you exported.</p>
            <OpenFile
              label="Open a file…"
              onFile={(file) => onWish({ kind: 'open', name: file.name, source: file })}
            />
          </section>
        </div>
      </main>
      <Foot />
      {cautions ? <Cautions rules={null} onClose={() => setCautions(false)} /> : null}
    </>
  );
}

interface ListProps {
  readonly all: readonly Offered[];
  readonly chosen: Offered | undefined;
  readonly onChoose: (id: string) => void;
}

function ScenarioList({ all, chosen, onChoose }: ListProps) {
  const groups = [...new Set(all.map(groupOf))].sort();
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
              .filter((scenario) => groupOf(scenario) === group)
              .map((scenario) => (
                <label key={scenario.id} className="card">
                  <input
                    type="radio"
                    name="scenario"
                    checked={chosen?.id === scenario.id}
                    onChange={() => onChoose(scenario.id)}
                  />
                  <span className="card-title">{scenario.title}</span>
                  <span className="card-more brief">{scenario.brief}</span>
                  <span className="card-more note">
                    {unitLine(scenario)} · {SUPPORT_WORDS[scenario.support]} · {scenario.rules}
                  </span>
                </label>
              ))}
          </div>
        </fieldset>
      ))}
    </>
  );
}

/** What others began is short; a whole job starts from isolation. */
const groupOf = ({ site, unit, handover }: Offered): string =>
  `${handover ? 'Short jobs, handed over' : 'Whole jobs'}: ${site.phases === 1 ? 'single-phase' : 'three-phase'}, ${unit.outlet === 'socket' ? 'socket-outlet' : 'tethered'}`;

interface BeginProps {
  readonly offered: Offered;
  readonly replaces: boolean;
  readonly onWish: (wish: Wish) => void;
}

function BeginForm({ offered, replaces, onWish }: BeginProps) {
  const isFixed = offered.support === 'assessment';
  const [support, setSupport] = useState<'practice' | 'assessment'>(isFixed ? 'assessment' : 'practice');
  const [trainee, setTrainee] = useState('');
  return (
    <form
      className="stack"
      onSubmit={(event) => {
        event.preventDefault();
        const own = support === 'practice' && offered.support === 'guided' ? 'guided' : support;
        onWish({ kind: 'begin', offered, support: own, trainee });
      }}
    >
      <h2>{offered.title}</h2>
      {isFixed ? (
        <p className="note">Assessment: nothing is told until the end.</p>
      ) : (
        <Keys
          legend={<span className="note">feedback</span>}
          options={['practice', 'assessment'] as const}
          words={{ practice: 'after each test', assessment: 'at the end' }}
          value={support}
          onChange={setSupport}
        />
      )}
      <TextField
        label="your label in the record (may stay empty; it stays on this device)"
        value={trainee}
        maxLength={60}
        onChange={setTrainee}
      />
      <button type="submit" className="main">
        Begin
      </button>
      {replaces ? (
        <p className="note">Beginning puts the unfinished attempt away; export it first to keep it.</p>
      ) : null}
    </form>
  );
}

interface UnfinishedProps {
  readonly inHand: string | null;
  readonly onReturn: () => void;
  readonly onWish: (wish: Wish) => void;
}

/** The attempt in hand, or the one that this device kept. */
function Unfinished({ inHand, onReturn, onWish }: UnfinishedProps) {
  const [kept, setKept] = useState<{ title: string; text: string } | null>(null);
  const [failed, setFailed] = useState(false);
  useEffect(() => {
    let stale = false;
    keptAttempt().then(
      (text) => {
        const title = text === null ? null : unfinishedTitle(text);
        if (!stale && text !== null && title !== null) setKept({ title, text });
      },
      () => !stale && setFailed(true),
    );
    return () => {
      stale = true;
    };
  }, []);
  if (failed)
    return (
      <p className="note" role="status">
        <strong>This browser keeps nothing.</strong> An attempt is lost when the page is closed; Export
        attempt still works.
      </p>
    );
  const title = inHand ?? kept?.title;
  if (title === undefined) return null;
  return (
    <section className="stack" aria-labelledby="unfinished-heading">
      <h2 id="unfinished-heading">Unfinished</h2>
      <div className="acts">
        <button
          type="button"
          className="strong"
          onClick={() =>
            inHand !== null || kept === null
              ? onReturn()
              : onWish({ kind: 'open', name: 'The kept attempt', source: kept.text })
          }
        >
          Go on with {title}
        </button>
        {inHand === null ? (
          <button
            type="button"
            className="plain"
            onClick={() =>
              putAwayAttempt().then(
                () => setKept(null),
                () => setFailed(true),
              )
            }
          >
            Put it away
          </button>
        ) : null}
      </div>
    </section>
  );
}

/** The title of a kept attempt that has no conclusion yet; null where there is nothing to go on with. */
function unfinishedTitle(text: string): string | null {
  try {
    const { scenario, entries } = JSON.parse(text);
    const concluded = entries.some(({ kind }: { kind: unknown }) => kind === 'conclusion');
    return concluded || typeof scenario?.title !== 'string' ? null : scenario.title;
  } catch {
    return null;
  }
}
