/** A table that may be wider than the screen: scrolls by itself, by keyboard too. */
import type { ReactNode } from 'react';

export function Scroll({ name, children }: { readonly name: string; readonly children: ReactNode }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by keyboard
    <section className="scroll" aria-label={name} tabIndex={0}>
      {children}
    </section>
  );
}
