/** All that this device keeps, at once: out to a file, in from one, or deleted. */
import { useState } from 'react';
import type { Problem } from '../../../scenario/problems.ts';
import { tooLarge } from '../../../scenario/problems.ts';
import type { Merged } from '../../../store/broughtIn.ts';
import { mergeRecord } from '../../../store/broughtIn.ts';
import { FIRST_MINUTE, FIRST_RUN, PACE, SOUND, THEME } from '../../../store/choices.ts';
import { deleteEverything } from '../../../store/deleting.ts';
import { problemOf } from '../../../store/keepProblem.ts';
import { LARGEST_RECORD, parsingRecord } from '../../../store/recordFile.ts';
import { WHY_NOT_KEPT } from '../../../words/keeping.ts';
import { inWords } from '../../../words/problems.ts';
import { inSlices } from '../../flow/inSlices.ts';
import type { OpenAttempt } from '../../flow/useOpenAttempt.ts';
import { exportEverything } from '../../parts/exportEverything.ts';
import { OpenFile } from '../../parts/OpenFile.tsx';
import { ProblemList, Problems } from '../../parts/Problems.tsx';
import { DeleteDialog } from './DeleteDialog.tsx';

type Came =
  | {
      readonly kind: 'said';
      readonly text: string;
      readonly file: string;
      readonly leftOut: readonly Problem<string>[];
    }
  | { readonly kind: 'refused'; readonly file: string; readonly problems: readonly Problem<string>[] };

interface Props {
  readonly count: number;
  readonly openAttempt: OpenAttempt | null;
  readonly onChanged: () => void;
  readonly onDeleted: () => void;
}

export function Everything({ count, openAttempt, onChanged, onDeleted }: Props) {
  const [came, setCame] = useState<Came | null>(null);
  const [isDeleting, setIsDeleting] = useState(false);
  const say = (text: string, file = '', leftOut: readonly Problem<string>[] = []) =>
    setCame({ kind: 'said', text, file, leftOut });
  const failed = (what: string, error: unknown) => say(`${what} ${WHY_NOT_KEPT[problemOf(error)]}`);

  const exportAll = async () => {
    try {
      say(await exportEverything(openAttempt));
    } catch (error) {
      failed('Not exported.', error);
    }
  };
  const bringIn = async (file: File) => {
    say(`Reading ${file.name} …`);
    // Whoever leaves the page meanwhile still has it brought in.
    const toTheEnd = new AbortController().signal;
    const read =
      file.size > LARGEST_RECORD
        ? { ok: false as const, problems: [{ path: '', message: tooLarge(LARGEST_RECORD) }] }
        : await inSlices(parsingRecord(await file.text()), toTheEnd);
    if (read === null) return;
    if (!read.ok) return setCame({ kind: 'refused', file: file.name, problems: inWords(read.problems) });
    try {
      const merged = await mergeRecord(read.value.record);
      say(mergedText(merged), file.name, inWords(read.value.leftOut));
      onChanged();
    } catch (error) {
      failed('Nothing was brought in.', error);
    }
  };
  const deleteAll = async () => {
    setIsDeleting(false);
    try {
      await deleteEverything();
      THEME.forget();
      PACE.forget();
      SOUND.forget();
      FIRST_MINUTE.forget();
      FIRST_RUN.forget();
      say('Everything is deleted: this device keeps nothing of yours.');
      onDeleted();
    } catch (error) {
      failed('Not deleted.', error);
    }
  };

  return (
    <section className="stack" aria-labelledby="everything-heading">
      <h2 id="everything-heading">Everything</h2>
      <p className="note prose">
        One file holds every attempt and the goal, for another device or for safe keeping. Brought in, it is
        merged: an attempt that is here already stays once, the longer one of two.
      </p>
      <div className="acts">
        <button type="button" onClick={() => void exportAll()}>
          Export everything
        </button>
        <OpenFile label="Bring in a record…" onFile={(file) => void bringIn(file)} />
        <button type="button" className="plain" aria-haspopup="dialog" onClick={() => setIsDeleting(true)}>
          Delete everything…
        </button>
      </div>
      {came?.kind === 'said' ? <p role="status">{came.text}</p> : null}
      {came?.kind === 'said' && came.leftOut.length > 0 ? (
        <LeftOut file={came.file} problems={came.leftOut} />
      ) : null}
      {came?.kind === 'refused' ? (
        <Problems file={came.file} problems={came.problems} kept="Nothing here was changed." />
      ) : null}
      {isDeleting ? (
        <DeleteDialog
          title="Delete everything"
          keepWord="Keep everything"
          deleteWord="Delete everything"
          onKeep={() => setIsDeleting(false)}
          onDelete={() => void deleteAll()}
        >
          <p>
            {count === 0 ? 'No attempt' : count === 1 ? 'One attempt' : `All ${count} attempts`}, the goal and
            the choice of paper. Once deleted, nothing of it can be brought back but from a file that you
            exported.
          </p>
        </DeleteDialog>
      ) : null}
    </section>
  );
}

function LeftOut({
  file,
  problems,
}: {
  readonly file: string;
  readonly problems: readonly Problem<string>[];
}) {
  return (
    <div role="alert" className="found first stack">
      <p>
        <strong>Left out of {file}</strong>, since it cannot be read:
      </p>
      <ProblemList problems={problems} />
    </div>
  );
}

function mergedText({ added, longer, keptAlready }: Merged): string {
  const parts = [
    added === 0 ? '' : `${added} brought in`,
    longer === 0 ? '' : `${longer} of those here went on further there and now do here`,
    keptAlready === 0 ? '' : `${keptAlready} here already`,
  ].filter((part) => part !== '');
  return parts.length === 0 ? 'The record held no attempt.' : `Attempts: ${parts.join(', ')}.`;
}
