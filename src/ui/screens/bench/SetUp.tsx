/**
 * Step one of a test: the position of things as a draft, carried over from where the trainee left them. A short list
 * says how things are set; the lists to change them unfold when somebody asks. It says what differs from now and never
 * what should; it acts at the lock.
 */
import type { FormEvent } from 'react';
import { startTransition, useEffect, useRef, useState } from 'react';
import type { Line } from '../../../laws/conductors.ts';
import type { UnitSheet } from '../../../unit/design.ts';
import type { Draft } from '../../flow/attemptMachine.ts';
import type { Position } from '../../flow/position.ts';
import { isAlike } from '../../flow/position.ts';
import { Choice } from '../../parts/Choice.tsx';
import { TextField } from '../../parts/TextField.tsx';
import { typedNumber } from '../../words/figures.ts';
import { LoadAndLeakage } from './LoadAndLeakage.tsx';
import { SetAsItIs } from './SetAsItIs.tsx';
import type { Row } from './setUpRows.ts';
import { fromText, rowsFor } from './setUpRows.ts';

const LONGEST_WAIT = 3600;

interface Props {
  readonly outlet: UnitSheet['outlet'];
  readonly lines: readonly Line[];
  readonly now: Position;
  readonly draft: Draft;
  readonly onDraft: (draft: Draft) => void;
  readonly onReady: () => void;
  readonly onLeave: () => void;
}

export function SetUp({ outlet, lines, now, draft, onDraft, onReady, onLeave }: Props) {
  const [wait, setWait] = useState(draft.wait === 0 ? '' : String(draft.wait));
  const seconds = wait.trim() === '' ? 0 : typedNumber(wait);
  const { load, leakage } = draft.position;
  const [fits, setFits] = useState(true);
  const [isOpen, setOpen] = useState(load > 0 || leakage !== null);
  const [isChanging, setChanging] = useState(false);
  const fields = useRef<HTMLDivElement>(null);
  // The focus goes on to what the press unfolded.
  useEffect(() => {
    if (isChanging) fields.current?.querySelector('select')?.focus();
  }, [isChanging]);
  const wrong = seconds === null || seconds < 0 || seconds > LONGEST_WAIT;
  const row = ({ field, label, options }: Row) => (
    <Choice
      key={field}
      label={label}
      options={options}
      value={String(draft.position[field])}
      changed={draft.position[field] !== now[field]}
      onChange={(text) =>
        onDraft({ ...draft, position: { ...draft.position, [field]: fromText(field, text) } })
      }
    />
  );
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (!fits) setOpen(true);
    if (!wrong && fits) onReady();
  };
  return (
    <form className="stack" onSubmit={submit} noValidate>
      {isChanging ? (
        <div className="stack" ref={fields}>
          <p className="note">
            What you change here is done when you lock, in the order in which it can be done.
          </p>
          <div>{rowsFor(outlet).map(row)}</div>
          <LoadAndLeakage
            load={load}
            leakage={leakage}
            lines={lines}
            changed={!isAlike(now, draft.position, 'load') || !isAlike(now, draft.position, 'leakage')}
            isOpen={isOpen}
            onFold={setOpen}
            onDrawn={(drawn) => {
              setFits(drawn !== null);
              if (drawn !== null) onDraft({ ...draft, position: { ...draft.position, ...drawn } });
            }}
          />
          <TextField
            label="then wait, s"
            numeric
            value={wait}
            error={wrong ? `Seconds from 0 to ${LONGEST_WAIT} are expected.` : null}
            onChange={(text) => {
              setWait(text);
              const typed = text.trim() === '' ? 0 : typedNumber(text);
              if (typed !== null && typed >= 0 && typed <= LONGEST_WAIT) onDraft({ ...draft, wait: typed });
            }}
          />
        </div>
      ) : (
        <SetAsItIs outlet={outlet} now={now} draft={draft} />
      )}
      <div className="acts">
        <button type="submit" className="main">
          Predict
        </button>
        {isChanging ? null : (
          <button type="button" onClick={() => startTransition(() => setChanging(true))}>
            Change the set-up
          </button>
        )}
        <button type="button" className="plain" onClick={onLeave}>
          Another test
        </button>
      </div>
    </form>
  );
}
