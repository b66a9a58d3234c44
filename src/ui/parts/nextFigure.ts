/** Where a typed figure leads: to the next one of its form that is still empty. Enter and the page's own key pad go there. */

export const isFigure = (target: unknown): target is HTMLInputElement =>
  target instanceof HTMLInputElement && target.classList.contains('figure-input');

/** Null where every later figure is filled in, and from an empty one after a filled one: the rest is left empty. */
export function nextEmpty(field: HTMLInputElement, form: HTMLFormElement): HTMLInputElement | null {
  const figures = [...form.querySelectorAll<HTMLInputElement>('input.figure-input')];
  const isEmpty = ({ value }: HTMLInputElement) => value.trim() === '';
  const at = figures.indexOf(field);
  if (isEmpty(field) && figures.slice(0, at).some((before) => !isEmpty(before))) return null;
  return figures.slice(at + 1).find(isEmpty) ?? null;
}
