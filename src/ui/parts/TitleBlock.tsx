/** The title block of a drawing or of a sheet that is printed: what stands in it, and that it is training only. */

interface Props {
  readonly rows: readonly (readonly [term: string, text: string])[];
  readonly trainingOnly?: string;
  /** Where the sheet has no frame of its own. */
  readonly framed?: boolean;
}

export function TitleBlock({ rows, trainingOnly = 'no certificate, no competence', framed = false }: Props) {
  return (
    <dl className={framed ? 'title-block framed' : 'title-block'}>
      {[...rows, ['training only', trainingOnly] as const].map(([term, text]) => (
        <div key={term}>
          <dt>{term}</dt>
          <dd>{text}</dd>
        </div>
      ))}
    </dl>
  );
}
