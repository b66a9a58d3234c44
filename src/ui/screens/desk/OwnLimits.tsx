/** One limit, or one figure that a line states, replaced by the tutor's own, with where it is from and why: shown to trainees, and kept with the mark. */
import { useState } from 'react';
import type { Scenario } from '../../../scenario/scenario.ts';
import { allowedActions, papersOf } from '../../../scenario/scenario.ts';
import { figureIn } from '../../../scenario/tradeNames.ts';
import type { Replaceable } from '../../../verification/replaceable.ts';
import { kindOf, replaceableIn } from '../../../verification/replaceable.ts';
import type { Limit } from '../../../verification/testAction.ts';
import { replaceableSum, replaceableText, sideOf } from '../../../words/replaceable.ts';
import { sourceText } from '../../../words/sources.ts';
import { testTitle } from '../../../words/testTitles.ts';
import { TextField } from '../../parts/TextField.tsx';
import type { JobFile } from './jobFile.ts';
import { withOwnLimit } from './jobFile.ts';

interface Props {
  readonly file: JobFile;
  readonly scenario: Scenario;
  readonly onChange: (file: JobFile) => void;
}

/** Its unit, which way it bounds, and where it is from. */
function boundOf(one: Replaceable): Pick<Limit, 'kind' | 'source'> & { readonly unit: string } {
  if ('limit' in one) return one.limit;
  return { kind: kindOf(one.figure), unit: one.figure.unit, source: one.line.source };
}

export function OwnLimits({ file, scenario, onChange }: Props) {
  const papers = papersOf(scenario);
  const all = allowedActions(scenario).flatMap((action) => replaceableIn(action, papers));
  const limits = [...new Map(all.map((one) => [one.name, one])).values()];
  const [name, setName] = useState('');
  const chosen = limits.find((one) => one.name === name);
  return (
    <div className="stack">
      <p className="note">
        One value in place of the standard’s, for this job alone. Trainees see it in the papers, in the line
        and where they judge, with its source and your reason; it stands beside the mark. What proves dead,
        what an open PEN or an emergency stop allows, and lines after which work stops keep the standard’s
        figure: a weaker one could hurt somebody.
      </p>
      {(file.own ?? []).map(({ limit }) => {
        const known = limits.find((one) => one.name === limit);
        return (
          <div key={limit} className="stack">
            <p>
              <strong>{known === undefined ? limit : testTitle(known.test)}</strong>{' '}
              {known === undefined
                ? ''
                : `${replaceableText(known)}: ${replaceableSum(known)} (${sourceText(boundOf(known).source)})`}
            </p>
            <div className="acts">
              <button type="button" onClick={() => onChange(withOwnLimit(file, limit, null))}>
                Take it out
              </button>
            </div>
          </div>
        );
      })}
      <div className="field">
        <label htmlFor="own-limit">value to replace</label>
        <select id="own-limit" value={name} onChange={(event) => setName(event.target.value)}>
          <option value="">choose</option>
          {limits.map((one) => (
            <option key={one.name} value={one.name}>
              {testTitle(one.test)}: {replaceableText(one)}
            </option>
          ))}
        </select>
      </div>
      {chosen === undefined ? null : (
        <Replacing
          key={name}
          chosen={chosen}
          onSet={(value, source, why) => {
            onChange(withOwnLimit(file, name, { limit: name, value, source, why }));
            setName('');
          }}
        />
      )}
    </div>
  );
}

interface ReplacingProps {
  readonly chosen: Replaceable;
  readonly onSet: (value: number, source: string, why: string) => void;
}

function Replacing({ chosen, onSet }: ReplacingProps) {
  const { kind, unit, source: from } = boundOf(chosen);
  const isNegative = 'figure' in chosen && chosen.figure.usual < 0;
  const [value, setValue] = useState('');
  const [source, setSource] = useState('');
  const [why, setWhy] = useState('');
  const [isAsked, setAsked] = useState(false);
  // With a prefix too: 2 MΩ is typed as it is said.
  const figure = figureIn(value.replace('−', '-'))?.value ?? null;
  const isFigure = figure !== null && (isNegative || figure >= 0) && Math.abs(figure) <= 1e12;
  const wanting = (text: string): string | null => (isAsked && text.trim() === '' ? 'It is expected.' : null);
  return (
    <form
      className="stack"
      onSubmit={(event) => {
        event.preventDefault();
        setAsked(true);
        if (isFigure && source.trim() !== '' && why.trim() !== '') onSet(figure, source.trim(), why.trim());
      }}
    >
      <p className="note">
        Now: {replaceableSum(chosen)} ({sourceText(from)}).
      </p>
      <TextField
        label={`${sideOf(kind)}, ${unit}`}
        numeric
        value={value}
        error={isAsked && !isFigure ? `A figure in ${unit} is expected.` : null}
        onChange={setValue}
      />
      <TextField
        label="where it is from"
        maxLength={200}
        value={source}
        error={wanting(source)}
        onChange={setSource}
      />
      <TextField
        label="why it is another here"
        maxLength={300}
        value={why}
        error={wanting(why)}
        onChange={setWhy}
      />
      <div className="acts">
        <button type="submit">Set this value</button>
      </div>
    </form>
  );
}
