/** Like readings, of every pair or every line: shown in one table, each with its own line to type into. */

import { useId, useLayoutEffect, useRef, useState } from 'react';
import type { Run } from '../../../attempt/record/run.ts';
import type { Reading } from '../../../bench/reading.ts';
import { showsTripTime, typedIn } from '../../../bench/reading.ts';
import { TRIPPED_WHAT } from '../../../bench/readings/choices.ts';
import { TYPED_UNITS } from '../../../bench/readings/display.ts';
import { benchTime } from '../../../words/benchTime.ts';
import { pairText, placeText, readingTitle } from '../../../words/readings.ts';
import type { Note } from '../../flow/bench.ts';
import { readingField } from '../../flow/draftFields.ts';
import { useKept } from '../../flow/useKept.ts';
import { useOwnPad } from '../../flow/useOwnPad.ts';
import { furtherFacts, NO_TRIP, shownText, typedNumber, typedWithUnit } from '../../format/figures.ts';
import { BarLine } from '../../parts/BarLine.tsx';
import { FigureInput } from '../../parts/FigureInput.tsx';
import { Keys } from '../../parts/Keys.tsx';
import { leaveField } from '../../parts/leaveField.ts';
import { UnitKeys } from '../../parts/UnitKeys.tsx';
import { StepFrame } from '../bench/StepFrame.tsx';
import type { Numbered, Then } from './records.ts';
import {
  lastVolts,
  NO_READING,
  notWritten,
  presetUnit,
  recordOf,
  recordText,
  TRIPPED_WORDS,
} from './records.ts';
import { digitsIn, figureTyped } from './typedFigure.ts';

interface Props {
  readonly run: Run;
  readonly test: string;
  readonly group: readonly Numbered[];
  readonly onNote: (note: Note) => void;
  /** Back to the leads, with what is typed kept. */
  readonly onLater: () => void;
  readonly then: Then;
}

type Texts = Readonly<Record<number, string>>;
/** What tells the rows apart. */
const rowText = (reading: Reading): string =>
  reading.quantity === 'residual' ? `${reading.line ?? ''}–PE` : pairText(reading);

function headText(reading: Reading, isAtOnePlace: boolean): string {
  const [what = ''] = readingTitle(reading).split(', ');
  return isAtOnePlace ? `${what} at the ${placeText(reading)}` : what;
}

