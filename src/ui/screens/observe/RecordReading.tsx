/** What the trainee types of one reading: figure, sign, unit, and what the record needs beside it. */
import type { FormEvent } from 'react';
import { useId, useState } from 'react';
import type { TypedUnit } from '../../../attempt/attempt.ts';
import { TYPED_UNITS } from '../../../attempt/attempt.ts';
import { displayOf, showsTripTime } from '../../../attempt/display.ts';
import type { Reading } from '../../../bench/reading.ts';
import { TRIPPED_WHAT } from '../../../bench/reading.ts';
import { readingField } from '../../flow/fields.ts';
import { useKept } from '../../flow/useKept.ts';
import { Choice } from '../../parts/Choice.tsx';
import { FigureInput } from '../../parts/FigureInput.tsx';
import { TextField } from '../../parts/TextField.tsx';
import { UnitChoice } from '../../parts/UnitChoice.tsx';
import { NO_TRIP, typedNumber, typedWithUnit } from '../../words/figures.ts';
import { readingTitle } from '../../words/trade.ts';
import type { Observation } from './records.ts';
import { recordText } from './records.ts';

type Further = Pick<Observation, 'low' | 'duty' | 'amps' | 'tripMs' | 'tripped' | 'volts'>;
export type Typed = Pick<Observation, 'value' | 'qualifier' | 'unit'> & Further;

const TRIPPED_WORDS = {
  unit: 'the unit',
  upstream: 'the device at the origin',
  both: 'both',
  breaker: 'the circuit’s breaker',
  none: 'nothing',
} as const;

/** As it is typed, and as the page's own pad types it. */
const NO_READING = 'no reading';
const SIGN_WORDS = [
  ['>', '> over'],
  ['<', '< under'],
] as const;
const TIMED_SIGNS = [['>', NO_TRIP]] as const;
const SIGNS = ['', '>', '<', 'no-reading'] as const;

const PILOT_EXTRAS = [
  ['low', 'low half, V'],
  ['duty', 'duty, %: work it out'],
  ['amps', 'so it offers, A'],
] as const;

interface Props {
  readonly reading: Reading;
  readonly record: Observation | undefined;
  readonly unit: TypedUnit | '';
  /** The test voltage that was written down last; stands in its field until another is typed. */
  readonly volts: string;
  readonly onRecord: (typed: Typed) => void;
}

export function RecordReading({ reading, record, unit: lastUnit, volts, onRecord }: Props) {
  const [open, setOpen] = useState(record === undefined);
  if (record !== undefined && !open)
    return (
      <p className="acts apart">
        <span>
          you wrote <strong>{recordText(record)}</strong>
        </span>
        <button type="button" className="plain" onClick={() => setOpen(true)}>
          Write it anew<span className="unseen">: {readingTitle(reading)}</span>
        </button>
      </p>
    );
  return <Entry reading={reading} lastUnit={lastUnit} lastVolts={volts} onRecord={onRecord} />;
}

interface EntryProps {
  readonly reading: Reading;
  readonly lastUnit: TypedUnit | '';
  readonly lastVolts: string;
  readonly onRecord: (typed: Typed) => void;
}

