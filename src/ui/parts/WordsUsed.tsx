/** The trade words that occur in some lines, folded away until somebody asks. */
import { wordsIn } from '../../words/glossary.ts';

export function WordsUsed({ texts }: { readonly texts: readonly string[] }) {
  const words = wordsIn(texts);
  if (words.length === 0) return null;
  return (
    <details className="words-used">
      <summary>Words used here</summary>
      <Glossary words={words} />
    </details>
  );
}

export function Glossary({ words }: { readonly words: ReturnType<typeof wordsIn> }) {
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
