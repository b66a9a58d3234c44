/** A choice of one among few, as radio buttons drawn like a row of keys. */
import type { ReactNode } from 'react';
import { useId } from 'react';

interface Props<T extends string> {
  readonly legend: ReactNode;
  readonly options: readonly T[];
  readonly words?: Readonly<Record<T, string>>;
  readonly value: T | null;
  /** `isPressed`: by a finger or mouse, so it is meant; arrows pass over choices on their way. */
  readonly onChange: (value: T, isPressed: boolean) => void;
}

export function Keys<T extends string>({ legend, options, words, value, onChange }: Props<T>) {
  const name = useId();
  return (
    <fieldset>
      <legend>{legend}</legend>
      <div className="keys">
        {options.map((option) => (
          <label key={option}>
            <input
              type="radio"
              name={name}
              value={option}
              checked={value === option}
              onChange={({ nativeEvent }) => onChange(option, (nativeEvent as UIEvent).detail > 0)}
            />
            {words?.[option] ?? option}
          </label>
        ))}
      </div>
    </fieldset>
  );
}
