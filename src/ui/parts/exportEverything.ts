/** Everything that this device keeps, as one file; where something could not be kept, the attempt in hand as it stands. */
import { asWritten } from '../../attempt/record/written.ts';
import { aboutOf } from '../../store/about.ts';
import { keptRecord } from '../../store/keptRecord.ts';
import { NO_QUESTIONS } from '../../store/questionRecord.ts';
import { recordItem } from '../../store/recordItem.ts';
import type { KeptRecord } from '../../store/recordText.ts';
import { makeRecordText } from '../../store/recordText.ts';
import type { OpenAttempt } from '../flow/useOpenAttempt.ts';
import { download } from './download.ts';

const NOTHING: KeptRecord = { items: [], unreadable: [], goal: null, questions: NO_QUESTIONS, further: {} };

/** What is to be said of the file that the browser was given. Rejects where nothing can be read and nothing is in hand. */
export async function exportEverything(openAttempt: OpenAttempt | null): Promise<string> {
  await openAttempt?.keeper.settled();
  const kept = await keptRecord().catch((error: unknown) => {
    if (openAttempt === null) throw error;
    return NOTHING;
  });
  const name = `charge-point-record-${new Date().toISOString().slice(0, 10)}.json`;
  download(name, makeRecordText(openAttempt === null ? kept : withOpenAttempt(kept, openAttempt)));
  const { length: lost } = kept.unreadable;
  const unread =
    lost === 0
      ? ''
      : ` ${lost === 1 ? 'One attempt' : `${lost} attempts`} kept here cannot be read: in the file as kept.`;
  return `The browser was given ${name}: see that it is among your downloads.${unread}`;
}

function withOpenAttempt(kept: KeptRecord, { id, now, keeper }: OpenAttempt): KeptRecord {
  const change = keeper.unkept()?.change;
  if (change === undefined) return kept;
  const { attempt } = now.bench.run;
  const before = kept.items.find((item) => item.id === id);
  const { isGuest, handedIn } = now;
  const about = aboutOf(id, attempt, { changed: Date.now(), ...before, isGuest, handedIn, ...change.about });
  const draft = change.draft === undefined ? (before?.draft ?? null) : change.draft;
  return {
    ...kept,
    items: [...kept.items.filter((item) => item !== before), recordItem(about, asWritten(attempt), draft)],
  };
}
