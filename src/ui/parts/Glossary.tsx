/** Trade words with what they mean and where that is from. */
import type { wordsIn } from '../../words/glossary.ts';

export type Entry = ReturnType<typeof wordsIn>[number];

export function Glossary({ words }: { readonly words: readonly Entry[] }) {
  return (
    <dl className="glossary">
      {words.map(({ word, meaning, source }) => (
        <div key={word}>
          <dt>{word}</dt>
          <dd>
            {meaning} <span className="note">({source})</span>
          </dd>
        </div>
      ))}
    </dl>
  );
}
