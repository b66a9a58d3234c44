/** What came of the jobs of one aim that this device kept: best result and last date, by aim and rung of support. */
import type { Rung } from '../attempt/rung.ts';
import { rungOf } from '../attempt/rung.ts';
import type { AimId } from '../scenario/aims.ts';
import { aimInId } from '../scenario/aims.ts';
import type { About } from './about.ts';

export interface AimResult {
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

/** Concluded ones of this device's own trainee; a guest's are not. */
export const aimAttempts = (kept: readonly About[]): readonly OfAim[] =>
  kept.flatMap((about) => {
    const aim = aimInId(about.scenario ?? '');
    return aim === null || !about.concluded || about.isGuest
      ? []
      : [{ aim, rung: rungOf(about.support, about), about }];
  });

/** Null where none was concluded. */
export function aimResult(attempts: readonly OfAim[], aim: AimId, rung: Rung): AimResult | null {
  const own = attempts.filter((one) => one.aim === aim && one.rung === rung);
  if (own.length === 0) return null;
  const [best] = own
    .map(({ about }) => countsOf(about))
    .toSorted((x, y) => share(y) - share(x) || y.done - x.done);
  return { right: 0, done: 0, ...best, last: Math.max(...own.map(({ about }) => about.changed)) };
}

function countsOf({ summary }: About): { readonly right: number; readonly done: number } {
  const done = (summary?.tests ?? []).filter((test) => test.done);
  return { right: done.filter(({ right }) => right).length, done: done.length };
}

const share = ({ right, done }: { readonly right: number; readonly done: number }): number =>
  done === 0 ? -1 : right / done;
