/** What else can be done at the bench while a test is open: one act at a time, chosen by name. */
import { useState } from 'react';
import type { DetectorProof, OperationInput } from '../../../bench/operation.ts';
import { PROOFS } from '../../../bench/operation.ts';
import type { Line } from '../../../laws/conductors.ts';
import { LINES } from '../../../laws/conductors.ts';
import type { Papers } from '../../../verification/testAction.ts';
import { useKept } from '../../flow/useKept.ts';
import { Choice } from '../../parts/Choice.tsx';
import { FigureField } from '../../parts/FigureField.tsx';
import { figureWithin } from '../../words/ranges.ts';
import { PROOF_WORDS } from '../../words/trade.ts';
import type { FiguredAct } from './acts.ts';
import { actsOn, figuredActsOn } from './acts.ts';

interface Props {
  readonly papers: Papers;
  /** How the detector was proved the last time; null before the first. */
  readonly lastProof: DetectorProof | null;
  readonly onDo: (operation: OperationInput) => void;
}

type Typed = Readonly<Record<string, string>>;

const startOf = ({ asks }: FiguredAct): Typed =>
  Object.fromEntries(asks.map(({ key, start }) => [key, start]));

/** The act with its figures, or null while one of them does not fit. */
function withFigures({ asks, operation }: FiguredAct, typed: Typed, line: Line): OperationInput | null {
  const figures = asks.map(({ key, range }) => [key, figureWithin(typed[key] ?? '', range)] as const);
  return figures.some(([, figure]) => figure === null)
    ? null
    : operation(Object.fromEntries(figures) as Record<string, number>, line);
}

export function Do({ papers, lastProof, onDo }: Props) {
  const [name, setName] = useKept('act', '');
  const [typed, setTyped] = useKept<Typed>('act figures', {});
  const [line, setLine] = useKept<Line>('act line', 'L1', LINES);
  const acts = actsOn(papers);
  const figured = figuredActsOn(papers);
  const asking = figured.find((act) => act.name === name);
  const chosen: OperationInput | null =
    asking === undefined
      ? (acts.find(([other]) => other === name)?.[2] ?? null)
      : withFigures(asking, typed, line);
  return (
    <div className="stack">
      <Choice
        label="act"
        none="choose"
        options={[
          ...figured.map((act): [string, string] => [act.name, act.text]),
          ...acts.map(([act, text]): [string, string] => [act, text]),
        ]}
        value={name}
        onChange={(next) => {
          const act = figured.find((other) => other.name === next);
          setName(next);
          setTyped(act === undefined ? {} : startOf(act));
        }}
      />
      {asking?.asks.map(({ key, label, range }) => (
        <FigureField
          key={key}
          label={label}
          range={range}
          value={typed[key] ?? ''}
          onChange={(text) => setTyped({ ...typed, [key]: text })}
        />
      ))}
      {asking !== undefined && asking.lines.length > 1 ? (
        <Choice
          label="from line"
          options={asking.lines.map((x): [string, string] => [x, x])}
          value={line}
          onChange={(x) => setLine(x as Line)}
        />
      ) : null}
      {chosen?.op === 'prove-dead' ? (
        <Prove key={name} last={lastProof} onProve={(proof) => onDo({ ...chosen, proof })} />
      ) : (
        <button
          type="button"
          className="main"
          disabled={chosen === null}
          onClick={() => chosen !== null && onDo(chosen)}
        >
          Do it
        </button>
      )}
    </div>
  );
}

interface ProveProps {
  readonly last: DetectorProof | null;
  readonly onProve: (proof: DetectorProof) => void;
}

/** When the detector is tried is the trainee’s to say, the first time; then it is done as it was done last. */
function Prove({ last, onProve }: ProveProps) {
  const [isAsked, setAsked] = useState(last === null);
  if (last !== null && !isAsked)
    return (
      <div className="acts">
        <button type="button" onClick={() => onProve(last)}>
          As last time: {PROOF_WORDS[last]}
        </button>
        <button type="button" className="plain" onClick={() => setAsked(true)}>
          Another way
        </button>
      </div>
    );
  return (
    // biome-ignore lint/a11y/useSemanticElements: buttons that act are no set of fields
    <div className="acts" role="group" aria-label="detector and proving unit">
      {PROOFS.map((proof) => (
        <button
          key={proof}
          type="button"
          onClick={() => {
            setAsked(false);
            onProve(proof);
          }}
        >
          {capital(PROOF_WORDS[proof])}
        </button>
      ))}
    </div>
  );
}

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
