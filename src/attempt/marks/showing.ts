/**
 * Where a fault first shows to a faultless trainee: the test whose line or limit is broken, what is read there, and
 * what is due: the same reading on the correct twin. Both are worked out by the bench.
 */
import type { Reading } from '../../bench/reading.ts';
import { pairOf } from '../../bench/reading.ts';
import type { Verified, VerifiedAction } from '../../scenario/verify.ts';
import { alikeReadings } from './telling.ts';

export interface Showing {
  readonly test: string;
  /** The first reading of that test that instruments tell apart; null where it shows to eye, ear or hand alone. */
  readonly read: { readonly met: Reading; readonly due: Reading } | null;
}

const isBroken = ({ expectations, limits }: VerifiedAction): boolean =>
  expectations.some(({ finding }) => finding === 'broken') || limits.some(({ pass }) => !pass);

const readingsOf = ({ run }: VerifiedAction): readonly Reading[] =>
  run.samples.flatMap(({ readings }) => readings);

/** `twin`: the same verification with the faults taken out. Null where no test that is allowed shows anything. */
export function showingOf(asMet: Verified, twin: Verified): Showing | null {
  const broken = asMet.actions.find(isBroken);
  if (broken === undefined) return null;
  const test = broken.action.id;
  const own = twin.actions.find(({ action }) => action.id === test);
  const due = own === undefined ? [] : readingsOf(own);
  const met = readingsOf(broken);
  const at = met.findIndex((reading, i) => {
    const other = due[i];
    return (
      other?.quantity === reading.quantity &&
      JSON.stringify(pairOf(other)) === JSON.stringify(pairOf(reading)) &&
      !alikeReadings(reading, other)
    );
  });
  const [metThere, dueThere] = [met[at], due[at]];
  return { test, read: metThere && dueThere ? { met: metThere, due: dueThere } : null };
}
