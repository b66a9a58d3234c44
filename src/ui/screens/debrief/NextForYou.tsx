/** The bar at the foot of the debrief: what to do next, and why, in one button. */

/** Another job or aim, with the one reason for it. */
export interface Next {
  readonly title: string;
  readonly why: string;
  readonly href: string;
}

interface Props {
  /** Null: nothing but the same again; undefined while it is not known yet: the bar comes whole, so that nothing in it moves. */
  readonly next: Next | null | undefined;
  /** Whether it is what most people do next: not while an assessment is still to be handed in. */
  readonly isMain: boolean;
  readonly onAgain: () => void;
}

export function NextForYou({ next, isMain, onAgain }: Props) {
  if (next === undefined) return null;
  const main = isMain ? 'main' : '';
  return (
    <section className="next-bar not-printed" aria-label="Next for you">
      <p>{next?.why ?? 'The same once more, with your goal in mind.'}</p>
      <div className="acts">
        <button type="button" className={next === null ? main : ''} onClick={onAgain}>
          Practise this again
        </button>
        {next === null ? null : (
          <a className={`button ${main}`} href={next.href}>
            {next.title}
          </a>
        )}
      </div>
    </section>
  );
}
