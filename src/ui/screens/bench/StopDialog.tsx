/** Stopping the work with a reason: a right answer where going on would be dangerous. */
import { useState } from 'react';
import { useKept } from '../../flow/useKept.ts';
import { Dialog } from '../../parts/Dialog.tsx';
import { TextField } from '../../parts/TextField.tsx';

interface Props {
  readonly onStop: (why: string) => void;
  readonly onGoOn: () => void;
}

export function StopDialog({ onStop, onGoOn }: Props) {
  const [why, setWhy] = useKept('stop reason', '');
  const [tried, setTried] = useState(false);
  const empty = why.trim() === '';
  return (
    <Dialog title="Stop the work" closeWith="Go on testing" onClose={onGoOn}>
      <p>The tests end here and the bench is left as it is. Next you conclude.</p>
      <TextField
        label="reason"
        lines
        maxLength={500}
        value={why}
        error={tried && empty ? 'A reason is expected: it goes into the record.' : null}
        onChange={setWhy}
      />
      <button
        type="button"
        className="main"
        onClick={() => {
          setTried(true);
          if (!empty) onStop(why.trim());
        }}
      >
        Stop the work
      </button>
    </Dialog>
  );
}
