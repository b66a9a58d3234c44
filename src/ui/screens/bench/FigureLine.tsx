/** A figure to be said beforehand, among the lines of a test; its half-typed text is kept. */

import type { Figure } from '../../../verification/testAction.ts';
import type { InWords } from '../../../words/actions.ts';
import { useKept } from '../../flow/useKept.ts';
import { typedNumber } from '../../format/figures.ts';
import { TextField } from '../../parts/TextField.tsx';

interface FigureProps {
  readonly wanted: InWords<Figure>;
  readonly value: number | undefined;
  readonly onChange: (value: number | null) => void;
  readonly inputRef?: React.Ref<HTMLInputElement>;
}

export function FigureLine({ wanted, value, onChange, inputRef }: FigureProps) {
  const [text, setText] = useKept(`figure ${wanted.id}`, value === undefined ? '' : String(value));
  const wrong = text.trim() !== '' && typedNumber(text) === null;
  return (
    <li>
      <TextField
        label={`${wanted.text}, ${wanted.unit}`}
        numeric
        value={text}
        error={wrong ? 'A figure is expected, as 31.5 or 31,5.' : null}
        onChange={(next) => {
          setText(next);
          onChange(typedNumber(next));
        }}
        {...(inputRef === undefined ? {} : { inputRef })}
      />
    </li>
  );
}
