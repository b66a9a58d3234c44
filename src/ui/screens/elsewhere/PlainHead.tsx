/** The head of a screen that stands in for another. */
export const PlainHead = ({ title }: { readonly title: string }) => (
  <header className="head">
    <div className="head-title">
      <h1>{title}</h1>
      <p>
        <strong>training only</strong>
      </p>
    </div>
  </header>
);
