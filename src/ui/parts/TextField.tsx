/** A labelled line to type into, with what is wrong about it beside it. */
import type { ReactNode, Ref } from 'react';
import { useId } from 'react';
import { wellFormed } from '../../store/wellFormed.ts';
import { FigureInput } from './FigureInput.tsx';

interface Props {
  readonly label: ReactNode;
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly error?: string | null;
  readonly numeric?: boolean;
  readonly lines?: boolean;
  readonly maxLength?: number;
  /** Of a figure that is read off an instrument: how many it shows. */
  readonly digits?: number | undefined;
  readonly inputRef?: Ref<HTMLInputElement>;
  readonly className?: string | undefined;
}

export function TextField(props: Props) {
  const {
    label,
    value,
    onChange,
    error = null,
    numeric,
    lines,
    maxLength,
    digits,
    inputRef,
    className,
  } = props;
  const id = useId();
  const described = error === null ? {} : { 'aria-invalid': true, 'aria-describedby': `${id}-error` };
  return (
    <div className={`field ${className ?? ''}`}>
      <label htmlFor={id}>{label}</label>
      {lines ? (
        <textarea
          id={id}
          value={value}
          maxLength={maxLength}
          onChange={(event) => onChange(wellFormed(event.target.value))}
          {...described}
        />
      ) : numeric ? (
        <FigureInput
          id={id}
          data-digits={digits}
          ref={inputRef}
          value={value}
          maxLength={maxLength}
          onChange={(event) => onChange(wellFormed(event.target.value))}
          {...described}
        />
      ) : (
        <input
          id={id}
          ref={inputRef}
          type="text"
          autoComplete="off"
          value={value}
          maxLength={maxLength}
          onChange={(event) => onChange(wellFormed(event.target.value))}
          {...described}
        />
      )}
      {error === null ? null : (
        <p className="error" id={`${id}-error`} role="alert">
          <strong>Not taken.</strong>
          {error}
        </p>
      )}
    </div>
  );
}
