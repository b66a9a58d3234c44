/** Terms and what the papers say of them, line by line. */
interface Line {
  readonly term: string;
  readonly text: string;
}

export function SheetLines({ lines }: { readonly lines: readonly Line[] }) {
  return (
    <dl className="sheet-lines">
      {lines.map(({ term, text }) => (
        <div key={`${term} ${text}`} style={{ display: 'contents' }}>
          <dt>{term}</dt>
          <dd>{text}</dd>
        </div>
      ))}
    </dl>
  );
}
