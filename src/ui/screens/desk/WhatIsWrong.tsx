/** What is wrong: nothing, a cause of the catalogue that this installation can have, or several. */
import { useId } from 'react';
import { CATALOGUE, entryNamed, whyImpossible, withDefaults } from '../../../faults/catalogue.ts';
import { LINE } from '../../../faults/fault.ts';
import type { Scenario } from '../../../scenario/scenario.ts';
import { rightPapers } from '../../../scenario/scenario.ts';
import { causeWords } from '../../../words/causes.ts';
import { causesTitle, causeTitle } from '../../../words/causeTitles.ts';
import { FAMILY_NAMES } from '../../parts/CauseChoice.tsx';
import { Keys } from '../../parts/Keys.tsx';
import type { FaultLine } from './jobFile.ts';
import { withFault, withFaultsSet, withValue } from './jobFile.ts';
import type { LineProps } from './LineFrame.tsx';
import { LineFrame } from './LineFrame.tsx';

export function WhatIsWrong(props: LineProps) {
  const { file, scenario, onChange } = props;
  const { faults } = file;
  const ids = faults.map(({ fault }) => fault);
  const answer = faults.length === 0 ? 'Nothing is wrong' : causesTitle(ids);
  const sound = (
    <button type="button" className="plain" onClick={() => onChange(withFaultsSet(file, []))}>
      nothing: make it sound
    </button>
  );
  return (
    <LineFrame
      {...props}
      name="What is wrong"
      answer={answer}
      more={
        <div className="acts">
          {faults.length === 0 ? null : sound}
          <button type="button" className="plain" onClick={props.onOpen}>
            {faults.length === 0 ? 'choose what is wrong' : 'add a second'}
          </button>
        </div>
      }
    >
      {faults.map((line, i) => (
        <div key={line.fault} className="stack">
          <CausePick
            label={faults.length === 1 ? 'cause' : `cause ${i + 1}`}
            scenario={scenario}
            value={line.fault}
            taken={ids}
            onChange={(id) =>
              onChange(
                id === ''
                  ? withFaultsSet(
                      file,
                      faults.filter((_, at) => at !== i),
                    )
                  : withFault(file, i, lineOf(id)),
              )
            }
          />
          <Where
            scenario={scenario}
            line={line}
            onChange={(at) => onChange(withValue(file, i, LINE.name, at))}
          />
          <p className="note">{placeText(line.fault)}</p>
        </div>
      ))}
      <CausePick
        key={`next ${faults.length}`}
        label={faults.length === 0 ? 'cause' : 'add another'}
        scenario={scenario}
        value=""
        taken={ids}
        onChange={(id) => (id === '' ? undefined : onChange(withFaultsSet(file, [...faults, lineOf(id)])))}
      />
      {faults.length === 0 ? null : <div className="acts">{sound}</div>}
    </LineFrame>
  );
}

/** At its usual size, written out so that the file says it. */
function lineOf(id: string): FaultLine {
  const entry = entryNamed(id);
  return { fault: id, ...(entry === undefined ? {} : withDefaults(entry, {})) };
}

function placeText(id: string): string {
  const { where, cause } = causeWords(id);
  return `Where: ${where}. ${cause}`;
}

interface PickProps {
  readonly label: string;
  readonly scenario: Scenario;
  readonly value: string;
  /** Each cause once. */
  readonly taken: readonly string[];
  readonly onChange: (id: string) => void;
}

function CausePick({ label, scenario, value, taken, onChange }: PickProps) {
  const id = useId();
  const papers = rightPapers(scenario);
  const isOffered = (cause: string): boolean => cause === value || !taken.includes(cause);
  const possible = CATALOGUE.filter(
    (entry) => isOffered(entry.id) && (entry.id === value || whyImpossible(entry, papers, {}) === null),
  );
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <select id={id} value={value} onChange={(event) => onChange(event.target.value)}>
        <option value="">{value === '' ? 'choose' : 'take it out'}</option>
        {FAMILY_NAMES.map(([family, name]) => {
          const faults = possible.filter((entry) => entry.family === family && entry.kind === 'fault');
          return faults.length === 0 ? null : (
            <optgroup key={family} label={name}>
              {faults.map((fault) => (
                <option key={fault.id} value={fault.id}>
                  {causeTitle(fault.id)}
                </option>
              ))}
            </optgroup>
          );
        })}
        <optgroup label="right, but often taken for wrong">
          {possible
            .filter(({ kind }) => kind === 'not-fault')
            .map((right) => (
              <option key={right.id} value={right.id}>
                {causeTitle(right.id)}
              </option>
            ))}
        </optgroup>
      </select>
    </div>
  );
}

interface WhereProps {
  readonly scenario: Scenario;
  readonly line: FaultLine;
  readonly onChange: (at: number) => void;
}

/** On which line, where there are three. */
function Where({ scenario, line, onChange }: WhereProps) {
  const entry = entryNamed(line.fault);
  if (entry?.parameters.includes(LINE) !== true || scenario.site.phases === 1) return null;
  return (
    <Keys
      legend="on"
      options={['L1', 'L2', 'L3']}
      value={`L${line[LINE.name] ?? LINE.default}`}
      onChange={(name) => onChange(Number(name.slice(1)))}
    />
  );
}
