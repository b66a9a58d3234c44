/** What the trainee types of one reading: figure, sign, unit, and what the record needs beside it. */

import { useId, useLayoutEffect, useRef, useState } from 'react';
import type { Run } from '../../../attempt/record/run.ts';
import { showsTripTime, typedIn } from '../../../bench/reading.ts';
import { TRIPPED_WHAT } from '../../../bench/readings/choices.ts';
import { TYPED_UNITS } from '../../../bench/readings/display.ts';
import { readingTitle } from '../../../words/readings.ts';
import { readingField } from '../../flow/draftFields.ts';
import { useKept } from '../../flow/useKept.ts';
import { furtherFacts, NO_TRIP, shownText, typedNumber, typedWithUnit } from '../../format/figures.ts';
import { BarLine } from '../../parts/BarLine.tsx';
import { FigureInput } from '../../parts/FigureInput.tsx';
import { Keys } from '../../parts/Keys.tsx';
import { leaveField } from '../../parts/leaveField.ts';
import { TextField } from '../../parts/TextField.tsx';
import { UnitKeys } from '../../parts/UnitKeys.tsx';
import { takeFocus } from '../../parts/useFocus.ts';
import { StepFrame } from '../bench/StepFrame.tsx';
import { LateTrace } from './LateTrace.tsx';
import type { Numbered, Observation, Then } from './records.ts';
import {
  lastVolts,
  NO_READING,
  notWritten,
  presetUnit,
  recordOf,
  recordText,
  TRIPPED_WORDS,
} from './records.ts';
import { ShownReading } from './ShownReading.tsx';
import type { TypedFigure } from './typedFigure.ts';
import { digitsIn, figureTyped } from './typedFigure.ts';

type Further = Pick<Observation, 'low' | 'duty' | 'amps' | 'tripMs' | 'tripped' | 'volts'>;
type Typed = TypedFigure & Further;

const SIGNS = ['', '>', '<', 'no-reading'] as const;
const SIGNS_OF = { timed: ['', '>', 'no-reading'], other: SIGNS } as const;
const SIGN_WORDS = { '': '=', '>': '> over', '<': '< under', 'no-reading': NO_READING } as const;
const TIMED_WORDS = { ...SIGN_WORDS, '>': NO_TRIP } as const;

const PILOT_EXTRAS = [
  ['low', 'low half, V'],
  ['duty', 'duty, %: work it out'],
  ['amps', 'so it offers, A'],
] as const;

interface Props {
  readonly run: Run;
  readonly numbered: Numbered;
  readonly onRecord: (typed: Typed) => void;
  /** Back to the leads, with what is typed kept. */
  readonly onLater: () => void;
  readonly then: Then;
}

