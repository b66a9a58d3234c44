/** On the first screen: that a newer version of the page waits, and the way to take it once no attempt is open. */
import { useEffect, useState } from 'react';
import { watchForNewVersion } from '../flow/newVersion.ts';
import { isAnyHeld } from '../flow/tabHold.ts';
import type { OpenAttempt } from '../flow/useOpenAttempt.ts';
import { isConcluded } from '../flow/useOpenAttempt.ts';

export function NewVersion({ openAttempt }: { readonly openAttempt: OpenAttempt | null }) {
  const [take, setTake] = useState<(() => void) | null>(null);
  const [isHeld, setIsHeld] = useState(false);
  useEffect(() => {
    const stop = watchForNewVersion((taker) => setTake(() => taker));
    return stop;
  }, []);
  if (take === null) return null;
  const isOpenHere = openAttempt !== null && !isConcluded(openAttempt.now.bench);
  return (
    <div className="acts" role="status">
      <p>
        <strong>A newer version is ready.</strong>{' '}
        {isOpenHere
          ? 'It waits until the unfinished attempt is concluded or put away.'
          : isHeld
            ? 'It waits: an attempt is open in another tab.'
            : null}
      </p>
      {isOpenHere ? null : (
        <button
          type="button"
          onClick={async () => {
            const held = await isAnyHeld();
            setIsHeld(held);
            if (!held) take();
          }}
        >
          Take the new version
        </button>
      )}
    </div>
  );
}
