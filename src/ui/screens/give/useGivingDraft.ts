/** What is about to be given out: as it was left, with the job that was changed on the desk since, and kept after each change. */
import { useCallback, useEffect, useRef, useState } from 'react';
import { ENGINE } from '../../../attempt/record/attempt.ts';
import type { Rung } from '../../../attempt/record/rung.ts';
import { RUNGS } from '../../../attempt/record/rung.ts';
import type { DeskDraft } from '../../../store/deskDraft.ts';
import { keptDraft } from '../../../store/deskDraft.ts';
import type { GivingDraft } from '../../../store/givingDraft.ts';
import { keepGivingDraft, keptGivingDraft } from '../../../store/givingDraft.ts';
import type { KeepProblem } from '../../../store/keepProblem.ts';
import { problemOf } from '../../../store/keepProblem.ts';
import type { Offered } from '../offered.ts';
import { firstWord, secondWord } from './words.ts';

export type GivingForm = Omit<GivingDraft, 'engine' | 'at' | 'rung'> & { readonly rung: Rung };

export interface GivingDrafting {
  readonly form: GivingForm;
  /** Variants are those of these jobs and this word: with others there are none. */
  readonly change: (part: Partial<GivingForm>) => void;
  /** Another time other jobs and words; whom they are for is kept. */
  readonly given: () => void;
  /** Why what is typed is not kept; null: it is. */
  readonly problem: KeepProblem | null;
}

const FIRST: GivingForm = {
  jobs: [],
  group: '',
  word: '',
  second: '',
  rung: 2,
  isHeld: false,
  clears: false,
  pass: '',
  time: '',
  labels: '',
  variants: [],
};

/** Null while it is read. */
export function useGivingDraft(): GivingDrafting | null {
  const [form, setForm] = useState<GivingForm | null>(null);
  const [problem, setProblem] = useState<KeepProblem | null>(null);
  const last = useRef<GivingForm>(FIRST);
  useEffect(() => {
    let isStale = false;
    const begin = (kept: GivingDraft | null, draft: DeskDraft | null) => {
      if (isStale) return;
      last.current = formOf(kept, draft);
      setForm(last.current);
    };
    Promise.all([keptGivingDraft(), keptDraft()]).then(
      ([kept, draft]) => begin(kept, draft),
      (error) => {
        begin(null, null);
        if (!isStale) setProblem(problemOf(error));
      },
    );
    return () => {
      isStale = true;
    };
  }, []);
  const keep = useCallback((next: GivingForm) => {
    keepGivingDraft({ ...next, engine: ENGINE, at: Date.now() }).then(
      () => setProblem(null),
      (error) => setProblem(problemOf(error)),
    );
  }, []);
  const change = useCallback(
    (part: Partial<GivingForm>) => {
      const isOther = 'jobs' in part || 'word' in part;
      last.current = { ...last.current, ...(isOther ? { variants: [] } : {}), ...part };
      setForm(last.current);
      keep(last.current);
    },
    [keep],
  );
  const given = useCallback(
    () => keep({ ...last.current, jobs: [], word: '', second: '', variants: [] }),
    [keep],
  );
  return form === null ? null : { form, change, given, problem };
}

function formOf(kept: GivingDraft | null, draft: DeskDraft | null): GivingForm {
  const { engine, at, rung, ...rest } = kept ?? { ...FIRST, engine: ENGINE, at: 0 };
  const jobs = jobsOf(rest.jobs, at, draft);
  return {
    ...rest,
    jobs,
    variants: jobs === rest.jobs && rest.word !== '' && engine === ENGINE ? rest.variants : [],
    rung: RUNGS.find((one) => one === rung) ?? FIRST.rung,
    word: rest.word === '' ? firstWord() : rest.word,
    second: rest.second === '' ? secondWord() : rest.second,
  };
}

/**
 * What was changed on the desk after the rest is what is given out: in place of itself as it was before, beside the others
 * of a set, or else alone.
 */
function jobsOf(kept: readonly object[], at: number, draft: DeskDraft | null): readonly object[] {
  if (draft === null || (kept.length > 0 && draft.at <= at)) return kept;
  const idOf = (job: object) => (job as Offered).id;
  const { file } = draft;
  if (kept.some((job) => idOf(job) === idOf(file)))
    return kept.map((job) => (idOf(job) === idOf(file) ? file : job));
  return kept.length > 1 ? [...kept, file] : [file];
}