export function RecordRows({ run, test, group, onNote, onLater, then }: Props) {
  const id = useId();
  const isOwn = useOwnPad();
  const first = group[0]?.reading ?? null;
  const field = readingField(first ?? { at: 0 });
  const [typed, setTyped] = useKept<Texts>(`${field} typed`, {});
  const [tripped, setTripped] = useKept<Texts>(`${field} tripped`, {}, TRIPPED_WHAT);
  const [volts, setVolts] = useKept(`${field} volts`, () => lastVolts(run));
  const [unit, setUnit] = useKept(
    `${field} unit`,
    () => (first === null ? '' : presetUnit(run, first)),
    Object.keys(TYPED_UNITS),
  );
  const [error, setError] = useState<string | null>(null);
  // What came of it is drawn in slices: until then a second press writes nothing.
  const writtenTo = useRef<Run | null>(null);
  const table = useRef<HTMLTableElement>(null);
  // The readings are there: what the first of them shows is typed next. The pad comes with them, in the same picture.
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when they come
  useLayoutEffect(() => {
    table.current?.querySelector<HTMLInputElement>('.figure-input')?.focus({ preventScroll: isOwn });
  }, []);
  if (first === null) return null;
  const open = group.filter(({ index }) => recordOf(run, index) === undefined);
  const isTimed = showsTripTime(first);
  const units = isTimed ? [] : typedIn(first);
  const none = isTimed ? NO_TRIP : NO_READING;
  const places = new Set(group.map(({ reading }) => placeText(reading)));
  const isAtOnePlace = places.size === 1 && !places.has('') && first.quantity !== 'residual';

  /** Whether it was written down. */
  const submit = (): boolean => {
    if (writtenTo.current === run) return false;
    const filled = open.filter(({ index }) => (typed[index] ?? '').trim() !== '');
    const figures = filled.map(({ index, reading }) => ({
      index,
      figure: figureTyped(reading, typed[index] ?? '', unit),
    }));
    const refuse = (why: string) => {
      setError(why);
      return false;
    };
    const [unfit] = figures.flatMap(({ figure }) => (typeof figure === 'string' ? [figure] : []));
    if (unfit !== undefined) return refuse(unfit);
    if (filled.length === 0) return refuse('A figure is expected, as 0.37 or 0,37.');
    const voltage = first.quantity === 'insulation' ? typedNumber(volts) : null;
    if (volts.trim() !== '' && first.quantity === 'insulation' && voltage === null)
      return refuse('The test voltage is a number, or left empty.');
    setError(null);
    writtenTo.current = run;
    leaveField();
    for (const { index, figure } of figures) {
      if (typeof figure === 'string') continue;
      const what = TRIPPED_WHAT.find((one) => one === tripped[index]);
      onNote({
        kind: 'observation',
        test,
        reading: index,
        ...figure,
        ...(what === undefined ? {} : { tripped: what }),
        ...(voltage === null ? {} : { volts: voltage }),
      });
    }
    return true;
  };

  const bar = (
    <>
      <BarLine refused={error === null ? null : notWritten(error, `${id}-error`)}>
        {then.says ?? 'What you write is the record.'}
      </BarLine>
      <div className="bar-acts">
        <button type="button" onClick={onLater}>
          {open.length === 0 ? 'Leave them' : 'Later'}
        </button>
        {open.length === 0 ? null : (
          <>
            <button type="submit" className="main">
              Write them down
            </button>
            <button type="button" onClick={() => submit() && then.go()}>
              Write, {then.word}
            </button>
          </>
        )}
      </div>
    </>
  );
  return (
    <StepFrame
      bar={bar}
      form={{
        label: `Write down every ${first.quantity === 'residual' ? 'line' : 'pair'}`,
        onSubmit: submit,
      }}
    >
      <p className="reading-title note">
        <span>{headText(first, isAtOnePlace)}</span>
        <span>{benchTime(first.at)}</span>
      </p>
      {open.length === 0 ? null : (
        <div className="rows-units">
          <UnitKeys units={units} value={unit} onChange={setUnit} />
          {first.quantity === 'insulation' ? (
            <div className="field">
              <label htmlFor={`${id}-volts`}>at a test voltage of, V</label>
              <FigureInput
                id={`${id}-volts`}
                value={volts}
                onChange={({ target }) => setVolts(target.value)}
              />
            </div>
          ) : null}
        </div>
      )}
      <table ref={table} className="bare rows">
        <thead>
          <tr>
            <th scope="col">between</th>
            <th scope="col">shows</th>
            <th scope="col">you write</th>
          </tr>
        </thead>
        <tbody>
          {group.map(({ index, reading }) => {
            const record = recordOf(run, index);
            const between =
              isAtOnePlace || reading.quantity === 'residual' ? rowText(reading) : rowAt(reading);
            const isOpen = record === undefined;
            const type = (text: string) => {
              // A unit typed behind one of the figures is the unit of all.
              const withUnit = typedWithUnit(text);
              if (withUnit !== null && !isTimed) setUnit(withUnit.unit);
              // A time has one unit alone, and keeps what was typed behind it.
              setTyped({ ...typed, [index]: isTimed ? text : (withUnit?.figure ?? text) });
              setError(null);
            };
            return (
              <tr key={index}>
                <th scope="row">{between}</th>
                <td>
                  <span className="shown">{shownText(reading)}</span>
                  {furtherFacts(reading).map(({ term, text }) => (
                    <small key={term} className="note">
                      {' '}
                      {term} {text}
                    </small>
                  ))}
                </td>
                <td>
                  {isOpen ? (
                    <div className="row-entry">
                      <FigureInput
                        aria-label={`${between}, you write`}
                        data-sign={signOf(typed[index] ?? '')}
                        data-none={none}
                        data-digits={digitsIn(shownText(reading))}
                        value={typed[index] ?? ''}
                        onChange={({ target }) => type(target.value)}
                      />
                      {isOwn ? null : (
                        <button type="button" className="plain" onClick={() => type(none)}>
                          {none}
                          <span className="unseen">: {between}</span>
                        </button>
                      )}
                    </div>
                  ) : (
                    <strong>{recordText(record)}</strong>
                  )}
                  {isOpen && reading.quantity === 'residual' ? (
                    <Keys
                      legend={<span className="unseen">what tripped, {between}</span>}
                      options={TRIPPED_WHAT}
                      words={TRIPPED_WORDS}
                      value={TRIPPED_WHAT.find((what) => what === tripped[index]) ?? null}
                      onChange={(what) => setTripped({ ...tripped, [index]: what })}
                    />
                  ) : null}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
      {open.length < 2 ? null : (
        <button
          type="button"
          className="plain"
          onClick={() =>
            setTyped(Object.fromEntries(open.map(({ index }) => [index, typed[open[0]?.index ?? 0] ?? ''])))
          }
        >
          Same figure for every {first.quantity === 'residual' ? 'line' : 'pair'}
        </button>
      )}
    </StepFrame>
  );
}

/** Where the rows are not all at one place. */
const rowAt = (reading: Reading): string => readingTitle(reading).split(', ').slice(1).join(', ');

/** The sign at the front of a line, for the pad’s key that changes it. */
function signOf(text: string): '=' | '>' | '<' {
  const sign = /^\s*([<>])/u.exec(text)?.[1];
  return sign === '>' || sign === '<' ? sign : '=';
}