function Entry({ reading, lastUnit, lastVolts, onRecord }: EntryProps) {
  const id = useId();
  const isPilot = reading.quantity === 'pilot';
  const isTimed = showsTripTime(reading);
  const field = readingField(reading);
  const [value, setValue] = useKept(`${field} value`, '');
  const [sign, setSign] = useKept(`${field} sign`, '', SIGNS);
  const [unit, setUnit] = useKept(`${field} unit`, isTimed ? '' : lastUnit, Object.keys(TYPED_UNITS));
  const [extra, setExtra] = useKept<Readonly<Record<string, string>>>(
    `${field} extra`,
    // As with the unit: the trainee's own last, not what the instrument is set to.
    reading.quantity === 'insulation' && lastVolts !== '' ? { volts: lastVolts } : {},
  );
  const hasNoFigure = sign === 'no-reading' || (isTimed && sign === '>');
  const more = (name: string) => (text: string) => setExtra({ ...extra, [name]: text });
  const [error, setError] = useState<string | null>(null);

  const submit = (event: FormEvent) => {
    event.preventDefault();
    const taken = typed();
    if (typeof taken === 'string') setError(taken);
    else onRecord(taken);
  };

  const typed = (): Typed | string => {
    const further = furtherTyped();
    if (further === null) return 'The further figures are numbers, or left empty.';
    if (sign === 'no-reading')
      return { value: null, qualifier: sign, unit: unit || displayOf(reading).unit, ...further };
    const number = typedNumber(value);
    if (isTimed) return timeTyped(number, further);
    if (number === null) return 'A figure is expected, as 0.37 or 0,37.';
    if (unit === '') return 'Choose the unit that belongs to the figure.';
    return { value: number, qualifier: sign === '>' || sign === '<' ? sign : null, unit, ...further };
  };

  /** Of a test at a fixed current: the time alone, or that it did not trip. */
  const timeTyped = (number: number | null, further: Further): Typed | string => {
    const record = { value: null, unit: 'ms', ...further } as const;
    if (sign === '>') return { ...record, qualifier: '>' };
    if (unit !== '' && unit !== 'ms') return 'The time is expected in milliseconds.';
    return number === null
      ? 'The time is expected, as 23, or “no trip”.'
      : { ...record, qualifier: null, tripMs: number };
  };

  const furtherTyped = (): Further | null => {
    const { tripped = '', ...figures } = extra;
    const filled = Object.entries(figures).filter(([, text]) => text.trim() !== '');
    const numbers = filled.map(([name, text]) => [name, typedNumber(text)] as const);
    if (numbers.some(([, number]) => number === null)) return null;
    // The duty is typed in per cent and kept as a share.
    return {
      ...Object.fromEntries(
        numbers.map(([name, number]) => [
          name,
          name === 'duty' ? Number(((number ?? 0) / 100).toFixed(6)) : number,
        ]),
      ),
      ...(tripped === '' ? {} : { tripped }),
    };
  };

  return (
    <form onSubmit={submit} noValidate aria-label={`Write down: ${readingTitle(reading)}`} className="stack">
      <div className="entry">
        <div className="field">
          <label htmlFor={`${id}-value`}>
            {isPilot ? 'high half' : isTimed ? 'tripped after, ms' : 'it shows'}
          </label>
          <FigureInput
            id={`${id}-value`}
            data-sign={sign === '>' || sign === '<' ? sign : '='}
            value={hasNoFigure ? '' : value}
            readOnly={hasNoFigure}
            aria-invalid={error !== null || undefined}
            aria-describedby={error === null ? undefined : `${id}-error`}
            onChange={(event) => {
              // A sign typed before the figure sets the sign by itself, a unit behind it the unit, and so do the
              // words for none.
              const withUnit = typedWithUnit(event.target.value);
              if (withUnit !== null) setUnit(withUnit.unit);
              // There is no list of units to take a wrong one back in.
              else if (isTimed) setUnit('');
              const text = withUnit?.figure ?? event.target.value;
              const typedSign = /^\s*([=<>])/.exec(text)?.[1];
              if (text.trim() === NO_READING) setSign('no-reading');
              else if (typedSign !== undefined) setSign(typedSign === '=' ? '' : typedSign);
              else if (hasNoFigure) setSign('');
              setValue(text.replace(/^\s*([=<>]\s*|no reading)/, ''));
              setError(null);
            }}
          />
        </div>
        {isTimed ? null : <UnitChoice above value={unit} onChange={setUnit} />}
        <Choice
          above
          label="sign"
          options={[['', '='], ...(isTimed ? TIMED_SIGNS : SIGN_WORDS), ['no-reading', NO_READING]]}
          value={sign}
          onChange={setSign}
        />
      </div>
      {isPilot ? (
        <div className="fields">
          {PILOT_EXTRAS.map(([name, label]) => (
            <TextField key={name} label={label} numeric value={extra[name] ?? ''} onChange={more(name)} />
          ))}
        </div>
      ) : null}
      {reading.quantity === 'residual' && !isTimed ? (
        <TextField
          label="the last step after, ms; may be left out"
          numeric
          value={extra.tripMs ?? ''}
          onChange={more('tripMs')}
        />
      ) : null}
      {reading.quantity === 'residual' ? (
        <Choice
          label="what tripped"
          none="choose"
          options={TRIPPED_WHAT.map((what): [string, string] => [what, TRIPPED_WORDS[what]])}
          value={extra.tripped ?? ''}
          onChange={more('tripped')}
        />
      ) : null}
      {reading.quantity === 'insulation' ? (
        <TextField
          label="at a test voltage of, V"
          numeric
          value={extra.volts ?? ''}
          onChange={more('volts')}
        />
      ) : null}
      {error === null ? null : (
        <p className="error" id={`${id}-error`} role="alert">
          <strong>Not written down.</strong>
          {error} What you typed stays.
        </p>
      )}
      <button type="submit">Write it down</button>
    </form>
  );
}
