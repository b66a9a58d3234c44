/**
 * An instrument's settings and its leads as a list: the same that is done by touch on the drawing. It never says what
 * should be done.
 */
import { useRef } from 'react';
import { TESTED_PLACES } from '../../../bench/plant.ts';
import type { Terminal } from '../../../bench/terminals.ts';
import { PLACES, terminalsOf } from '../../../bench/terminals.ts';
import type { Site } from '../../../site/site.ts';
import { linesOf } from '../../../site/site.ts';
import { PLACE_WORDS, terminalText } from '../../../words/terminals.ts';
import { MOST_JOINED } from '../../flow/leads.ts';
import type { MeasurementDraft } from '../../flow/measurement.ts';
import { OPENING_CHOICES, TEST_VOLTS, WAVEFORMS } from '../../flow/measurement.ts';
import { Choice } from '../../parts/Choice.tsx';
import { Keys } from '../../parts/Keys.tsx';
import { TextField } from '../../parts/TextField.tsx';
import { OPENING_WORDS, WAVEFORM_WORDS } from '../../words/trade.ts';

interface PartProps {
  readonly draft: MeasurementDraft;
  readonly site: Site;
  readonly set: (change: Partial<MeasurementDraft>) => void;
}

const choices = <T extends string>(names: readonly T[], words: Readonly<Record<T, string>>) =>
  names.map((name): [string, string] => [name, words[name]]);

export function Settings({ draft, site, set }: PartProps) {
  switch (draft.instrument) {
    case 'insulation':
      return (
        <Keys
          legend="test voltage, V d.c."
          options={TEST_VOLTS}
          value={TEST_VOLTS.find((volts) => volts === draft.volts) ?? null}
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

export function Leads({ draft, site, set }: PartProps) {
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
