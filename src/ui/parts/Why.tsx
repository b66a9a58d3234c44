/** Why a line's right answer is right, and by which source, folded until somebody asks. */
import type { Source } from '../../verification/sources.ts';
import { sourceText } from '../../words/sources.ts';

interface Props {
  /** Unfolded from the beginning. */
  readonly isOpen?: boolean;
  readonly line: { readonly text: string; readonly why: string; readonly source: Source } | undefined;
}

export function Why({ line, isOpen = false }: Props) {
  if (line === undefined) return null;
  const { text, why, source } = line;
  return (
    <details className="why note" open={isOpen}>
      <summary>
        why<span className="unseen">: {text}</span>
      </summary>
      <p>
        {why} <span>({sourceText(source)})</span>
      </p>
    </details>
  );
}
