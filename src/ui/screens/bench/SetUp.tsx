/**
 * Step one of a test: the position of things as a draft, carried over from where the trainee left them. It says what
 * differs from now and never what should; it acts at the lock.
 */
import { useState } from 'react';
import type { Line } from '../../../laws/conductors.ts';
import type { UnitSheet } from '../../../unit/design.ts';
import type { Hand } from '../../drawing/hands.ts';
import type { Draft } from '../../flow/attemptMachine.ts';
import type { Position } from '../../flow/position.ts';
import { DESK, useMatches } from '../../flow/useMatches.ts';
import { typedNumber } from '../../format/figures.ts';
import { Choice } from '../../parts/Choice.tsx';
import { leaveField } from '../../parts/leaveField.ts';
import { TextField } from '../../parts/TextField.tsx';
import { HandChoices } from './HandChoices.tsx';
import { LoadAndLeakage } from './LoadAndLeakage.tsx';
import { StepFrame } from './StepFrame.tsx';
import type { Row } from './setUpRows.ts';
import { CHOICES_OF, changesOf, INSIDE_ROWS, isAtRest, usualRows } from './setUpRows.ts';

const LONGEST_WAIT = 3600;

interface Props {
  readonly outlet: UnitSheet['outlet'];
  readonly lines: readonly Line[];
  readonly now: Position;
  readonly draft: Draft;
  /** The part of the bench that was touched on the drawing, with more positions than two. */
  readonly hand: Hand | null;
  readonly onHand: (hand: Hand | null) => void;
  readonly onDraft: (draft: Draft) => void;
  readonly onPredict: () => void;
  /** Null where no other test is to be had. */
  readonly onLeave: (() => void) | null;
}

export function SetUp(props: Props) {
  const { outlet, lines, now, draft, hand, onHand, onDraft, onPredict, onLeave } = props;
  const { position } = draft;
  const [wait, setWait] = useState(draft.wait === 0 ? '' : String(draft.wait));
  const [drawnFits, setDrawnFits] = useState(true);
  const [isOpen, setOpen] = useState(!isAtRest(position));
  const [isListed, setListed] = useState(useMatches(DESK));
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
  const fits = drawnFits && seconds !== null;
  const predict = () => {
    if (!fits) return;
    leaveField();
    onPredict();
  };
  const offered = hand === null ? undefined : CHOICES_OF[hand];
  const bar =
    offered === undefined ? (
      <>
        <p className="bar-line">
          {changes.length === 0 ? (
            'At the lock: everything stays as you left it.'
          ) : (
            <>
              <strong>At the lock:</strong> {changes.join('; ')}. The rest stays.
            </>
          )}
        </p>
        <div className="bar-acts">
          {onLeave === null ? null : (
            <button type="button" onClick={onLeave}>
              Another test
            </button>
          )}
          <button type="submit" className="main" disabled={!fits}>
            Predict
          </button>
        </div>
      </>
    ) : (
      <HandChoices
        row={offered}
        when="at the lock"
        position={position}
        now={now}
        onChoose={(change) => onDraft({ ...draft, position: { ...position, ...change } })}
        onClose={() => onHand(null)}
      />
    );
  return (
    <StepFrame bar={bar} form={{ label: 'Set up', onSubmit: predict }}>
      <TextField
        className="in-row"
        label="then wait, s"
        numeric
        value={wait}
        error={seconds === null ? `Seconds from 0 to ${LONGEST_WAIT} are expected.` : null}
        onChange={(text) => {
          const typed = waitTyped(text);
          setWait(text);
          if (typed !== null) onDraft({ ...draft, wait: typed });
        }}
      />
      <details
        open={isListed}
        onToggle={({ target, currentTarget }) => target === currentTarget && setListed(currentTarget.open)}
        className="set-up-rows"
      >
        <summary>All of it, in a list</summary>
        {usualRows(outlet).map(row)}
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
              if (drawn !== null) onDraft({ ...draft, position: { ...position, ...drawn } });
            }}
          />
        </details>
      </details>
    </StepFrame>
  );
}

/** Seconds to wait, none where nothing is typed; null where it does not fit. */
function waitTyped(text: string): number | null {
  const typed = text.trim() === '' ? 0 : typedNumber(text);
  return typed !== null && typed >= 0 && typed <= LONGEST_WAIT ? typed : null;
}
