/** The readings of one act over many pairs: shown in one table, each with its own line to type into. */
import { useId, useState } from 'react';
import { TYPED_UNITS } from '../../../attempt/attempt.ts';
import type { Run } from '../../../attempt/run.ts';
import type { Note } from '../../flow/bench.ts';
import { readingField } from '../../flow/draftFields.ts';
import { useKept } from '../../flow/useKept.ts';
import { FigureInput } from '../../parts/FigureInput.tsx';
import { leaveField } from '../../parts/leaveField.ts';
import { UnitKeys, unitsOf } from '../../parts/UnitKeys.tsx';
import { benchTime, shownText, typedNumber, typedWithUnit } from '../../words/figures.ts';
import { pairText, placeText } from '../../words/trade.ts';
import { StepFrame } from '../bench/StepFrame.tsx';
import type { Numbered } from './records.ts';
import { lastUnit, recordOf, recordText } from './records.ts';

interface Props {
  readonly run: Run;
  readonly test: string;
  readonly group: readonly Numbered[];
  readonly onNote: (note: Note) => void;
  /** Back to the leads, with what is typed kept. */
  readonly onLater: () => void;
}

export function RecordPairs({ run, test, group, onNote, onLater }: Props) {
  const id = useId();
  const field = readingField(group[0]?.reading ?? { at: 0 });
  const [typed, setTyped] = useKept<Readonly<Record<number, string>>>(`${field} typed`, {});
  const [unit, setUnit] = useKept(
    `${field} unit`,
    () => lastUnit(run, group[0]?.reading.quantity ?? 'voltage'),
    Object.keys(TYPED_UNITS),
  );
  const [error, setError] = useState<string | null>(null);
  const open = group.filter(({ index }) => recordOf(run, index) === undefined);
  const first = open[0];

  const submit = () => {
    const numbers = open.map(({ index }) => [index, typedNumber(typed[index] ?? '')] as const);
    if (numbers.every(([, number]) => number === null)) return setError('A figure is expected, as 0 or 236.');
    if (unit === '') return setError('Choose the unit that belongs to the figures.');
    setError(null);
    leaveField();
    for (const [index, number] of numbers)
      if (number !== null)
        onNote({ kind: 'observation', test, reading: index, value: number, qualifier: null, unit });
  };

  const units = group[0] === undefined ? [] : unitsOf(group[0].reading);
  const bar = (
    <>
      {error === null ? (
        <p className="bar-line note">What you write is the record.</p>
      ) : (
        <p className="bar-line error" id={`${id}-error`} role="alert">
          <strong>Not written down.</strong>
          {error} What you typed stays.
        </p>
      )}
      <div className="bar-acts">
        <button type="button" onClick={onLater}>
          {open.length === 0 ? 'Leave it' : 'Later'}
        </button>
        {open.length === 0 ? null : (
          <button type="submit" className="main">
            Write them down
          </button>
        )}
      </div>
    </>
  );
  return (
    <StepFrame bar={bar} form={{ label: 'Write down every pair', onSubmit: submit }}>
      <p className="reading-title note">
        <span>
          {group[0]?.reading.tool === 'meter' ? 'meter' : 'two-pole detector'}, every pair at the{' '}
          {placeText(group[0]?.reading)}
        </span>
        <span>{benchTime(group[0]?.reading.at ?? 0)}</span>
      </p>
      <table className="bare">
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
            const between = pairText(reading);
            return (
              <tr key={index}>
                <th scope="row">{between}</th>
                <td>
                  <span className="shown" style={{ fontSize: 'inherit' }}>
                    {shownText(reading)}
                  </span>
                </td>
                <td>
                  {record === undefined ? (
                    <FigureInput
                      aria-label={`${between}, you write`}
                      value={typed[index] ?? ''}
                      onChange={(event) => {
                        // A unit typed behind one of the figures is the unit of all.
                        const withUnit = typedWithUnit(event.target.value);
                        if (withUnit !== null) setUnit(withUnit.unit);
                        setTyped({ ...typed, [index]: withUnit?.figure ?? event.target.value });
                      }}
                    />
                  ) : (
                    <strong>{recordText(record)}</strong>
                  )}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
      {open.length === 0 ? null : (
        <>
          <UnitKeys units={units} value={unit} onChange={setUnit} />
          {first === undefined || open.length < 2 ? null : (
            <button
              type="button"
              className="plain"
              onClick={() =>
                setTyped(Object.fromEntries(open.map(({ index }) => [index, typed[first.index] ?? ''])))
              }
            >
              Same figure for every pair
            </button>
          )}
        </>
      )}
    </StepFrame>
  );
}
