/** Further causes, where more than one thing is wrong: one list each, and one more on request. */
import { MOST_OTHERS } from '../../../attempt/record/attempt.ts';
import { CauseChoice } from '../../parts/CauseChoice.tsx';

interface Props {
  readonly others: readonly string[];
  readonly onChange: (others: readonly string[]) => void;
}

export function OtherCauses({ others, onChange }: Props) {
  return (
    <>
      {others.map((other, i) => (
        <CauseChoice
          // They have no name of their own before they are chosen, and are never moved.
          // biome-ignore lint/suspicious/noArrayIndexKey: see above
          key={i}
          label={`further cause ${i + 1}`}
          value={other}
          onChange={(id) => onChange(others.map((one, at) => (at === i ? id : one)))}
        />
      ))}
      {others.length >= MOST_OTHERS ? null : (
        <button type="button" className="plain" onClick={() => onChange([...others, ''])}>
          Something else is wrong too
        </button>
      )}
    </>
  );
}
