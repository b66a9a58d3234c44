/**
 * The measurement in hand, shared by the drawing and the lists: instrument, settings, leads, and what the next tap
 * does. It stays as the trainee leaves it from one test to the next.
 */
import { useCallback, useMemo, useState } from 'react';
import type { Terminal } from '../../bench/terminals.ts';
import { terminalName } from '../../words/trade.ts';
import type { Bench } from './bench.ts';
import type { LeadEnd, Placed } from './leads.ts';
import { leadOn, outOfReach, takenOff, tapped } from './leads.ts';
import type { MeasurementDraft } from './measurement.ts';
import { hasLeads, lastDraft, MEASURING_FIELD } from './measurement.ts';
import type { Position } from './position.ts';
import { useKept } from './useKept.ts';

export interface Measuring {
  readonly draft: MeasurementDraft;
  /** What the next tap on a terminal does. */
  readonly next: LeadEnd;
  /** The terminal that a lead was last put on or taken off while this test was in hand. */
  readonly lastIn: (test: string | null) => Terminal | null;
  /** What came of the last tap, in words. */
  readonly said: string;
  readonly set: (change: Partial<MeasurementDraft>) => void;
  readonly setNext: (end: LeadEnd) => void;
  readonly tap: (terminal: Terminal) => void;
  readonly takeOff: (terminal: Terminal) => void;
}

export const END_WORDS: Readonly<Record<LeadEnd, string>> = {
  first: 'first lead',
  joined: 'joined to the first lead',
  second: 'second lead',
};

export function useMeasuring(bench: Bench, test: string | null): Measuring {
  const { position } = bench;
  const [draft, setDraft] = useKept<MeasurementDraft>(MEASURING_FIELD, () => lastDraft(bench.happened));
  const [next, setNext] = useState<LeadEnd>('first');
  const [last, setLast] = useState<{ terminal: Terminal; test: string | null } | null>(null);
  const [said, setSaid] = useState('');

  const take = useCallback(
    ({ first, second, next: after }: Placed, terminal: Terminal) => {
      setDraft({ ...draft, first, second });
      setNext(after);
      setLast({ terminal, test });
    },
    [draft, setDraft, test],
  );
  // One and the same while nothing of it changes: the drawing goes by it.
  return useMemo(
    () => ({
      draft,
      next,
      lastIn: (of) => (last !== null && last.test === of ? last.terminal : null),
      said,
      set: (change) => {
        const moved = [...(change.first ?? []), change.second ?? ''].find(
          (t) => t !== '' && leadOn(draft, t) === null,
        );
        setDraft({ ...draft, ...change });
        if (moved !== undefined) setLast({ terminal: moved, test });
        setSaid('');
      },
      setNext: (end) => {
        setNext(end);
        setSaid('');
      },
      tap: (terminal) => {
        const why = refusal(draft, terminal, position);
        if (why !== null) return setSaid(why);
        const there = leadOn(draft, terminal);
        const placed = tapped(draft, next, terminal);
        take(placed, terminal);
        const on = leadOn(placed, terminal);
        setSaid(
          there !== null
            ? `${terminalName(terminal)}: ${END_WORDS[there]} off`
            : on === null
              ? 'Four terminals are the most that can be joined.'
              : `${terminalName(terminal)}: ${END_WORDS[on]}`,
        );
      },
      takeOff: (terminal) => {
        const there = leadOn(draft, terminal);
        if (there === null) return setSaid(`${terminalName(terminal)}: no lead`);
        take(takenOff(draft, there, terminal), terminal);
        setSaid(`${terminalName(terminal)}: ${END_WORDS[there]} off`);
      },
    }),
    [draft, next, last, said, position, test, setDraft, take],
  );
}

/** Why a tap puts no lead there: nothing to put, or no way to it. */
function refusal({ instrument }: MeasurementDraft, terminal: Terminal, position: Position): string | null {
  if (instrument === '') return 'Choose an instrument first: its leads go on here.';
  if (!hasLeads(instrument)) return 'This instrument’s leads have their own places, as drawn.';
  const why = outOfReach(terminal, position);
  return why === null ? null : `${terminalName(terminal)}: ${why}`;
}
