/** The title block of a sheet that is given out, or of its key, which says so on each page. */
import { TRAINING_RECORD } from '../../parts/pageTitle.ts';

interface Props {
  readonly title: string;
  readonly word: string;
  readonly rules: string;
  readonly page: number;
  readonly of: number;
  readonly isKey?: boolean;
}

export function SheetBlock({ title, word, rules, page, of, isKey = false }: Props) {
  const rows = [
    ...(isKey ? [['KEY', 'for the tutor alone']] : []),
    ['job', title],
    ['word', word],
    ['rules', rules],
    ['page', `${page} of ${of}`],
    ['training only', TRAINING_RECORD],
  ] as const;
  return (
    <dl className="title-block framed">
      {rows.map(([term, text]) => (
        <div key={term}>
          <dt>{term}</dt>
          <dd>{text}</dd>
        </div>
      ))}
    </dl>
  );
}
