/**
 * The drawing's terminals as buttons: one stop for Tab, arrow keys from one to the next, Enter or Space as a tap,
 * Escape takes a lead off. Each says its name and whether a lead is on it.
 */
import type { KeyboardEvent } from 'react';
import { useRef, useState } from 'react';
import type { Terminal } from '../../bench/terminals.ts';
import { terminalName } from '../../words/trade.ts';
import type { Layout } from './layout.ts';
import type { Arrow } from './terminalMoves.ts';
import { ARROWS, nextTerminal } from './terminalMoves.ts';

interface Props {
  readonly layout: Layout;
  /** Which lead is on a terminal, in words, or why none can be put there. */
  readonly stateOf: (terminal: Terminal) => string;
  readonly onTap: (terminal: Terminal) => void;
  readonly onTakeOff: (terminal: Terminal) => void;
}

export function Terminals({ layout, stateOf, onTap, onTakeOff }: Props) {
  const { terminals, width, height } = layout;
  const [chosen, setChosen] = useState<Terminal | null>(null);
  const buttons = useRef(new Map<Terminal, HTMLButtonElement>());
  const [first = ''] = terminals.keys();
  const at = chosen !== null && terminals.has(chosen) ? chosen : first;

  const go = (terminal: Terminal) => {
    setChosen(terminal);
    buttons.current.get(terminal)?.focus();
  };
  const onKeyDown = (event: KeyboardEvent, terminal: Terminal) => {
    if (event.key in ARROWS) go(nextTerminal(terminals, terminal, event.key as Arrow));
    else if (event.key === 'Home') go(first);
    else if (event.key === 'End') go([...terminals.keys()].at(-1) ?? first);
    else if (event.key === 'Escape') onTakeOff(terminal);
    else return;
    event.preventDefault();
  };

  return (
    // biome-ignore lint/a11y/useSemanticElements: buttons on a drawing are no set of fields
    <div role="group" aria-label="Terminals. Arrow keys move, Enter puts the next lead, Escape takes it off">
      {[...terminals].map(([terminal, { x, y }]) => (
        <button
          key={terminal}
          ref={(button) => {
            if (button === null) buttons.current.delete(terminal);
            else buttons.current.set(terminal, button);
          }}
          type="button"
          className="terminal-button"
          style={{ left: `${(100 * x) / width}%`, top: `${(100 * y) / height}%` }}
          tabIndex={terminal === at ? 0 : -1}
          aria-label={`${terminalName(terminal)}, ${stateOf(terminal)}`}
          onFocus={() => setChosen(terminal)}
          onClick={() => onTap(terminal)}
          onKeyDown={(event) => onKeyDown(event, terminal)}
        />
      ))}
    </div>
  );
}
