/** What else can be done at the bench while a test is open: each act a button with its name, done by one press. */
import { useEffect, useRef, useState } from 'react';
import type { OperationInput } from '../../../bench/operation.ts';
import type { DetectorProof } from '../../../bench/usual.ts';
import { PROOFS } from '../../../bench/usual.ts';
import type { Line } from '../../../laws/conductors.ts';
import { LINES } from '../../../laws/conductors.ts';
import type { Papers } from '../../../verification/testAction.ts';
import { PROOF_WORDS } from '../../../words/trade.ts';
import type { ActRow } from '../../flow/rows.ts';
import { useKept } from '../../flow/useKept.ts';
import { figureWithin } from '../../format/ranges.ts';
import { FigureField } from '../../parts/FigureField.tsx';
import { Keys } from '../../parts/Keys.tsx';
import type { Act, FiguredAct } from './acts.ts';
import { actsOn, figuredActsOn } from './acts.ts';
import { RowKeys } from './RowKeys.tsx';

interface Props {
  readonly papers: Papers;
  /** How the detector was proved the last time; null before the first. */
  readonly lastProof: DetectorProof | null;
  /** The act whose figures are asked for, by its name, with what is typed of them; an empty name where none is. */
  readonly asked: Asked;
  readonly onAsk: (asked: Asked) => void;
  /** The trainee's own rows of acts. */
  readonly rows: readonly ActRow[];
  readonly onDo: (...operations: readonly OperationInput[]) => void;
}

type Typed = Readonly<Record<string, string>>;

export interface Asked {
  readonly name: string;
  readonly typed: Typed;
}

export const NOTHING_ASKED: Asked = { name: '', typed: {} };

/** With the figures that it begins with. */
export const askFor = ({ name, asks }: FiguredAct): Asked => ({
  name,
  typed: Object.fromEntries(asks.map(({ key, start }) => [key, start])),
});

/** Time in which most of what a figure changes is followed (IEC 61851-1:2017 Table A.6, sequence 6: 10 s). */
const THEN_WAIT = 10;

/** The act with its figures, or null while one of them does not fit. */
function withFigures({ asks, operation }: FiguredAct, typed: Typed, line: Line): OperationInput | null {
  const figures = asks.map(({ key, range }) => [key, figureWithin(typed[key] ?? '', range)] as const);
  return figures.some(([, figure]) => figure === null)
    ? null
    : operation(Object.fromEntries(figures) as Record<string, number>, line);
}

/** What is done with, by the beginning of an act's name; the rest is done by hand at the origin and the unit. */
const KINDS = ['stand-in', 'press', 'disturbance', 'coding in the plug'] as const;
const BY_HAND = 'at the origin and the unit';

const kindOf = (text: string): string => KINDS.find((kind) => text.startsWith(`${kind}:`)) ?? BY_HAND;

export function Do({ papers, asked, onAsk, lastProof, rows, onDo }: Props) {
  const { name, typed } = asked;
  const [line, setLine] = useKept<Line>('act line', 'L1', LINES);
  const [asksProof, setAsksProof] = useState<OperationInput | null>(null);
  const [another, setAnother] = useState(false);
  const figures = useRef<HTMLFormElement>(null);
  // The act is taken: its figure is typed next. A sheet that comes up with it goes by the attribute.
  useEffect(() => {
    const field = name === '' ? null : figures.current?.querySelector('input');
    field?.setAttribute('autofocus', '');
    field?.focus();
  }, [name]);
  const acts = actsOn(papers);
  const figured = figuredActsOn(papers);
  const asking = figured.find((act) => act.name === name);
  const doIt = ([, , operation]: Act) => {
    if (operation.op !== 'prove-dead') return onDo(operation);
    if (lastProof !== null && !another) return onDo({ ...operation, proof: lastProof });
    setAsksProof(operation);
  };
  if (asksProof?.op === 'prove-dead')
    return (
      // biome-ignore lint/a11y/useSemanticElements: buttons that act are no set of fields
      <div className="acts" role="group" aria-label="detector and proving unit">
        {PROOFS.map((proof) => (
          <button key={proof} type="button" onClick={() => onDo({ ...asksProof, proof })}>
            {capital(PROOF_WORDS[proof])}
          </button>
        ))}
      </div>
    );
  if (asking !== undefined) {
    const chosen = withFigures(asking, typed, line);
    const doIt = (...after: readonly OperationInput[]) => {
      if (chosen === null) return;
      onAsk(NOTHING_ASKED);
      onDo(chosen, ...after);
    };
    return (
      <form
        ref={figures}
        className="stack"
        aria-label={asking.text}
        onSubmit={(event) => {
          event.preventDefault();
          doIt();
        }}
      >
        {asking.asks.map(({ key, label, range }) => (
          <FigureField
            key={key}
            label={label}
            range={range}
            value={typed[key] ?? ''}
            onChange={(text) => onAsk({ name, typed: { ...typed, [key]: text } })}
          />
        ))}
        {asking.lines.length > 1 ? (
          <Keys legend="from line" options={asking.lines} value={line} onChange={setLine} />
        ) : null}
        <div className="bar-acts">
          <button type="button" onClick={() => onAsk(NOTHING_ASKED)}>
            Another act
          </button>
          {name === 'wait' ? null : (
            <button
              type="button"
              disabled={chosen === null}
              onClick={() => doIt({ op: 'wait', seconds: THEN_WAIT })}
            >
              Do it, wait {THEN_WAIT} s
            </button>
          )}
          <button type="submit" className="main" disabled={chosen === null}>
            Do it
          </button>
        </div>
      </form>
    );
  }
  return (
    <>
      <RowKeys rows={rows} onDo={onDo} />
      {[BY_HAND, ...KINDS].map((kind) => {
        const own = acts.filter(([, text]) => kindOf(text) === kind);
        const asked = figured.filter(({ text }) => kindOf(text) === kind);
        if (own.length + asked.length === 0) return null;
        return (
          <section key={kind} aria-label={kind}>
            <h3 className="lettering">{kind}</h3>
            <div className="act-keys">
              {own.map((one) => (
                <button key={one[0]} type="button" aria-label={one[1]} onClick={() => doIt(one)}>
                  {one[1].replace(`${kind}: `, '')}
                </button>
              ))}
              {asked.map((act) => (
                <button key={act.name} type="button" aria-label={act.text} onClick={() => onAsk(askFor(act))}>
                  {act.text.replace(`${kind}: `, '')} …
                </button>
              ))}
            </div>
          </section>
        );
      })}
      {lastProof === null ? null : (
        <label className="tick">
          <input type="checkbox" checked={another} onChange={({ target }) => setAnother(target.checked)} />
          <span>
            Prove dead another way than last time <span className="note">({PROOF_WORDS[lastProof]})</span>
          </span>
        </label>
      )}
    </>
  );
}

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
