/** How much is told and asked in an attempt, to be chosen by hand; what the kept record suggests is said beside it. */
import { useEffect, useId, useState } from 'react';
import type { Rung } from '../../attempt/rung.ts';
import { RUNGS, rungOf } from '../../attempt/rung.ts';
import type { Suggestion } from '../../attempt/suggestedRung.ts';
import { suggestedRung } from '../../attempt/suggestedRung.ts';
import type { About } from '../../store/about.ts';
import { keptAttempts } from '../../store/keptAttempt.ts';
import { RUNG_MORE, RUNG_NAMES, SHOWN_NAME, suggestionText } from '../words/rungs.ts';

interface Props {
  /** 0: a worked run is shown. */
  readonly value: Rung | 0;
  readonly onChange: (rung: Rung | 0) => void;
}

export function RungChoice({ value, onChange }: Props) {
  const name = useId();
  const suggestion = useSuggestion();
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

/** From what this device kept of its own trainee; null where there is nothing yet, or nothing can be read. */
function useSuggestion(): Suggestion | null {
  const [suggestion, setSuggestion] = useState<Suggestion | null>(null);
  useEffect(() => {
    let isStale = false;
    keptAttempts().then(
      (all) => !isStale && setSuggestion(suggestedRung(wentIn(all))),
      () => {},
    );
    return () => {
      isStale = true;
    };
  }, []);
  return suggestion;
}

const wentIn = (all: readonly About[]) =>
  all
    .filter(({ isGuest }) => !isGuest)
    .toSorted((x, y) => x.changed - y.changed)
    .flatMap(({ support, rung, summary }) =>
      summary === null ? [] : [{ rung: rungOf(support, { rung }), summary }],
    );
