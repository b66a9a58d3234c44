/** One limit replaced by the tutor's own, with where it is from and why: shown to trainees, and kept with the mark. */
import { useState } from 'react';
import type { Scenario } from '../../../scenario/scenario.ts';
import { allowedActions, papersOf } from '../../../scenario/scenario.ts';
import { figureIn } from '../../../scenario/tradeNames.ts';
import { onPapers } from '../../../verification/onPapers.ts';
import type { Limit, Papers } from '../../../verification/testAction.ts';
import { limitSum, limitText } from '../../../words/actions.ts';
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

interface Named {
  readonly name: string;
  readonly test: string;
  readonly limit: Limit;
}

/** Of the tests that are allowed, each limit once. */
function limitsIn(scenario: Scenario, papers: Papers): readonly Named[] {
  const seen = new Set<string>();
  return allowedActions(scenario).flatMap((action) =>
    onPapers(action, papers).limits.flatMap((limit) => {
      const name = `${action.id}/${limit.id}`;
      if (seen.has(name)) return [];
      seen.add(name);
      return [{ name, test: action.id, limit }];
    }),
  );
}

export function OwnLimits({ file, scenario, onChange }: Props) {
  const papers = papersOf(scenario);
  const limits = limitsIn(scenario, papers);
  const [name, setName] = useState('');
  const chosen = limits.find((one) => one.name === name);
  return (
    <div className="stack">
      <p className="note">
        One value in place of the standard’s, for this job alone. Trainees see it in the papers and where they
        judge, with its source and your reason; it stands beside the mark. Every limit that a reading is held
        against can be replaced; what a line says itself (a state of the pilot, a time within a sentence) is
        the standard’s and stays.
      </p>
      {(file.own ?? []).map(({ limit }) => {
        const known = limits.find((one) => one.name === limit);
        return (
          <div key={limit} className="stack">
            <p>
              <strong>{known === undefined ? limit : testTitle(known.test)}</strong>{' '}
              {known === undefined
                ? ''
                : `${limitText(known.test, known.limit)}: ${limitSum(known.test, known.limit)} (${sourceText(known.limit.source)})`}
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
        <label htmlFor="own-limit">limit to replace</label>
        <select id="own-limit" value={name} onChange={(event) => setName(event.target.value)}>
          <option value="">choose</option>
          {limits.map((one) => (
            <option key={one.name} value={one.name}>
              {testTitle(one.test)}: {limitText(one.test, one.limit)}
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
  readonly chosen: Named;
  readonly onSet: (value: number, source: string, why: string) => void;
}

function Replacing({ chosen: { test, limit }, onSet }: ReplacingProps) {
  const [value, setValue] = useState('');
  const [source, setSource] = useState('');
  const [why, setWhy] = useState('');
  const [isAsked, setAsked] = useState(false);
  // With a prefix too: 2 MΩ is typed as it is said.
  const figure = figureIn(value)?.value ?? null;
  const isFigure = figure !== null && figure >= 0 && figure <= 1e12;
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
        Now: {limitSum(test, limit)} ({sourceText(limit.source)}).
      </p>
      <TextField
        label={`${limit.kind === 'most' ? 'at most' : 'at least'}, ${limit.unit}`}
        numeric
        value={value}
        error={isAsked && !isFigure ? `A figure in ${limit.unit} is expected.` : null}
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
        <button type="submit">Set this limit</button>
      </div>
    </form>
  );
}
