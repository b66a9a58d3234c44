/** One field of the file: a figure inside its range, one of a list, or a day with its time. */
import { useEffect, useState } from 'react';
import { checkScenario } from '../../../scenario/checks.ts';
import { Choice } from '../../parts/Choice.tsx';
import { TextField } from '../../parts/TextField.tsx';
import type { Field, Figure, Moment, OneOf } from './fields.ts';
import type { JobFile } from './jobFile.ts';
import { SizedFigure } from './SizedFigure.tsx';

interface Props<F extends Field = Field> {
  readonly file: JobFile;
  readonly field: F;
  readonly onChange: (file: JobFile, what?: string) => void;
}

export function FieldRow({ file, field, onChange }: Props) {
  switch (field.kind) {
    case 'figure':
      return <FigureRow file={file} field={field} onChange={onChange} />;
    case 'one of':
      return <OneOfRow file={file} field={field} onChange={onChange} />;
    case 'moment':
      return <MomentRow file={file} field={field} onChange={onChange} />;
  }
}

function OneOfRow({ file, field: { label, options, read, write }, onChange }: Props<OneOf>) {
  const text = JSON.stringify(read(file) ?? null);
  const texts = options.map(([words, value]): [string, string] => [JSON.stringify(value), words]);
  // A file may hold what this list has not.
  const all = texts.some(([value]) => value === text)
    ? texts
    : [[text, 'as in the file'] as [string, string], ...texts];
  return (
    <Choice
      label={label}
      options={all}
      value={text}
      onChange={(value) => onChange(write(file, JSON.parse(value)))}
    />
  );
}

function FigureRow({ file, field, onChange }: Props<Figure>) {
  const { at, label, unit, least, greatest, empty, isWhole, read, write } = field;
  const kept = read(file);
  return (
    <SizedFigure
      className="in-row"
      label={
        <>
          {unit === '' ? label : `${label}, ${unit}`}
          {empty === undefined ? null : <small> empty: {empty}</small>}
        </>
      }
      range={{ least, greatest, unit }}
      mayBeEmpty={empty !== undefined}
      isWhole={isWhole}
      value={typeof kept === 'number' ? kept : undefined}
      onChange={(figure) => onChange(write(file, figure), at)}
    />
  );
}

/** In a file `2026-10-06T09:00`, here as a person writes it. */
const spoken = (moment: string): string => moment.replace('T', ' ');

function momentIn(text: string): string | null {
  const [, day = '', time = ''] = /^(\d{4}-\d{2}-\d{2})[ T]+(\d{2}:\d{2})$/.exec(text.trim()) ?? [];
  const moment = `${day}T${time}`;
  return day === '' || checkScenario({ clock: moment }).length > 0 ? null : moment;
}

function MomentRow({ file, field: { at, label, read, write }, onChange }: Props<Moment>) {
  const kept = String(read(file) ?? '');
  const [typed, setTyped] = useState(spoken(kept));
  useEffect(() => {
    setTyped((now) => (momentIn(now) === kept ? now : spoken(kept)));
  }, [kept]);
  return (
    <TextField
      className="in-row"
      label={label}
      value={typed}
      maxLength={16}
      error={
        momentIn(typed) === null
          ? `A day and a time such as 2026-10-06 09:00 are expected; until then ${spoken(kept)} stands.`
          : null
      }
      onChange={(text) => {
        setTyped(text);
        const moment = momentIn(text);
        if (moment !== null) onChange(write(file, moment), at);
      }}
    />
  );
}
