/**
 * The page's own key pad for figures on a phone: it types into the field that has the focus, as a keyboard would, goes on
 * from a figure that has as many digits as the instrument shows, whichever they are, and
 * its last key is what comes next: the next empty field, or the button of the form or of the step. The system's keyboard stays away
 * (inputmode none); one that is plugged in still works.
 */
import { memo, useEffect, useRef, useState } from 'react';
import { useOwnPad } from '../flow/useOwnPad.ts';
import { isFigure, nextEmpty } from './nextFigure.ts';

const DIGITS = [
  ['1', '2', '3'],
  ['4', '5', '6'],
  ['7', '8', '9'],
] as const;
/** What a typed sign means to a field that takes one: equal, over, under. */
const SIGNS: readonly (string | undefined)[] = ['=', '>', '<'];

export const KeyPad = memo(function KeyPad() {
  const isOwn = useOwnPad();
  const [field, setField] = useState<HTMLInputElement | null>(null);
  const [, setTyped] = useState(0);
  const pad = useRef<HTMLElement>(null);
  useEffect(() => {
    if (!isOwn) {
      setField(null);
      return;
    }
    let entered: HTMLInputElement | null = null;
    let pressing = false;
    /** Whoever goes from field to field by keys has a keyboard: the pad would only take the bar's place. */
    let byKeys = false;
    let wanted: HTMLInputElement | null = null;
    // The pad comes and goes after a press, not in the middle: what is pressed must not move from under the finger.
    const show = (next: HTMLInputElement | null) => {
      wanted = next;
      if (!pressing) setField(next);
    };
    const onDown = () => {
      byKeys = false;
      pressing = true;
    };
    const onUp = () => {
      setTimeout(() => {
        pressing = false;
        setField(wanted);
      });
    };
    const onFocus = ({ target }: FocusEvent) => {
      if (pad.current?.contains(target as Node)) return;
      show(isFigure(target) && target.inputMode === 'none' && !byKeys ? target : null);
      if (!isFigure(target)) return;
      target.select();
      entered = target;
    };
    // A tap puts the caret anywhere. Until the next one the whole figure is taken: the first key replaces it, or rubs
    // it out.
    const onClick = ({ target }: MouseEvent) => {
      if (target === entered) entered?.select();
      entered = null;
    };
    const onBlur = ({ relatedTarget }: FocusEvent) => {
      if (relatedTarget === null) show(null);
    };
    // Whoever has a keyboard puts it away and stays in the field.
    const onKey = ({ key }: KeyboardEvent) => {
      byKeys = true;
      if (key === 'Escape') show(null);
    };
    const onInput = () => setTyped((count) => count + 1);
    const on = new AbortController();
    const { signal } = on;
    document.addEventListener('mousedown', onDown, { capture: true, signal });
    document.addEventListener('mouseup', onUp, { capture: true, signal });
    document.addEventListener('focusin', onFocus, { signal });
    document.addEventListener('focusout', onBlur, { signal });
    document.addEventListener('input', onInput, { signal });
    document.addEventListener('click', onClick, { signal });
    document.addEventListener('keydown', onKey, { signal });
    wanted = isFigure(document.activeElement) ? document.activeElement : null;
    setField(wanted);
    return () => on.abort();
  }, [isOwn]);
  useEffect(() => {
    document.documentElement.classList.toggle('pad-open', field !== null);
    // Coming and going it takes room and gives it back: what has the focus stays in sight.
    const focused = field ?? document.activeElement;
    if (focused !== document.body) focused?.scrollIntoView({ block: 'nearest' });
    return () => document.documentElement.classList.remove('pad-open');
  }, [field]);
  if (field === null) return null;

  const type = (change: (into: HTMLInputElement) => void) => () => {
    const into = typedInto(field);
    into.focus({ preventScroll: true });
    change(into);
    into.dispatchEvent(new Event('input', { bubbles: true }));
  };
  const put = (text: string) => () => {
    const into = typedInto(field);
    type(() => replace(into, text))();
    if (isWhole(into) && into.form !== null) nextEmpty(into, into.form)?.focus();
  };
  const { sign, none } = field.dataset;
  const takesSign = sign !== undefined;
  return (
    <>
      <div className="pad-room" />
      {/* A press leaves the focus in the field that it types into. */}
      <section ref={pad} className="pad" aria-label="Key pad" onMouseDown={(event) => event.preventDefault()}>
        <div className="pad-inner">
          <p className="pad-name">
            <span className="note">typing</span>
            <strong>{nameOf(field)}</strong>
            <button type="button" className="plain" tabIndex={-1} onClick={() => field.blur()}>
              Close<span className="unseen"> the pad</span>
            </button>
          </p>
          <div className="pad-keys">
            {DIGITS.map((row, i) => [
              ...row.map((digit) => <Key key={digit} name={digit} onPress={put(digit)} />),
              i === 0 ? (
                <Key key="rub" name="rub out" onPress={type(rubOut)} />
              ) : i === 1 ? (
                <Key key="minus" name="+/−" label="change plus and minus" onPress={type(turn)} />
              ) : takesSign ? (
                <Key key="sign" name="> or <" onPress={type(turnSign)} />
              ) : (
                <span key="none" />
              ),
            ])}
            <Key name="0" isWide onPress={put('0')} />
            <Key name="." label="point" onPress={put('.')} />
            {none === undefined ? (
              <span />
            ) : (
              <Key
                name={none}
                onPress={type((into) => into.setRangeText(none, 0, into.value.length, 'end'))}
              />
            )}
          </div>
          <div className="bar-acts">
            {besidesOf(field).map((button) => (
              <button
                key={button.textContent}
                type="button"
                tabIndex={-1}
                onClick={() => {
                  field.blur();
                  button.click();
                }}
              >
                {button.textContent}
              </button>
            ))}
            <button
              type="button"
              className="main"
              tabIndex={-1}
              onClick={() => nextOf(typedInto(field)).go()}
            >
              {nextOf(field).name}
            </button>
          </div>
        </div>
      </section>
    </>
  );
});

