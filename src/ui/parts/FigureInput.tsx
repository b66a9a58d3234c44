/**
 * A bare line for a figure: on a phone typed on the page's own key pad, elsewhere on a keyboard. Enter goes on to the
 * next figure of the form that is empty; at the last one, or where the rest is left empty, it sends the form.
 */
import type { ComponentProps, KeyboardEvent } from 'react';
import { useContext } from 'react';
import { useOwnPad } from '../flow/useOwnPad.ts';
import { nextEmpty } from './nextFigure.ts';
import { OnSheet } from './onSheet.ts';

type Props = Omit<
  ComponentProps<'input'>,
  'type' | 'inputMode' | 'autoComplete' | 'className' | 'onKeyDown'
> & {
  /** Where a sign may stand before the figure: the one that it has. */
  readonly 'data-sign'?: '=' | '>' | '<';
  /** There, what is typed for no figure at all. */
  readonly 'data-none'?: string;
  /** Where it is read off an instrument: how many digits that shows. */
  readonly 'data-digits'?: number | undefined;
};

function onKeyDown(event: KeyboardEvent<HTMLInputElement>): void {
  const { form } = event.currentTarget;
  if (event.key !== 'Enter' || form === null) return;
  const next = nextEmpty(event.currentTarget, form);
  if (next === null) return;
  event.preventDefault();
  next.focus();
}

export function FigureInput(props: Props) {
  const isOnSheet = useContext(OnSheet);
  const isOwn = useOwnPad() && !isOnSheet;
  return (
    <input
      {...props}
      onKeyDown={onKeyDown}
      type="text"
      inputMode={isOwn ? 'none' : 'decimal'}
      autoComplete="off"
      className="figure-input"
    />
  );
}
