/**
 * What an address asks for: `#/questions?seed=1&count=10&topics=offer,clears&from=attempt`; every part may be left out.
 * With `set` it is a tutor's quiz, `#/questions?set=Friday&count=10&seed=5&minutes=15&sure=no`.
 */
import { SESSION } from '../../../quiz/session.ts';
import type { SetQuiz } from '../../../quiz/setQuiz.ts';
import type { AimId } from '../../../scenario/aims.ts';
import { aimNamed, GREATEST_SEED } from '../../../scenario/aims.ts';

/** More than anybody answers at one sitting. */
const MOST = 60;
const MOST_MINUTES = 240;
const LONGEST_TITLE = 120;

export interface AskedFor {
  /** Null: drawn anew, and what is due comes first. */
  readonly seed: number | null;
  readonly count: number;
  /** Null: all twelve. */
  readonly topics: readonly AimId[] | null;
  /** Of a quiz that a tutor has set: nothing is told until its end. */
  readonly set: SetQuiz | null;
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
  const count = number('count', 1, MOST) ?? SESSION;
  const seed = number('seed', 0, GREATEST_SEED);
  const title = query.get('set');
  const set: SetQuiz | null =
    title === null
      ? null
      : {
          format: 1,
          title: title.slice(0, LONGEST_TITLE),
          ...(topics.length === 0 ? {} : { topics }),
          count,
          seed: seed ?? 1,
          minutes: number('minutes', 1, MOST_MINUTES),
          sure: query.get('sure') !== 'no',
        };
  return {
    set,
    seed: set === null ? seed : set.seed,
    count,
    topics: topics.length === 0 ? null : topics,
    from: from === 'attempt' || from === 'record' ? from : null,
    address: query.toString(),
  };
}

/** The address of a quiz that is set, for everybody who is to do it. */
export function setLink({ title, topics, count, seed, minutes, sure }: SetQuiz): string {
  const query = new URLSearchParams({ set: title, count: String(count), seed: String(seed) });
  if (topics !== undefined) query.set('topics', topics.join(','));
  if (minutes !== null) query.set('minutes', String(minutes));
  if (!sure) query.set('sure', 'no');
  return `#/questions?${query}`;
}
