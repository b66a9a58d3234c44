/**
 * Step one of a test: the position of things as a draft, carried over from where the trainee left them. It says what
 * differs from now and never what should; it acts at the lock.
 */
import type { FormEvent } from 'react';
import { useState } from 'react';
import type { Line } from '../../../laws/conductors.ts';
import type { UnitSheet } from '../../../unit/design.ts';
import type { Draft } from '../../flow/attemptMachine.ts';
import type { Position } from '../../flow/position.ts';
import { Choice } from '../../parts/Choice.tsx';
import { TextField } from '../../parts/TextField.tsx';
import { typedNumber } from '../../words/figures.ts';
import { LoadAndLeakage } from './LoadAndLeakage.tsx';
import type { Row } from './setUpRows.ts';
import { changesOf, INSIDE_ROWS, isAtRest, usualRows } from './setUpRows.ts';

const LONGEST_WAIT = 3600;

interface Props {
  readonly outlet: UnitSheet['outlet'];
  readonly lines: readonly Line[];
  readonly now: Position;
  readonly draft: Draft;
  readonly onDraft: (draft: Draft) => void;
  /** Whether every figure fits: while one does not, nothing can be locked. */
  readonly onFits: (fits: boolean) => void;
  readonly onPredict: () => void;
  readonly onLeave: () => void;
}

export function SetUp({ outlet, lines, now, draft, onDraft, onFits, onPredict, onLeave }: Props) {
  const { position } = draft;
  const [wait, setWait] = useState(draft.wait === 0 ? '' : String(draft.wait));
  const [drawnFits, setDrawnFits] = useState(true);
  const [isOpen, setOpen] = useState(!isAtRest(position));
  const seconds = waitTyped(wait);
  const changes = changesOf(outlet, now, position);
  const row = (one: Row) => (
    <Choice
      key={one.label}
      label={one.label}
      options={one.options}
      value={one.shows(position)}
      changed={one.shows(position) !== one.shows(now)}
      onChange={(option) => onDraft({ ...draft, position: { ...position, ...one.sets(option, now) } })}
    />
  );
  const submit = (event: FormEvent) => {
    event.preventDefault();
    onPredict();
  };
  return (
    <form className="stack" onSubmit={submit} noValidate aria-label="Set up">
      <div>{usualRows(outlet).map(row)}</div>
      <TextField
        className="in-row"
        label="then wait, s"
        numeric
        value={wait}
        error={seconds === null ? `Seconds from 0 to ${LONGEST_WAIT} are expected.` : null}
        onChange={(text) => {
          const typed = waitTyped(text);
          setWait(text);
          onFits(drawnFits && typed !== null);
          if (typed !== null) onDraft({ ...draft, wait: typed });
        }}
      />
      <details open={isOpen} onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary>
          its CP, diode, PE, load and leakage
          {isAtRest(position) ? null : <strong> set</strong>}
        </summary>
        <div>{INSIDE_ROWS.map(row)}</div>
        <LoadAndLeakage
          load={position.load}
          leakage={position.leakage}
          lines={lines}
          onDrawn={(drawn) => {
            setDrawnFits(drawn !== null);
            onFits(drawn !== null && seconds !== null);
            if (drawn !== null) onDraft({ ...draft, position: { ...position, ...drawn } });
          }}
        />
      </details>
      <p className="note">
        {changes.length === 0
          ? 'As you left it.'
          : `You changed: ${changes.join('; ')}. It is done when you lock, in the order in which it can be done.`}
      </p>
      <div className="acts apart">
        <button type="submit" className="plain">
          On to the lines
        </button>
        <button type="button" className="plain" onClick={onLeave}>
          Another test
        </button>
      </div>
    </form>
  );
}

/** Seconds to wait, none where nothing is typed; null where it does not fit. */
function waitTyped(text: string): number | null {
  const typed = text.trim() === '' ? 0 : typedNumber(text);
  return typed !== null && typed >= 0 && typed <= LONGEST_WAIT ? typed : null;
}
