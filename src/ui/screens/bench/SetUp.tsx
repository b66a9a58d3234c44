/**
 * Step one of a test: the position of things as a draft, carried over from where the trainee left them. It says what
 * differs from now and never what should; it acts at the lock.
 */
import type { FormEvent } from 'react';
import { useState } from 'react';
import type { Line } from '../../../laws/conductors.ts';
import { CABLE_CODINGS } from '../../../laws/proximity.ts';
import type { UnitSheet } from '../../../unit/design.ts';
import type { Draft } from '../../flow/attemptMachine.ts';
import { SUPPLY_WORDS } from '../../flow/known.ts';
import type { Position } from '../../flow/position.ts';
import { isAlike, SUPPLY_POSITIONS } from '../../flow/position.ts';
import { Choice } from '../../parts/Choice.tsx';
import { TextField } from '../../parts/TextField.tsx';
import { typedNumber } from '../../words/figures.ts';
import { STATE_WORDS } from '../../words/trade.ts';
import { LoadAndLeakage } from './LoadAndLeakage.tsx';

type Options = readonly (readonly [string, string])[];

interface Row {
  readonly field: keyof Position;
  readonly label: string;
  readonly options: Options;
}

const PLACES_OF_SITE: readonly Row[] = [
  { field: 'supply', label: 'supply', options: SUPPLY_POSITIONS.map((x) => [x, SUPPLY_WORDS[x]]) },
  {
    field: 'cover',
    label: 'unit’s cover',
    options: [
      ['closed', 'closed'],
      ['open', 'open'],
    ],
  },
  {
    field: 'unit',
    label: 'unit’s conductors',
    options: [
      ['connected', 'connected'],
      ['taken off', 'taken off'],
    ],
  },
];

const STAND_IN: readonly Row[] = [
  {
    field: 'plugged',
    label: 'stand-in',
    options: [
      ['true', 'plugged in'],
      ['false', 'unplugged'],
    ],
  },
  { field: 'state', label: 'its state', options: Object.entries(STATE_WORDS) },
  {
    field: 'pilot',
    label: 'its pilot (CP)',
    options: [
      ['sound', 'sound'],
      ['shorted-to-earth', 'shorted to PE'],
      ['open', 'open'],
    ],
  },
  {
    field: 'diode',
    label: 'its diode',
    options: [
      ['sound', 'sound'],
      ['shorted', 'shorted'],
    ],
  },
  {
    field: 'earth',
    label: 'its PE',
    options: [
      ['sound', 'sound'],
      ['open', 'open'],
    ],
  },
];

const CODING: Row = {
  field: 'coding',
  label: 'coding in the plug',
  options: [...CABLE_CODINGS.map((amps): [string, string] => [String(amps), `${amps} A`]), ['null', 'none']],
};

/** A position's field from the text of its option. */
const fromText = (field: keyof Position, text: string): unknown =>
  field === 'plugged' ? text === 'true' : field === 'coding' ? (text === 'null' ? null : Number(text)) : text;

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
      <p className="note">
        As you left it. What you change here is done when you lock, in the order in which it can be done.
      </p>
      <div>
        {PLACES_OF_SITE.map(row)}
        {(outlet === 'socket' ? [...STAND_IN, CODING] : STAND_IN).map(row)}
      </div>
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
      <div className="acts">
        <button type="submit" className="main">
          Predict
        </button>
        <button type="button" className="plain" onClick={onLeave}>
          Another test
        </button>
      </div>
    </form>
  );
}
