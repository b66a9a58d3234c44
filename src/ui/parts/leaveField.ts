/** Takes the focus from the field that is typed into, before it goes: a pad that is up for it comes down in one with it. */
export function leaveField(): void {
  if (document.activeElement instanceof HTMLInputElement) document.activeElement.blur();
}
