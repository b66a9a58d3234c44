/**
 * What this device keeps, on the first screen: the attempt to go on with, before all else; the goal for next time;
 * and, once, that a browser keeps nothing.
 */
import { Link } from 'wouter';
import type { About } from '../../store/about.ts';
import { titleOf, WHY_NOT_KEPT } from '../../words/keeping.ts';
import { standsText } from '../../words/stands.ts';
import type { Kept } from '../flow/useKeptHere.ts';
import type { OpenAttempt } from '../flow/useOpenAttempt.ts';
import { isConcluded } from '../flow/useOpenAttempt.ts';
import { momentText } from '../format/dates.ts';

/** The attempt to go on with. */
export interface Unfinished {
  readonly id: string;
  readonly title: string;
  /** As it is kept; null where it is open on this page, to be gone back to. */
  readonly about: About | null;
  /** What is kept about it; null where nothing is. */
  readonly kept: About | null;
  /** How many more are unfinished. */
  readonly others: number;
}

/** The one in hand, or that which was kept last; `putAway`: those just put away. */
export function unfinishedIn(
  { all }: Kept,
  openAttempt: OpenAttempt | null,
  putAway: readonly string[],
): Unfinished | null {
  const unfinished = all.filter(
    ({ id, concluded, putAway: isAway }) => !concluded && !isAway && !putAway.includes(id),
  );
  const isOpen =
    openAttempt !== null && !isConcluded(openAttempt.now.bench) && !putAway.includes(openAttempt.id);
  const kept = (isOpen ? all.find(({ id }) => id === openAttempt.id) : undefined) ?? unfinished[0] ?? null;
  const title = isOpen
    ? openAttempt.now.bench.run.scenario.title
    : kept === null
      ? undefined
      : titleOf(kept.title);
  const id = isOpen ? openAttempt.id : kept?.id;
  if (title === undefined || id === undefined) return null;
  const others = unfinished.filter((about) => about.id !== id).length;
  return { id, title, about: isOpen ? null : kept, kept, others };
}

interface Props {
  readonly kept: Kept;
  readonly unfinished: Unfinished | null;
  readonly onGoOn: () => void;
  readonly onPutAway: (id: string) => void;
}

export function KeptHere({ kept: { problem, goal }, unfinished, onGoOn, onPutAway }: Props) {
  return (
    <>
      {unfinished === null ? null : (
        <section className="found first stack" aria-labelledby="unfinished-heading">
          <h2 id="unfinished-heading">Unfinished</h2>
          {unfinished.kept === null ? null : (
            <p className="note">
              {unfinished.kept.stands === null ? 'begun' : standsText(unfinished.kept.stands)}
              {unfinished.kept.changed === 0 ? '' : ` · ${momentText(unfinished.kept.changed)}`}
              {unfinished.kept.support === 'assessment' ? ' · assessment' : ''}
            </p>
          )}
          <div className="acts">
            <button type="button" className="main" onClick={onGoOn}>
              Go on with {unfinished.title}
            </button>
            {problem === null ? (
              <button type="button" className="plain" onClick={() => onPutAway(unfinished.id)}>
                Put it away
              </button>
            ) : null}
          </div>
          {unfinished.others === 0 ? null : (
            <p className="note">
              {unfinished.others} more unfinished in <Link href="/record">My record</Link>.
            </p>
          )}
        </section>
      )}
      {goal === null ? null : (
        <p className="prose">
          <span className="note">Your goal: </span>
          <strong>{goal.text}</strong>
        </p>
      )}
      {problem === null ? null : (
        <p className="note prose" role="status">
          <strong>Nothing is kept here.</strong> {WHY_NOT_KEPT[problem]} An attempt is lost when the page is
          closed; Export attempt still works.
        </p>
      )}
    </>
  );
}
