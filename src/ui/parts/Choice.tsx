/** A labelled list to choose from, one row high: with the label beside it or above it. */
import type { ReactNode } from 'react';
import { useId } from 'react';

interface Props {
  readonly label: ReactNode;
  readonly options: readonly (readonly [value: string, text: string])[];
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly above?: boolean;
  readonly changed?: boolean;
  /** Said while nothing is chosen yet. */
  readonly none?: string;
}

export function Choice({ label, options, value, onChange, above, changed, none }: Props) {
  const id = useId();
  return (
    <div className={above ? 'field' : `field-row${changed ? ' changed' : ''}`}>
      <label htmlFor={id}>
        {label}
        {changed ? <small> changed</small> : null}
      </label>
      <select id={id} value={value} onChange={(event) => onChange(event.target.value)}>
        {none === undefined ? null : <option value="">{none}</option>}
        {options.map(([option, text]) => (
          <option key={option} value={option}>
            {text}
          </option>
        ))}
      </select>
    </div>
  );
}
