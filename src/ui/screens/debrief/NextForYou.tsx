/** The bar at the foot of the debrief: what to do next, and why, in one button. */

import type { AimId } from '../../../scenario/aims.ts';
import { questionsLink } from '../../flow/questionsLink.ts';

/** Another job or aim, with the one reason for it. */
export interface Next {
  readonly title: string;
  readonly why: string;
  readonly href: string;
}

interface Props {
  /** Null: nothing but the same again; undefined while it is not known yet. */
  readonly next: Next | null | undefined;
  /** Whether it is what most people do next: not while an assessment is still to be handed in. */
  readonly isMain: boolean;
  /** Topics in which something was wrong; questions on them are offered. */
  readonly weak: readonly AimId[];
  readonly onAgain: () => void;
}

export function NextForYou({ next, isMain, weak, onAgain }: Props) {
  const main = isMain && next !== undefined ? 'main' : '';
  return (
    <section className="next-bar not-printed" aria-label="Next for you">
      <p>{next?.why ?? 'The same once more, with your goal in mind.'}</p>
      <div className="acts">
        <button type="button" className={next === null ? main : ''} onClick={onAgain}>
          Practise this again
        </button>
        {weak.length === 0 ? null : (
          <a className="button" href={`#${questionsLink(weak, 3, 'attempt')}`}>
            Three questions on what went wrong
          </a>
        )}
        {next == null ? null : (
          <a className={`button ${main}`} href={next.href}>
            {next.title}
          </a>
        )}
      </div>
    </section>
  );
}
