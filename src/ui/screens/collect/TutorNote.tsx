/** The tutor's comment on one attempt, and gates set aside, each with a reason: both are shown wherever the attempt stands. */
import { useState } from 'react';
import type { Marked } from '../../../desk/collect.ts';
import type { Note } from '../../../desk/giving.ts';
import { unsafeActText } from '../../../words/unsafeActs.ts';
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
  const acts = [...new Set(row.marks.gates.critical.map(({ id }) => id))];
  const keep = (changed: Note, what: string) => {
    setSaid('');
    void onNote(changed).then(() => setSaid(what));
  };
  return (
    <section className="stack" aria-labelledby="note-heading">
      <h2 id="note-heading">Your comment</h2>
      <div className="not-printed">
        <TextField label="comment" lines value={comment} maxLength={1000} onChange={setComment} />
      </div>
      <p className="only-printed">{comment}</p>
      <div className="acts">
        <button
          type="button"
          disabled={comment === now.comment}
          onClick={() => keep({ ...now, comment }, 'Comment kept.')}
        >
          Keep the comment
        </button>
      </div>
      {acts.map((id) => (
        <Gate
          key={id}
          id={id}
          reason={now.setAside.find(({ gate }) => gate === id)?.reason ?? null}
          onSetAside={(reason) =>
            keep(
              {
                ...now,
                setAside: [
                  ...now.setAside.filter(({ gate }) => gate !== id),
                  ...(reason === null ? [] : [{ gate: id, reason }]),
                ],
              },
              reason === null ? 'The gate counts again.' : 'The gate is set aside.',
            )
          }
        />
      ))}
      <p role="status" className="note not-printed">
        {said}
      </p>
    </section>
  );
}

interface GateProps {
  readonly id: Marked['marks']['gates']['critical'][number]['id'];
  readonly reason: string | null;
  readonly onSetAside: (reason: string | null) => void;
}

function Gate({ id, reason, onSetAside }: GateProps) {
  const [text, setText] = useState('');
  return reason === null ? (
    <form
      className="stack not-printed"
      onSubmit={(event) => {
        event.preventDefault();
        if (text.trim() !== '') onSetAside(text.trim());
      }}
    >
      <TextField
        label={`set this gate aside, because (${unsafeActText(id)})`}
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
        <strong>Set aside:</strong> {unsafeActText(id)}. {reason}
      </p>
      <button type="button" className="plain" onClick={() => onSetAside(null)}>
        Let it count again
      </button>
    </div>
  );
}
