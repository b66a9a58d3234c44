/** A choice of one among few, as radio buttons drawn like a row of keys. */
import type { ReactNode } from 'react';
import { useId } from 'react';

interface Props<T extends string> {
  readonly legend: ReactNode;
  readonly options: readonly T[];
  readonly words?: Readonly<Record<T, string>>;
  readonly value: T | null;
  readonly onChange: (value: T) => void;
}

/** From so many on there is little room for the words of each. */
const MANY = 5;

export function Keys<T extends string>({ legend, options, words, value, onChange }: Props<T>) {
  const name = useId();
  return (
    <fieldset>
      <legend>{legend}</legend>
      <div className={options.length < MANY ? 'keys' : 'keys many'}>
        {options.map((option) => (
          <label key={option}>
            <input
              type="radio"
              name={name}
              value={option}
              checked={value === option}
              onChange={() => onChange(option)}
            />
            {words?.[option] ?? option}
          </label>
        ))}
      </div>
    </fieldset>
  );
}
