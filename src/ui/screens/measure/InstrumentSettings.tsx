/**
 * An instrument's settings and its leads as a list: the same that is done by touch on the drawing. It never says what
 * should be done.
 */

import { useRef } from 'react';
import { TESTED_PLACES } from '../../../bench/plant.ts';
import { OPENINGS } from '../../../bench/readings/choices.ts';
import type { Terminal } from '../../../bench/terminals.ts';
import { PLACES, terminalsOf } from '../../../bench/terminals.ts';
import type { Site } from '../../../site/site.ts';
import { linesOf } from '../../../site/site.ts';
import { OPENING_WORDS, WAVEFORM_WORDS } from '../../../words/readings.ts';
import { PLACE_WORDS, terminalText } from '../../../words/terminals.ts';
import { MOST_JOINED } from '../../flow/leads.ts';
import type { MeasurementDraft } from '../../flow/measurement.ts';
import { hasLeads, TEST_VOLTS, WAVEFORMS } from '../../flow/measurement.ts';
import { SPREAD_WORDS, spreadsOn } from '../../flow/spread.ts';
import { Choice } from '../../parts/Choice.tsx';
import { Keys } from '../../parts/Keys.tsx';
import { TextField } from '../../parts/TextField.tsx';

interface PartProps {
  readonly draft: MeasurementDraft;
  readonly site: Site;
  readonly set: (change: Partial<MeasurementDraft>) => void;
}

export function Settings(props: PartProps) {
  const { draft, site, set } = props;
  return (
    <>
      {hasLeads(draft.instrument) || (draft.instrument === 'residual' && site.phases > 1) ? (
        <Keys
          legend="readings on"
          options={spreadsOn(site).filter(
            (spread) => draft.instrument !== 'residual' || spread === 'one' || spread === 'lines',
          )}
          words={draft.instrument === 'residual' ? { ...SPREAD_WORDS, one: 'this line' } : SPREAD_WORDS}
          value={draft.spread}
          onChange={(spread) => set({ spread })}
        />
      ) : null}
      <OwnSettings {...props} />
    </>
  );
}

function OwnSettings({ draft, site, set }: PartProps) {
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
      return <Residual draft={draft} site={site} set={set} />;
    case 'opening-time':
      return (
        <Keys
          legend="clock starts"
          options={OPENINGS}
          words={OPENING_WORDS}
          value={OPENINGS.find((of) => of === draft.of) ?? null}
          onChange={(of) => set({ of })}
        />
      );
    case 'phase-sequence':
      return (
        <Keys
          legend="at"
          options={SEQUENCE_PLACES}
          words={PLACE_WORDS as Record<(typeof SEQUENCE_PLACES)[number], string>}
          value={draft.at}
          onChange={(at) => set({ at })}
        />
      );
    default:
      return null;
  }
}

const SEQUENCE_PLACES = ['incoming', ...PLACES] as const;

function Residual({ draft, site, set }: PartProps) {
  const lines = linesOf(site);
  return (
    <>
      <Keys
        legend="waveform"
        options={WAVEFORMS}
        words={WAVEFORM_WORDS}
        value={WAVEFORMS.find((waveform) => waveform === draft.waveform) ?? null}
        onChange={(waveform) => set({ waveform })}
      />
      <div className="fields">
        <Keys
          legend="at"
          options={TESTED_PLACES}
          value={draft.tested}
          onChange={(tested) => set({ tested })}
        />
        {lines.length > 1 && draft.spread === 'one' ? (
          <Keys
            legend="line to PE"
            options={lines}
            value={lines.find((line) => line === draft.line) ?? null}
            onChange={(line) => set({ line })}
          />
        ) : null}
        <Keys
          legend="current"
          options={['ramp', 'fixed'] as const}
          words={{ ramp: 'rising', fixed: 'fixed' }}
          value={draft.mode}
          onChange={(mode) => set({ mode })}
        />
      </div>
      {draft.mode === 'fixed' ? (
        <div className="fields">
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
    </>
  );
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
