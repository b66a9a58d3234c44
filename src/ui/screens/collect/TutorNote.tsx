/** The tutor's comment on one attempt, and gates set aside, each with a reason: both are shown wherever the attempt stands. */
import { useState } from 'react';
import { gatesNotMet } from '../../../desk/class.ts';
import type { Marked } from '../../../desk/collect.ts';
import type { Note } from '../../../desk/giving.ts';
import { gateText } from '../../../words/collect.ts';
import { TextField } from '../../parts/TextField.tsx';

interface Props {
  readonly row: Marked;
  readonly note: Note | null;
  readonly onNote: (note: Note) => Promise<void>;
}

const NO_NOTE: Note = { comment: '', setAside: [] };

export function TutorNote({ row, note, onNote }: Props) {
  const now = note ?? NO_NOTE;
  const [comment, setComment] = useState(now.comment);
  const [said, setSaid] = useState('');
  const keep = (changed: Note, what: string) => {
    setSaid('');
    void onNote(changed).then(() => setSaid(what));
  };
  return (
    <section className="stack" aria-labelledby="note-heading">
      <h2 id="note-heading">Your comment</h2>
      <TextField label="comment" lines value={comment} maxLength={1000} onChange={setComment} />
      <div className="acts">
        <button
          type="button"
          disabled={comment === now.comment}
          onClick={() => keep({ ...now, comment }, 'Comment kept.')}
        >
          Keep the comment
        </button>
      </div>
      {gatesNotMet(row, now).map(({ gate, reason }) => (
        <Gate
          key={gate}
          gate={gate}
          reason={reason}
          isByJob={now.setAside.every((one) => one.gate !== gate)}
          onSetAside={(reason) =>
            keep(
              {
                ...now,
                setAside: [
                  ...now.setAside.filter((one) => one.gate !== gate),
                  ...(reason === null ? [] : [{ gate, reason }]),
                ],
              },
              reason === null ? 'The gate counts again.' : 'The gate is set aside.',
            )
          }
        />
      ))}
      <p role="status" className="note">
        {said}
      </p>
    </section>
  );
}

interface GateProps {
  readonly gate: string;
  readonly reason: string | null;
  /** The job itself sets it aside: then only its file can have it count again. */
  readonly isByJob: boolean;
  readonly onSetAside: (reason: string | null) => void;
}

function Gate({ gate, reason, isByJob, onSetAside }: GateProps) {
  const [text, setText] = useState('');
  return reason === null ? (
    <form
      className="stack"
      onSubmit={(event) => {
        event.preventDefault();
        if (text.trim() !== '') onSetAside(text.trim());
      }}
    >
      <TextField
        label={`set this gate aside, because (${gateText(gate)})`}
        value={text}
        maxLength={300}
        onChange={setText}
      />
      <button type="submit" disabled={text.trim() === ''}>
        Set aside
      </button>
    </form>
  ) : (
    <div className="acts">
      <p>
        <strong>Set aside:</strong> {gateText(gate)}. {reason}
      </p>
      {isByJob ? (
        <span className="note">in the job’s own file</span>
      ) : (
        <button type="button" className="plain" onClick={() => onSetAside(null)}>
          Let it count again
        </button>
      )}
    </div>
  );
}
