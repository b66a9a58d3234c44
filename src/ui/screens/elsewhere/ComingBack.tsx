/** The page was loaded anew at an attempt: what this tab had is taken up again, where it stood. */
import { useEffect } from 'react';
import type { About } from '../../../store/about.ts';
import { hereLast } from '../../../store/hereLast.ts';
import { keptAttempts } from '../../../store/keptAttempt.ts';

interface Props {
  readonly onFound: (about: About) => void;
  /** This tab had none, or it is not kept. */
  readonly onNone: () => void;
}

export function ComingBack({ onFound, onNone }: Props) {
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when the page is come to
  useEffect(() => {
    const id = hereLast();
    if (id === null) return onNone();
    keptAttempts().then((all) => {
      const about = all.find((one) => one.id === id);
      if (about === undefined) onNone();
      else onFound(about);
    }, onNone);
    return undefined;
  }, []);
  return (
    <p className="columns" role="status">
      Taking up where it stood …
    </p>
  );
}
