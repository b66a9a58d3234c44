/** What a tutor is about to give out, kept on the device from change to change until it is given out: it outlives the tab. */
import { inOne } from './database.ts';

const KEY = 'giving draft';

export interface GivingDraft {
  /** Scenario files' objects. */
  readonly jobs: readonly object[];
  readonly group: string;
  /** Empty: to be drawn anew, as the second word is. */
  readonly word: string;
  readonly second: string;
  readonly rung: number;
  readonly isHeld: boolean;
  readonly clears: boolean;
  /** As typed. */
  readonly pass: string;
  readonly time: string;
  readonly labels: string;
  /** Numbers of the variants that were proved equal, by this version of the engine. */
  readonly variants: readonly number[];
  readonly engine: string;
  /** When it was last changed, ms. */
  readonly at: number;
}

/** Null where there is none. Rejects where the browser keeps nothing. */
export const keptGivingDraft = (): Promise<GivingDraft | null> =>
  inOne('readonly', async (all) => draftIn(await all.objectStore('desk').get(KEY)));

export const keepGivingDraft = (draft: GivingDraft): Promise<void> =>
  inOne('readwrite', async (all) => {
    await all.objectStore('desk').put(draft, KEY);
  });

/** What another version kept may be anything. */
function draftIn(kept: unknown): GivingDraft | null {
  if (typeof kept !== 'object' || kept === null) return null;
  const of = kept as Partial<Record<keyof GivingDraft, unknown>>;
  const text = (value: unknown) => (typeof value === 'string' ? value : '');
  const listOf = <T>(value: unknown, isOne: (one: unknown) => one is T): readonly T[] =>
    Array.isArray(value) ? value.filter(isOne) : [];
  return {
    jobs: listOf(of.jobs, (one): one is object => typeof one === 'object' && one !== null),
    group: text(of.group),
    word: text(of.word),
    second: text(of.second),
    rung: typeof of.rung === 'number' ? of.rung : Number.NaN,
    isHeld: of.isHeld === true,
    clears: of.clears === true,
    pass: text(of.pass),
    time: text(of.time),
    labels: text(of.labels),
    variants: listOf(of.variants, (one): one is number => Number.isInteger(one)),
    engine: text(of.engine),
    at: typeof of.at === 'number' ? of.at : 0,
  };
}
