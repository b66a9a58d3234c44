/** One attempt of a record, as the device keeps it and as a record's file has it. */
import type { Written } from '../attempt/record/written.ts';

export interface RecordItem {
  readonly id: string;
  readonly began: number | null;
  readonly changed: number;
  readonly handedIn: number | null;
  readonly putAway: boolean;
  readonly stands: string | null;
  readonly isGuest: boolean;
  /** The file as it was written, in its own format. */
  readonly attempt: Written;
  readonly draft: unknown;
  readonly further: Readonly<Record<string, unknown>>;
}

/** An attempt as it stands in a record, of all that is kept about it. */
export const recordItem = (
  { id, began, changed, handedIn, putAway, stands, isGuest, further }: Omit<RecordItem, 'attempt' | 'draft'>,
  attempt: Written,
  draft: unknown,
): RecordItem => ({
  id,
  began,
  changed,
  handedIn,
  putAway,
  stands,
  isGuest,
  attempt,
  draft,
  further,
});
