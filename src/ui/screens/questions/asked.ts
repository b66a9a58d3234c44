/** What an address asks for: `#/questions?seed=1&count=10&topics=offer,clears&from=attempt`; every part may be left out. */
import { SESSION } from '../../../quiz/session.ts';
import type { AimId } from '../../../scenario/aims.ts';
import { aimNamed, GREATEST_SEED } from '../../../scenario/aims.ts';

/** More than anybody answers at one sitting. */
const MOST = 60;

export interface AskedFor {
  /** Null: drawn anew, and what is due comes first. */
  readonly seed: number | null;
  readonly count: number;
  /** Null: all twelve. */
  readonly topics: readonly AimId[] | null;
  /** Where it goes back to. */
  readonly from: 'attempt' | 'record' | null;
  /** The address itself, by which a session is gone on with. */
  readonly address: string;
}

/** What makes no sense is taken as left out. */
export function askedFor(query: URLSearchParams): AskedFor {
  const number = (name: string, least: number, greatest: number): number | null => {
    const text = query.get(name) ?? '';
    const value = /^\d{1,10}$/.test(text) ? Number(text) : Number.NaN;
    return value >= least && value <= greatest ? value : null;
  };
  const topics = (query.get('topics') ?? '').split(',').flatMap((id) => aimNamed(id)?.id ?? []);
  const from = query.get('from');
  return {
    seed: number('seed', 0, GREATEST_SEED),
    count: number('count', 1, MOST) ?? SESSION,
    topics: topics.length === 0 ? null : topics,
    from: from === 'attempt' || from === 'record' ? from : null,
    address: query.toString(),
  };
}
