/** The frame of a page that is only read. */
import type { ReactNode } from 'react';
import { Foot } from '../parts/Foot.tsx';
import { useFocus } from '../parts/useFocus.ts';

interface Props {
  readonly title: string;
  readonly about: string;
  readonly children: ReactNode;
}

export function Reading({ title, about, children }: Props) {
  const heading = useFocus<HTMLHeadingElement>();
  return (
    <>
      <header className="head">
        <div className="head-title">
          <h1 ref={heading} tabIndex={-1}>
            {title}
          </h1>
          <p>
            {about} · <strong>training only</strong>
          </p>
        </div>
      </header>
      <main className="columns one">
        <div className="wide-stack">{children}</div>
      </main>
      <Foot />
    </>
  );
}
