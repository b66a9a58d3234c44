/** The part of a screen that the drawing of the installation stands in, named for whoever listens. */
import type { ReactNode } from 'react';

export const Installation = ({ children }: { readonly children: ReactNode }) => (
  <section aria-labelledby="sheet-heading" className="sheet-section">
    <h2 id="sheet-heading" className="unseen">
      Installation
    </h2>
    {children}
  </section>
);