export function RecordReading({ run, numbered, onRecord, onLater, then }: Props) {
  const { reading, index, took } = numbered;
  const record = recordOf(run, index);
  const lastOne = record?.unit ?? presetUnit(run, reading);
  const lastVoltage = lastVolts(run);
  const figureField = useRef<HTMLInputElement>(null);
  // The reading is there: what it shows is typed next.
  useLayoutEffect(() => {
    takeFocus(figureField.current);
  }, []);
  const id = useId();
  const isPilot = reading.quantity === 'pilot';
  // A steady pilot has one half and no times to work from.
  const hasPeriod = isPilot && reading.frequency != null;
  const isTimed = showsTripTime(reading);
  const field = readingField(reading);
  const [value, setValue] = useKept(`${field} value`, '');
  const [sign, setSign] = useKept(`${field} sign`, '', SIGNS);
  const [unit, setUnit] = useKept(`${field} unit`, isTimed ? '' : lastOne, Object.keys(TYPED_UNITS));
  const [extra, setExtra] = useKept<Readonly<Record<string, string>>>(
    `${field} extra`,
    // As with the unit: the trainee's own last, not what the instrument is set to.
    reading.quantity === 'insulation' && lastVoltage !== '' ? { volts: lastVoltage } : {},
  );
  const hasNoFigure = sign === 'no-reading' || (isTimed && sign === '>');
  const none = sign === 'no-reading' ? NO_READING : NO_TRIP;
  const written = hasNoFigure ? none : `${sign}${value}${isTimed ? unit : ''}`;
  const more = (name: string) => (text: string) => setExtra({ ...extra, [name]: text });
  const [error, setError] = useState<string | null>(null);
  // What came of it is drawn in slices: until then a second press writes nothing.
  const writtenTo = useRef<Run | null>(null);

  /** Whether it was written down. */
  const submit = (): boolean => {
    if (writtenTo.current === run) return false;
    const taken = typed();
    if (typeof taken === 'string') {
      setError(taken);
      return false;
    }
    writtenTo.current = run;
    leaveField();
    onRecord(taken);
    return true;
  };

  const typed = (): Typed | string => {
    const figure = figureTyped(reading, written, isTimed ? '' : unit);
    const further = furtherTyped();
    if (typeof figure === 'string') return figure;
    return further === null ? 'The further figures are numbers, or left empty.' : { ...figure, ...further };
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

  const isFilled = value.trim() !== '' || hasNoFigure;
  const bar = (
    <>
      <BarLine refused={error === null ? null : notWritten(error, `${id}-error`)}>
        {record === undefined
          ? (then.says ?? 'What you write is the record; until Finish test it can be corrected.')
          : `You wrote ${recordText(record)}.`}
      </BarLine>
      <div className="bar-acts">
        <button type="button" onClick={onLater}>
          {record === undefined ? 'Later' : 'Leave it'}
        </button>
        <button type="submit" className="main">
          Write{isFilled ? ` ${typedText(value, sign, isTimed ? 'ms' : unit)}` : ' it down'}
        </button>
        <button type="button" onClick={() => submit() && then.go()}>
          Write, {then.word}
        </button>
      </div>
    </>
  );
  return (
    <StepFrame bar={bar} form={{ label: `Write down: ${readingTitle(reading)}`, onSubmit: submit }}>
      <ShownReading reading={reading} />
      <div className="entry">
        <div className="field">
          <label htmlFor={`${id}-value`}>
            {isPilot ? 'high half' : isTimed ? 'tripped after, ms' : 'it shows'}
          </label>
          <FigureInput
            id={`${id}-value`}
            ref={figureField}
            data-sign={sign === '>' || sign === '<' ? sign : '='}
            data-none={isTimed ? NO_TRIP : NO_READING}
            data-digits={hasPeriod ? digitsIn(shownText(reading)) : undefined}
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
              else if (isTimed && text.trim() === NO_TRIP) setSign('>');
              else if (typedSign !== undefined) setSign(typedSign === '=' ? '' : typedSign);
              else if (hasNoFigure) setSign('');
              setValue(text.replace(/^\s*([=<>]\s*|no reading|no trip)/, ''));
              setError(null);
            }}
          />
        </div>
        {isTimed ? null : <UnitKeys units={typedIn(reading)} value={unit} onChange={setUnit} />}
      </div>
      <div className="sign-keys">
        <Keys
          legend="sign"
          options={SIGNS_OF[isTimed ? 'timed' : 'other']}
          words={isTimed ? TIMED_WORDS : SIGN_WORDS}
          value={SIGNS.find((one) => one === sign) ?? ''}
          onChange={setSign}
        />
      </div>
      {hasPeriod ? (
        <div className="fields short">
          {PILOT_EXTRAS.map(([name, label]) => (
            <TextField
              key={name}
              label={label}
              numeric
              value={extra[name] ?? ''}
              digits={name === 'low' ? digitsIn(furtherFacts(reading)[0]?.text ?? '') : undefined}
              onChange={more(name)}
            />
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
        <Keys
          legend="what tripped"
          options={TRIPPED_WHAT}
          words={TRIPPED_WORDS}
          value={TRIPPED_WHAT.find((what) => what === extra.tripped) ?? null}
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
      <LateTrace reading={reading} took={took} />
    </StepFrame>
  );
}

/** As it will be written: "> 299 MΩ", "62 ms", "no reading". */
function typedText(value: string, sign: string, unit: string): string {
  if (sign === 'no-reading') return NO_READING;
  if (sign === '>' && unit === 'ms' && value.trim() === '') return NO_TRIP;
  return [sign, value.trim(), unit].filter((part) => part !== '').join(' ');
}