interface KeyProps {
  readonly name: string;
  readonly label?: string;
  readonly isWide?: boolean;
  readonly onPress: () => void;
}

/** Out of the order of Tab: whoever has a keyboard types on it. */
function Key({ name, label, isWide = false, onPress }: KeyProps) {
  return (
    <button
      type="button"
      tabIndex={-1}
      className={name.length > 1 ? 'worded' : isWide ? 'wide' : ''}
      aria-label={label}
      onClick={onPress}
    >
      {name}
    </button>
  );
}

/** Whoever has tapped another field and presses on before the pad has turned to it types into that one. */
function typedInto(shown: HTMLInputElement): HTMLInputElement {
  const { activeElement } = document;
  return isFigure(activeElement) && activeElement.inputMode === 'none' ? activeElement : shown;
}

const nameOf = (field: HTMLInputElement): string =>
  field.getAttribute('aria-label') ?? field.labels?.[0]?.textContent ?? '';

function replace(field: HTMLInputElement, text: string): void {
  const end = field.value.length;
  field.setRangeText(text, field.selectionStart ?? end, field.selectionEnd ?? end, 'end');
}

/** Whether as many digits stand there as the instrument shows: the next empty figure is typed then. */
const isWhole = ({ value, dataset }: HTMLInputElement): boolean =>
  dataset.digits !== undefined && value.replaceAll(/\D/g, '').length === Number(dataset.digits);

function rubOut(field: HTMLInputElement): void {
  const start = field.selectionStart ?? field.value.length;
  const end = field.selectionEnd ?? start;
  field.setRangeText('', start === end ? Math.max(0, start - 1) : start, end, 'end');
}

function turn(field: HTMLInputElement): void {
  const isNegative = /^\s*[-−]/.test(field.value);
  field.setRangeText(isNegative ? '' : '−', 0, isNegative ? field.value.search(/[-−]/) + 1 : 0, 'end');
  field.setSelectionRange(field.value.length, field.value.length);
}

/** From equal to over to under and back: the field takes the sign from the front of its text. */
function turnSign(field: HTMLInputElement): void {
  const at = SIGNS.indexOf(field.dataset.sign);
  field.setRangeText(SIGNS[(at + 1) % SIGNS.length] ?? '=', 0, 0, 'end');
}

/** The other buttons of the form’s bar, over which the pad lies. */
const besidesOf = ({ form }: HTMLInputElement): readonly HTMLButtonElement[] =>
  form === null ? [] : [...form.querySelectorAll<HTMLButtonElement>('.bar-acts > button[type="button"]')];

/** The next empty figure of the same form; else the form's button; outside a form the step's own, over which the pad lies. */
function nextOf(field: HTMLInputElement): { readonly name: string; readonly go: () => void } {
  const { form } = field;
  if (form === null) {
    const main = field.closest('.step-frame')?.querySelector<HTMLButtonElement>('.bar-acts > .main');
    const done = () => {
      field.blur();
      main?.click();
    };
    return { name: main?.textContent ?? 'Done', go: done };
  }
  const empty = nextEmpty(field, form);
  const button = form.querySelector<HTMLButtonElement>('button[type="submit"]');
  if (empty !== null)
    return { name: `Next: ${nameOf(empty).replace(', you write', '')}`, go: () => empty.focus() };
  return { name: button?.textContent ?? 'Done', go: () => form.requestSubmit() };
}
