/** The head of a page: what it is, a few words about it, and where else to go or what to do from there. */
import type { ReactNode } from 'react';
import { useFocus } from './useFocus.ts';

interface Props {
  readonly title: string;
  readonly about?: string;
  /** What nobody may be in doubt of on any page. */
  readonly says?: string;
  /** A page that another one leads to begins at its title. */
  readonly takesFocus?: boolean;
  readonly acts?: ReactNode;
  /** What stands below title and acts. */
  readonly children?: ReactNode;
}

export function PageHead({
  title,
  about = '',
  says = 'training only',
  takesFocus = false,
  acts = null,
  children,
}: Props) {
  const heading = useFocus<HTMLHeadingElement>();
  return (
    <header className="head">
      <div className="head-title">
        <h1 {...(takesFocus ? { ref: heading, tabIndex: -1 } : {})}>{title}</h1>
        <p>
          {about === '' ? '' : `${about} · `}
          <strong>{says}</strong>
        </p>
      </div>
      {acts === null ? null : <div className="head-acts">{acts}</div>}
      {children}
    </header>
  );
}
