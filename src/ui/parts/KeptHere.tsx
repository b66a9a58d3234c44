/**
 * What this device keeps, on the first screen: the attempt to go on with, before all else; the goal for next time;
 * and, once, that a browser keeps nothing.
 */
import { useState } from 'react';
import { Link } from 'wouter';
import type { About } from '../../store/about.ts';
import type { InHand } from '../flow/useInHand.ts';
import { isConcluded } from '../flow/useInHand.ts';
import type { Kept } from '../flow/useKeptHere.ts';
import { momentText } from '../words/dates.ts';
import { titleOf, WHY_NOT_KEPT } from '../words/keeping.ts';

interface Props {
  readonly kept: Kept;
  readonly inHand: InHand | null;
  readonly onWish: (
    wish:
      | { readonly kind: 'go on'; readonly about: Pick<About, 'id' | 'title' | 'concluded'> }
      | { readonly kind: 'put away'; readonly id: string },
  ) => void;
  readonly onReturn: () => void;
}

export function KeptHere({ kept, inHand, onWish, onReturn }: Props) {
  const { problem } = kept;
  const [putAway, setPutAway] = useState<readonly string[]>([]);
  const unfinished = kept.all.filter(
    ({ id, concluded, putAway: isAway }) => !concluded && !isAway && !putAway.includes(id),
  );
  const isOpen = inHand !== null && !isConcluded(inHand.now.bench) && !putAway.includes(inHand.id);
  const first = (isOpen ? kept.all.find(({ id }) => id === inHand.id) : undefined) ?? unfinished[0];
  const title = isOpen ? inHand.now.bench.run.scenario.title : first && titleOf(first.title);
  const id = isOpen ? inHand.id : first?.id;
  const others = unfinished.filter((about) => about.id !== id).length;
  return (
    <>
      {title === undefined || id === undefined ? null : (
        <section className="found first stack" aria-labelledby="unfinished-heading">
          <h2 id="unfinished-heading">Unfinished</h2>
          {first === undefined ? null : (
            <p className="note">
              {first.stands ?? 'begun'}
              {first.changed === 0 ? '' : ` · ${momentText(first.changed)}`}
              {first.support === 'assessment' ? ' · assessment' : ''}
            </p>
          )}
          <div className="acts">
            <button
              type="button"
              className="main"
              onClick={() =>
                isOpen || first === undefined ? onReturn() : onWish({ kind: 'go on', about: first })
              }
            >
              Go on with {title}
            </button>
            {problem === null ? (
              <button
                type="button"
                className="plain"
                onClick={() => {
                  setPutAway([...putAway, id]);
                  onWish({ kind: 'put away', id });
                }}
              >
                Put it away
              </button>
            ) : null}
          </div>
          {others === 0 ? null : (
            <p className="note">
              {others} more unfinished in <Link href="/record">My record</Link>.
            </p>
          )}
        </section>
      )}
      {kept.goal === null ? null : (
        <p className="prose">
          <span className="note">Your goal: </span>
          <strong>{kept.goal.text}</strong>
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
