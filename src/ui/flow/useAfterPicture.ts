/** Whether a screen's first picture is shown: what is far down on it, or folded away in a list, need not hold that up. */
import { startTransition, useEffect, useState } from 'react';
import { afterPicture } from './afterPicture.ts';

export function useAfterPicture(): boolean {
  const [isShown, setShown] = useState(false);
  useEffect(() => {
    let isGone = false;
    void afterPicture().then(() => {
      if (!isGone) startTransition(() => setShown(true));
    });
    return () => {
      isGone = true;
    };
  }, []);
  return isShown;
}
