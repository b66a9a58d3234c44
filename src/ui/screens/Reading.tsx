/** The frame of a page that is only read. */
import type { ReactNode } from 'react';
import { Foot } from '../parts/Foot.tsx';
import { PageHead } from '../parts/PageHead.tsx';

interface Props {
  readonly title: string;
  readonly about: string;
  readonly children: ReactNode;
}

export function Reading({ title, about, children }: Props) {
  return (
    <>
      <PageHead title={title} about={about} takesFocus />
      <main className="columns one">
        <div className="wide-stack">{children}</div>
      </main>
      <Foot />
    </>
  );
}
