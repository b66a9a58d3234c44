/** A bare line for a figure: on a phone typed on the page's own key pad, elsewhere on a keyboard. */
import type { ComponentProps } from 'react';
import { useOwnPad } from '../flow/useOwnPad.ts';

type Props = Omit<ComponentProps<'input'>, 'type' | 'inputMode' | 'autoComplete' | 'className'> & {
  /** Where a sign may stand before the figure: the one that it has. */
  readonly 'data-sign'?: '=' | '>' | '<';
};

export function FigureInput(props: Props) {
  const isOwn = useOwnPad();
  return (
    <input
      {...props}
      type="text"
      inputMode={isOwn ? 'none' : 'decimal'}
      autoComplete="off"
      className="figure-input"
    />
  );
}
