/** A wait that lasts: how long it is, how much of it is left, what is heard meanwhile, and the way past it. */
import { benchTime } from '../../words/benchTime.ts';
import { useMatches } from '../flow/useMatches.ts';
import type { Waiting } from '../flow/usePaced.ts';
import { useFocus } from './useFocus.ts';

/** With reduced motion the seconds left are told in steps of so many. */
const STEP = 10;

export function WaitingLine({ waiting: { seconds, left, heard, skip } }: { readonly waiting: Waiting }) {
  const button = useFocus<HTMLButtonElement>();
  const isCalm = useMatches('(prefers-reduced-motion: reduce)');
  const told = isCalm ? Math.min(seconds, STEP * Math.ceil(left / STEP)) : left;
  return (
    <section className="waiting acts apart" aria-labelledby="waiting-heading">
      <p>
        <strong id="waiting-heading">Waiting {seconds} s on the bench.</strong>{' '}
        <span className="note">
          {isCalm ? 'At most ' : ''}
          {told} s to go
        </span>
      </p>
      <div role="log" aria-label="heard meanwhile">
        {heard.length === 0 ? null : (
          <ul className="choices note">
            {heard.map(({ at, text }) => (
              <li key={`${at} ${text}`}>
                {benchTime(at)} {text}
              </li>
            ))}
          </ul>
        )}
      </div>
      <button ref={button} type="button" className="main" onClick={skip}>
        Skip to then
      </button>
    </section>
  );
}
