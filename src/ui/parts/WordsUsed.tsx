/** The trade words that occur in some lines, folded away until somebody asks: the list of them comes only then. */
import { useState } from 'react';
import { loaded } from '../flow/loading.ts';
import type { Entry } from './Glossary.tsx';
import { Glossary } from './Glossary.tsx';

type Found = readonly Entry[] | 'to come' | 'missing';

export function WordsUsed({ texts }: { readonly texts: readonly string[] }) {
  const [found, setFound] = useState<Found>('to come');
  const find = () =>
    loaded(() => import('../../words/glossary.ts')).then(
      ({ wordsIn }) => setFound(wordsIn(texts)),
      () => setFound('missing'),
    );
  return (
    <details className="words-used" onToggle={({ currentTarget }) => void (currentTarget.open && find())}>
      <summary>Words used here</summary>
      {typeof found === 'string' || found.length === 0 ? (
        <p className="note" role="status">
          {found === 'missing'
            ? 'The list of words did not come. Fold this away and open it again to try once more.'
            : found === 'to come'
              ? 'Looking them up …'
              : 'None that needs explaining.'}
        </p>
      ) : (
        <Glossary words={found} />
      )}
    </details>
  );
}
