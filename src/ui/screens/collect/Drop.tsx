/** Where files, folders and zips are dropped, or chosen; beside it what came. */
import { useRef, useState } from 'react';
import { toItsEnd } from '../../../bench/toItsEnd.ts';
import type { Giving } from '../../../desk/giving.ts';
import { LARGEST_GIVING, looksLikeGiving, readingGiving } from '../../../desk/giving.ts';
import { parseJson } from '../../../scenario/json.ts';
import { changeGiving } from '../../../store/givings.ts';
import { inWords } from '../../../words/problems.ts';
import type { Dropped } from '../../flow/collectWorker.ts';
import { Problems } from '../../parts/Problems.tsx';
import { chosen, droppedIn } from './dropped.ts';
import type { Session } from './session.ts';
import { cancelCollecting } from './session.ts';

interface Props {
  readonly session: Session;
  /** What somebody handed in, with the giving-outs that came along with it. */
  readonly onDropped: (dropped: readonly Dropped[], opened: readonly Giving[]) => void;
}

/** So few are each looked at as a whole; of five hundred only those that begin as a giving-out does. */
const FEW = 20;
const BEGINNING = 400;

export function Drop({ session, onDropped }: Props) {
  const files = useRef<HTMLInputElement>(null);
  const folder = useRef<HTMLInputElement>(null);
  const [isOver, setOver] = useState(false);
  const [said, setSaid] = useState<string | null>(null);
  const [refused, setRefused] = useState<{ name: string; problems: ReturnType<typeof inWords> } | null>(null);
  const { progress, rows, took, failed } = session;

  const take = async (dropped: readonly Dropped[]) => {
    setSaid(null);
    setRefused(null);
    const attempts: Dropped[] = [];
    const opened: Giving[] = [];
    for (const one of dropped) {
      const read = dropped.length <= FEW || (await beginsAsGiving(one)) ? await givingIn(one) : null;
      if (read === null) attempts.push(one);
      else if (!read.ok) setRefused({ name: one.name, problems: inWords(read.problems) });
      else {
        const { giving } = read.value;
        // Notes of both places: what was noted here stays where the two differ.
        const merged = await changeGiving(giving, (kept) => mergedWith(giving, kept)).catch(() => giving);
        opened.push(merged);
        setSaid(`The giving-out ${giving.word} is open: what was handed in of it is marked by it.`);
      }
    }
    onDropped(attempts, opened);
  };

  const marked = rows.filter(({ kind }) => kind !== 'refused').length;
  const differing = rows.filter(
    (row) =>
      row.kind === 'marked' && row.looks.some(({ id }) => id === 'total-differs' || id === 'marks-differ'),
  ).length;
  const refusedCount = rows.length - marked;
  return (
    <>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: the buttons within it do the same by keyboard */}
      <div
        className={isOver ? 'drop over not-printed' : 'drop not-printed'}
        onDragOver={(event) => {
          event.preventDefault();
          setOver(true);
        }}
        onDragLeave={() => setOver(false)}
        onDrop={(event) => {
          event.preventDefault();
          setOver(false);
          void droppedIn(event.dataTransfer).then(take);
        }}
      >
        <div>
          <h2>Drop files, a folder or a zip here</h2>
          <p className="note">
            What was handed in, as it came. Every mark is worked out again from what was done.
          </p>
          <div className="acts">
            <button type="button" onClick={() => files.current?.click()}>
              Choose files…
            </button>
            <button type="button" onClick={() => folder.current?.click()}>
              Choose a folder…
            </button>
          </div>
          <input
            ref={files}
            type="file"
            multiple
            hidden
            aria-label="Choose files…"
            onChange={(event) => {
              void take(chosen(event.target.files));
              event.target.value = '';
            }}
          />
          <input
            ref={folder}
            type="file"
            hidden
            aria-label="Choose a folder…"
            {...{ webkitdirectory: '' }}
            onChange={(event) => {
              void take(chosen(event.target.files));
              event.target.value = '';
            }}
          />
        </div>
        {progress !== null ? (
          <div className="stack">
            <p role="status">
              Replaying {progress.done} of {progress.of} …
            </p>
            <button type="button" onClick={cancelCollecting}>
              Cancel
            </button>
          </div>
        ) : rows.length === 0 ? null : (
          <ul className="drop-figures" aria-label="What came">
            <li>
              <strong>{rows.length}</strong> read
              <br />
              <span className="note">{took === null ? 'stopped by you' : `in ${secondsText(took)}`}</span>
            </li>
            <li>
              <strong>{marked - differing}</strong> marks as filed
              <br />
              <span className="note">{differing} differ</span>
            </li>
            <li>
              <strong>{refusedCount}</strong> not marked
              <br />
              <span className="note">{refusedCount === 0 ? 'none refused' : 'why stands in the table'}</span>
            </li>
          </ul>
        )}
      </div>
      {said === null ? null : (
        <p role="status" className="not-printed">
          {said}
        </p>
      )}
      {refused === null ? null : (
        <Problems file={refused.name} problems={refused.problems} kept="What is here is unchanged." />
      )}
      {failed === null ? null : (
        <p role="alert" className="error">
          <strong>Collecting stopped:</strong> {failed}. What was read until then stands below; drop the files
          again.
        </p>
      )}
    </>
  );
}

const secondsText = (ms: number): string => (ms < 1000 ? 'less than 1 s' : `${Math.round(ms / 1000)} s`);

/** As the desk writes it: the id comes first. */
const beginsAsGiving = async ({ name, file }: Dropped): Promise<boolean> =>
  /\.json$/i.test(name) && (await file.slice(0, BEGINNING).text()).includes('"giving":');

/** Null where it is none. */
async function givingIn({ name, file }: Dropped) {
  if (!/\.json$/i.test(name) || file.size > LARGEST_GIVING) return null;
  const json = parseJson(await file.text(), LARGEST_GIVING);
  return json.ok && looksLikeGiving(json.value) ? toItsEnd(readingGiving(json.value)) : null;
}

const mergedWith = (giving: Giving, kept: Giving): Giving => ({
  ...giving,
  tutor: {
    ...giving.tutor,
    ...kept.tutor,
    notes: { ...giving.tutor?.notes, ...kept.tutor?.notes },
  },
});
