/** Critical acts that do not keep anybody from passing this job, each with the reason, which trainees see too. */
import { useState } from 'react';
import type { UnsafeId } from '../../../bench/unsafe.ts';
import { UNSAFE_ACTS } from '../../../bench/unsafe.ts';
import { unsafeActText } from '../../../words/unsafeActs.ts';
import { Choice } from '../../parts/Choice.tsx';
import { TextField } from '../../parts/TextField.tsx';
import type { JobFile } from './jobFile.ts';
import { withGateAside } from './jobFile.ts';

interface Props {
  readonly file: JobFile;
  readonly onChange: (file: JobFile) => void;
}

const CRITICAL = (Object.keys(UNSAFE_ACTS) as UnsafeId[]).filter((id) => UNSAFE_ACTS[id].critical);

export function GatesAside({ file, onChange }: Props) {
  const [gate, setGate] = useState('');
  const [reason, setReason] = useState('');
  const aside = file.marking?.setAside ?? [];
  const others = CRITICAL.filter((id) => aside.every((one) => one.gate !== id));
  return (
    <div className="stack">
      <p className="note">
        A critical act means “not yet”, whatever the total. One that this job provokes by itself can be set
        aside beforehand; of a single attempt you do it where you collect.
      </p>
      {aside.map((one) => (
        <div key={one.gate} className="acts">
          <p>
            <strong>Set aside:</strong> {unsafeActText(one.gate)}. {one.reason}
          </p>
          <button
            type="button"
            className="plain"
            onClick={() => onChange(withGateAside(file, one.gate, null))}
          >
            Let it count <span className="unseen">{unsafeActText(one.gate)}</span>
          </button>
        </div>
      ))}
      <Choice
        above
        label="critical act to set aside"
        none="choose …"
        options={others.map((id) => [id, unsafeActText(id)] as const)}
        value={gate}
        onChange={setGate}
      />
      {gate === '' ? null : (
        <form
          className="stack"
          onSubmit={(event) => {
            event.preventDefault();
            if (reason.trim() === '') return;
            onChange(withGateAside(file, gate, reason.trim()));
            setGate('');
            setReason('');
          }}
        >
          <TextField
            label="the reason, which trainees see"
            maxLength={300}
            value={reason}
            onChange={setReason}
          />
          <div className="acts">
            <button type="submit" disabled={reason.trim() === ''}>
              Set this gate aside
            </button>
          </div>
        </form>
      )}
    </div>
  );
}
