/** The frame of a page that is only read. */
import type { ReactNode } from 'react';
import { useEffect, useRef } from 'react';
import { Foot } from '../parts/Foot.tsx';

interface Props {
  readonly title: string;
  readonly about: string;
  readonly children: ReactNode;
}

export function Reading({ title, about, children }: Props) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
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
