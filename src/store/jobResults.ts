/** What came of the jobs that this device kept: best result and last date, by aim and rung of support, or by scenario. */
import type { Rung } from '../attempt/record/rung.ts';
import { rungOf } from '../attempt/record/rung.ts';
import type { AimId } from '../scenario/aims.ts';
import { aimJobIn } from '../scenario/aims.ts';
import type { About } from './about.ts';

export interface JobResult {
  /** Of the attempt that went best: tests that were wholly right, of those that were done. */
  readonly right: number;
  readonly done: number;
  /** When the last one was concluded, ms since 1970. */
  readonly last: number;
}

/** An attempt at a job of one aim. */
export interface OfAim {
  readonly aim: AimId;
  readonly rung: Rung;
  readonly about: About;
}

/** Concluded, and by this device's own trainee: a guest's is not. */
const isOwnResult = ({ concluded, isGuest }: About): boolean => concluded && !isGuest;

export const aimAttempts = (kept: readonly About[]): readonly OfAim[] =>
  kept.filter(isOwnResult).flatMap((about) => {
    const aim = aimJobIn(about.scenario ?? '')?.aim ?? null;
    return aim === null ? [] : [{ aim, rung: rungOf(about.support, about), about }];
  });

/** Null where none was concluded. */
export const aimResult = (attempts: readonly OfAim[], aim: AimId, rung: Rung): JobResult | null =>
  resultOf(attempts.filter((one) => one.aim === aim && one.rung === rung).map(({ about }) => about));

/** Of a scenario by its id, on whatever rung; null where none was concluded. */
export const scenarioResult = (kept: readonly About[], scenario: string): JobResult | null =>
  resultOf(kept.filter((about) => isOwnResult(about) && about.scenario === scenario));

function resultOf(own: readonly About[]): JobResult | null {
  if (own.length === 0) return null;
  const [best] = own.map(countsOf).toSorted((x, y) => share(y) - share(x) || y.done - x.done);
  return { right: 0, done: 0, ...best, last: Math.max(...own.map(({ changed }) => changed)) };
}

function countsOf({ summary }: About): { readonly right: number; readonly done: number } {
  const done = (summary?.tests ?? []).filter((test) => test.done);
  return { right: done.filter(({ right }) => right).length, done: done.length };
}

const share = ({ right, done }: { readonly right: number; readonly done: number }): number =>
  done === 0 ? -1 : right / done;
