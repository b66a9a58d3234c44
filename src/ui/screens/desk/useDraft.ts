/** The draft on the tutor's desk: read once, kept after each change, and taken back step by step. */
import { useCallback, useEffect, useRef, useState } from 'react';
import { navigate } from 'wouter/use-hash-location';
import type { DeskDraft } from '../../../store/deskDraft.ts';
import { keepDraft, keptDraft } from '../../../store/deskDraft.ts';
import type { KeepProblem } from '../../../store/keepProblem.ts';
import { problemOf } from '../../../store/keepProblem.ts';
import type { JobFile } from './jobFile.ts';

/** So many changes can be taken back. */
const MOST_UNDONE = 50;

export interface Drafting {
  readonly draft: DeskDraft & { readonly file: JobFile };
  /** Changes of one field, named by `what`, that follow each other are taken back as one. */
  readonly change: (file: JobFile, what?: string) => void;
  readonly undo: () => void;
  /** Why the last change is not kept; null: it is. */
  readonly problem: KeepProblem | null;
}

/** Where a drawn job is from. */
export const DRAWN = 'the draw';

/** Whether something of the tutor's would be lost with it, and not only what the shelf has. */
const isOwn = ({ from, before }: DeskDraft): boolean => from === null || from === DRAWN || before.length > 0;

const alone = ({ previous: _, ...draft }: DeskDraft): DeskDraft['previous'] => draft;

/** What of it is kept beside the next. */
const leftOf = (draft: DeskDraft): DeskDraft['previous'] => (isOwn(draft) ? alone(draft) : draft.previous);

/** Of another screen, which makes a draft and goes on from there. One that was there before it can be gone back to. */
export async function beginDraft(file: JobFile, from: string | null, to: string): Promise<void> {
  const kept = await keptDraft();
  const previous = kept === null ? null : leftOf(kept);
  await keepDraft({ file, from, before: [], at: Date.now(), previous });
  navigate(to);
}

/** The draft before this one takes its place, and this one is the one before it. */
export async function goBackTo(draft: DeskDraft, to: string): Promise<void> {
  const { previous } = draft;
  if (previous === null) return;
  await keepDraft({ ...previous, previous: isOwn(draft) ? alone(draft) : null });
  navigate(to);
}

/** `waiting` while it is read; null where there is none. */
export function useDraft(): Drafting | 'waiting' | null {
  const [draft, setDraft] = useState<DeskDraft | 'waiting' | null>('waiting');
  const [problem, setProblem] = useState<KeepProblem | null>(null);
  const last = useRef<DeskDraft | null>(null);
  const field = useRef<string | null>(null);
  useEffect(() => {
    let isStale = false;
    keptDraft().then(
      (kept) => {
        if (isStale) return;
        last.current = kept;
        setDraft(kept);
      },
      (error) => {
        if (isStale) return;
        setProblem(problemOf(error));
        setDraft(null);
      },
    );
    return () => {
      isStale = true;
    };
  }, []);
  const keep = useCallback((next: DeskDraft) => {
    last.current = next;
    setDraft(next);
    keepDraft(next).then(
      () => setProblem(null),
      (error) => setProblem(problemOf(error)),
    );
  }, []);
  const change = useCallback(
    (file: JobFile, what: string | null = null) => {
      const now = last.current;
      if (now === null) return;
      const isSame = what !== null && what === field.current;
      field.current = what;
      const before = isSame ? now.before : [...now.before, now.file].slice(-MOST_UNDONE);
      keep({ ...now, file, before, at: Date.now() });
    },
    [keep],
  );
  const undo = useCallback(() => {
    const now = last.current;
    const file = now?.before.at(-1);
    field.current = null;
    if (now === null || file === undefined) return;
    keep({ ...now, file, before: now.before.slice(0, -1), at: Date.now() });
  }, [keep]);
  if (draft === 'waiting' || draft === null) return draft;
  return { draft: draft as Drafting['draft'], change, undo, problem };
}
