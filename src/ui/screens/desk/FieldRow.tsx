/** One field of the file: a figure inside its range, or one of a list. */
import { Choice } from '../../parts/Choice.tsx';
import type { Field, Figure } from './fields.ts';
import type { JobFile } from './jobFile.ts';
import { fieldOf, withField } from './jobFile.ts';
import { SizedFigure } from './SizedFigure.tsx';

interface Props {
  readonly file: JobFile;
  readonly field: Field;
  readonly onChange: (file: JobFile, what?: string) => void;
}

export function FieldRow({ file, field, onChange }: Props) {
  if (field.kind === 'figure') return <FigureRow file={file} field={field} onChange={onChange} />;
  const { path, label, options, usual } = field;
  const text = JSON.stringify(fieldOf(file, path) ?? usual ?? null);
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
      onChange={(value) => onChange(withField(file, path, JSON.parse(value)))}
    />
  );
}

function FigureRow({ file, field, onChange }: Props & { readonly field: Figure }) {
  const { path, label, unit, least, greatest, usual } = field;
  const kept = fieldOf(file, path);
  return (
    <SizedFigure
      className="in-row"
      label={unit === '' ? label : `${label}, ${unit}`}
      range={{ least, greatest, unit }}
      value={typeof kept === 'number' ? kept : usual}
      onChange={(figure) => onChange(withField(file, path, figure), path.join('.'))}
    />
  );
}
