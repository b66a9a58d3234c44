/** A job of one aim by its address: it begins at once, and can be begun again where that was called off. */
import { useEffect } from 'react';
import { Link } from 'wouter';
import { aimNamed } from '../../../scenario/aims.ts';
import { AIM_WORDS } from '../../../words/aims.ts';
import { Problems } from '../../parts/Problems.tsx';
import { Reading } from '../Reading.tsx';
import type { Refused } from '../wish.ts';

interface Props {
  readonly aim: string;
  readonly refused: Refused | null;
  /** Something is to be settled first: then it waits for the button. */
  readonly isWaiting: boolean;
  readonly onBegin: () => void;
  readonly onLeave: () => void;
}

export function AimStart({ aim: name, refused, isWaiting, onBegin, onLeave }: Props) {
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when the address is come to
  useEffect(() => {
    if (!isWaiting) onBegin();
    // What was wrong with an address is said on its own page alone.
    return onLeave;
  }, []);
  const aim = aimNamed(name);
  return (
    <Reading title={aim === null ? 'No such job' : AIM_WORDS[aim.id].question} about="a job of one aim">
      {refused === null ? null : (
        <Problems file={refused.name} problems={refused.problems} kept="Nothing here was changed." />
      )}
      {aim === null ? null : <p className="prose">{AIM_WORDS[aim.id].line}</p>}
      <div className="acts">
        {aim === null || refused !== null ? null : (
          <button type="button" className="main" onClick={onBegin}>
            Begin
          </button>
        )}
        <Link href="/" className="button">
          All twelve aims
        </Link>
      </div>
    </Reading>
  );
}
