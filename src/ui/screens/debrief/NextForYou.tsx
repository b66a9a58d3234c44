/** The bar at the foot of the debrief: what to do next, and why, in one button. */

/** Another job or aim, with the one reason for it. */
export interface Next {
  readonly title: string;
  readonly why: string;
  readonly href: string;
}

interface Props {
  /** Null: the same again is what helps most. */
  readonly next: Next | null;
  /** Whether it is what most people do next: not while an assessment is still to be handed in. */
  readonly isMain: boolean;
  readonly onAgain: () => void;
}

export function NextForYou({ next, isMain, onAgain }: Props) {
  const main = isMain ? 'main' : '';
  return (
    <section className="next-bar not-printed" aria-label="Next for you">
      <p>{next === null ? 'The same once more, with your goal in mind.' : next.why}</p>
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
