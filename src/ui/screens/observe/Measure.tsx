/**
 * An instrument and its leads, in two steps that are the same right or wrong: check where the leads are, then apply.
 * The line between them repeats what the trainee did; it never says what should be done.
 */
import { startTransition, useEffect, useRef, useState } from 'react';
import type { Operation } from '../../../bench/operation.ts';
import { TESTED_PLACES } from '../../../bench/plant.ts';
import type { Terminal } from '../../../bench/terminals.ts';
import { PLACES, terminalsOf } from '../../../bench/terminals.ts';
import type { Site } from '../../../site/site.ts';
import { linesOf } from '../../../site/site.ts';
import type { Bench } from '../../flow/bench.ts';
import { MOST_JOINED } from '../../flow/leads.ts';
import type { InstrumentChoice, MeasurementDraft } from '../../flow/measurement.ts';
import {
  hasLeads,
  INSTRUMENT_CHOICES,
  OPENING_CHOICES,
  prepared,
  TEST_VOLTS,
  WAVEFORMS,
} from '../../flow/measurement.ts';
import type { Measuring } from '../../flow/useMeasuring.ts';
import { Choice } from '../../parts/Choice.tsx';
import { Keys } from '../../parts/Keys.tsx';
import { TextField } from '../../parts/TextField.tsx';
import { applyText, OPENING_WORDS, PLACE_WORDS, terminalText, WAVEFORM_WORDS } from '../../words/trade.ts';
import { LeadsLine, lastProvedText } from './LeadsLine.tsx';

interface Props {
  readonly bench: Bench;
  readonly site: Site;
  readonly measuring: Measuring;
  readonly onApply: (operation: Operation) => void;
}

/** What came of checking the leads, and of which draft: with any change it is void. */
interface Checked {
  readonly draft: MeasurementDraft;
  readonly error: string | null;
}

export function Measure({ bench, site, measuring, onApply }: Props) {
  const { draft, set } = measuring;
  const [check, setCheck] = useState<Checked | null>(null);
  const apply = useRef<HTMLButtonElement>(null);
  const ready = prepared(draft);
  const valid = check !== null && check.draft === draft ? check : null;
  const checked = valid !== null && valid.error === null;
  const error = valid?.error ?? null;
  // The next step stands where the button was: the focus goes on to it.
  useEffect(() => {
    if (checked) apply.current?.focus();
  }, [checked]);

  return (
    <section className="stack" aria-labelledby="measure-heading">
      <h3 id="measure-heading">Measure</h3>
      <Choice
        label="instrument"
        none="choose"
        options={INSTRUMENT_CHOICES}
        value={draft.instrument}
        onChange={(instrument) => set({ instrument: instrument as InstrumentChoice | '' })}
      />
      <Settings draft={draft} site={site} set={set} />
      {/* The room of its leads is kept, so that nothing moves when one is chosen; most have them. */}
      {draft.instrument === '' || hasLeads(draft.instrument) ? (
        <div className={draft.instrument === '' ? 'room' : ''}>
          <Leads draft={draft} site={site} set={set} />
        </div>
      ) : null}
      {checked && ready.ok ? (
        <div className="leads stack">
          <p>
            <LeadsLine draft={draft} />
          </p>
          <p className="note">{lastProvedText(bench, draft)}</p>
          <button
            ref={apply}
            type="button"
            className="main"
            onClick={() => {
              // It goes with this press, and to take the focus from what is gone costs the page a second layout.
              apply.current?.blur();
              setCheck(null);
              startTransition(() => onApply(ready.measurement));
            }}
          >
            {applyText(ready.measurement)}
          </button>
        </div>
      ) : (
        <button type="button" onClick={() => setCheck({ draft, error: ready.ok ? null : ready.missing })}>
          Check leads
        </button>
      )}
      {error === null ? null : (
        <p className="error" role="alert">
          <strong>Not yet.</strong>
          {error}
        </p>
      )}
    </section>
  );
}

interface PartProps {
  readonly draft: MeasurementDraft;
  readonly site: Site;
  readonly set: (change: Partial<MeasurementDraft>) => void;
}

