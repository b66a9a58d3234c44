/** How much is told and asked in an attempt, to be chosen by hand; what the kept record suggests is said beside it. */
import { useId, useMemo } from 'react';
import { suggestedRung } from '../../attempt/marks/suggestedRung.ts';
import type { Rung } from '../../attempt/record/rung.ts';
import { RUNGS, rungOf } from '../../attempt/record/rung.ts';
import type { About } from '../../store/about.ts';
import { RUNG_MORE, SHOWN_NAME, suggestionText } from '../../words/rungChoice.ts';
import { RUNG_NAMES } from '../../words/rungs.ts';

interface Props {
  /** What this device kept of its own trainee: it suggests a rung. */
  readonly kept: readonly About[];
  /** 0: a worked run is shown. */
  readonly value: Rung | 0;
  readonly onChange: (rung: Rung | 0) => void;
}

export function RungChoice({ kept, value, onChange }: Props) {
  const name = useId();
  const suggestion = useMemo(() => suggestedRung(wentIn(kept)), [kept]);
  return (
    <fieldset className="rungs">
      <legend className="note">how much you are told</legend>
      {([0, ...RUNGS] as const).map((rung) => (
        <label key={rung} className="rung">
          <input type="radio" name={name} checked={value === rung} onChange={() => onChange(rung)} />
          <span>
            <strong>{rung === 0 ? SHOWN_NAME : RUNG_NAMES[rung]}</strong>{' '}
            <span className="note">{RUNG_MORE[rung]}</span>
          </span>
        </label>
      ))}
      {suggestion === null ? null : <p className="note">{suggestionText(suggestion)}</p>}
    </fieldset>
  );
}

const wentIn = (all: readonly About[]) =>
  all
    .filter(({ isGuest }) => !isGuest)
    .toSorted((x, y) => x.changed - y.changed)
    .flatMap(({ support, rung, summary }) =>
      summary === null ? [] : [{ rung: rungOf(support, { rung }), summary }],
    );
