/** Every cause of the catalogue to choose from, by its family; the list is the same whatever is wrong. */
import { useId } from 'react';
import { CATALOGUE } from '../../faults/catalogue.ts';
import { FAMILIES } from '../../faults/families.ts';
import { causeTitle } from '../../words/causeTitles.ts';
import { FAMILY_WORDS } from '../../words/topics.ts';

export const FAMILY_NAMES = FAMILIES.map((family) => [family, FAMILY_WORDS[family]] as const);

interface Props {
  readonly label?: string;
  readonly value: string;
  /** Answers that are no cause, before the causes. */
  readonly others?: readonly (readonly [value: string, text: string])[];
  /** The many that are not chosen come into the list later. */
  readonly isToCome?: boolean;
  readonly onChange: (id: string) => void;
}

export function CauseChoice({ label = 'cause', value, others = [], isToCome = false, onChange }: Props) {
  const id = useId();
  return (
    <div className="field-row">
      <label htmlFor={id}>{label}</label>
      <select id={id} value={value} onChange={(event) => onChange(event.target.value)}>
        <option value="">choose</option>
        {others.map(([other, text]) => (
          <option key={other} value={other}>
            {text}
          </option>
        ))}
        {FAMILY_NAMES.map(([family, name]) => {
          const entries = CATALOGUE.filter(
            (entry) => entry.family === family && (!isToCome || entry.id === value),
          );
          return entries.length === 0 ? null : (
            <optgroup key={family} label={name}>
              {entries.map((entry) => (
                <option key={entry.id} value={entry.id}>
                  {causeTitle(entry.id)}
                </option>
              ))}
            </optgroup>
          );
        })}
      </select>
    </div>
  );
}
