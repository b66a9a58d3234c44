/** The title block of a drawing: what it is of, by which rules, when it was drawn, and that it is training only. */

interface Props {
  readonly job: string;
  readonly rules: string;
  readonly drawnAt: string;
  readonly record: string;
  /** Where the sheet has no frame of its own. */
  readonly framed?: boolean;
}

export function TitleBlock({ job, rules, drawnAt, record, framed = false }: Props) {
  const rows = [
    ['job', job],
    ['rules', rules],
    ['drawn at', drawnAt],
    ['record', record],
    ['training only', 'no certificate, no competence'],
  ];
  return (
    <dl className={framed ? 'title-block framed' : 'title-block'}>
      {rows.map(([term, text]) => (
        <div key={term}>
          <dt>{term}</dt>
          <dd>{text}</dd>
        </div>
      ))}
    </dl>
  );
}