const choices = <T extends string>(names: readonly T[], words: Readonly<Record<T, string>>) =>
  names.map((name): [string, string] => [name, words[name]]);

function Settings({ draft, site, set }: PartProps) {
  switch (draft.instrument) {
    case 'insulation':
      return (
        <Choice
          label="test voltage"
          none="choose"
          options={TEST_VOLTS.map((volts) => [volts, `${volts} V d.c.`])}
          value={draft.volts}
          onChange={(volts) => set({ volts })}
        />
      );
    case 'loop':
      return (
        <Keys
          legend="test current"
          options={['low', 'full'] as const}
          value={draft.current}
          onChange={(current) => set({ current })}
        />
      );
    case 'residual':
      return (
        <div className="stack">
          <Choice
            label="at"
            options={TESTED_PLACES.map((place): [string, string] => [place, PLACE_WORDS[place] ?? place])}
            value={draft.tested}
            onChange={(tested) => set({ tested: tested as MeasurementDraft['tested'] })}
          />
          <Choice
            label="line"
            options={linesOf(site).map((line) => [line, `${line} to PE`])}
            value={draft.line}
            onChange={(line) => set({ line })}
          />
          <Choice
            label="waveform"
            options={choices(WAVEFORMS, WAVEFORM_WORDS)}
            value={draft.waveform}
            onChange={(waveform) => set({ waveform })}
          />
          <Keys
            legend="current"
            options={['ramp', 'fixed'] as const}
            words={{ ramp: 'rising', fixed: 'fixed' }}
            value={draft.mode}
            onChange={(mode) => set({ mode })}
          />
          {draft.mode === 'fixed' ? (
            <div className="stack">
              <TextField
                label="fixed at, mA (empty: the rating)"
                numeric
                value={draft.milliamps}
                onChange={(milliamps) => set({ milliamps })}
              />
              <TextField
                label="held at most, s (empty: the usual time)"
                numeric
                value={draft.seconds}
                onChange={(seconds) => set({ seconds })}
              />
            </div>
          ) : null}
        </div>
      );
    case 'opening-time':
      return (
        <Choice
          label="clock starts"
          options={choices(OPENING_CHOICES, OPENING_WORDS)}
          value={draft.of}
          onChange={(of) => set({ of })}
        />
      );
    case 'phase-sequence':
      return (
        <Choice
          label="at"
          options={['incoming', ...PLACES].map((place): [string, string] => [
            place,
            PLACE_WORDS[place] ?? place,
          ])}
          value={draft.at}
          onChange={(at) => set({ at: at as MeasurementDraft['at'] })}
        />
      );
    default:
      return null;
  }
}

function Leads({ draft, site, set }: PartProps) {
  const terminals = terminalsOf(site);
  const options = terminals.map((t): [string, string] => [t, terminalText(t)]);
  const { first } = draft;
  const lists = useRef<HTMLDivElement>(null);
  return (
    <div ref={lists}>
      {first.map((terminal, i) => (
        <Choice
          // biome-ignore lint/suspicious/noArrayIndexKey: the joined terminals have no other name than their place
          key={i}
          label={i === 0 ? 'first lead' : `joined to it (${i})`}
          none={i === 0 ? 'choose' : 'none'}
          options={options}
          value={terminal}
          onChange={(chosen) => {
            const goes = i > 0 && chosen === '';
            // The list that goes leaves the focus to the one before it.
            if (goes) lists.current?.querySelectorAll('select')[i - 1]?.focus();
            set({ first: goes ? first.filter((_, j) => j !== i) : first.with(i, chosen as Terminal) });
          }}
        />
      ))}
      <Choice
        label="second lead"
        none="choose"
        options={options}
        value={draft.second}
        onChange={(second) => set({ second })}
      />
      {first.length < MOST_JOINED ? (
        <button
          type="button"
          className={first[0] === '' ? 'plain room' : 'plain'}
          onClick={() => set({ first: [...first, ''] })}
        >
          Join a terminal to the first lead
        </button>
      ) : null}
    </div>
  );
}
