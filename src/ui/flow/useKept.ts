/**
 * A field's state like `useState`, that is also kept with the attempt's place: one line in a component makes what it
 * holds outlive the page. Outside an attempt it is state and nothing else.
 */
import { createContext, useCallback, useContext, useState } from 'react';
import type { Fields } from './draftFields.ts';

export const FieldsOfAttempt = createContext<Fields | null>(null);

/** `allowed`: the only texts that may come back, where not every text may stand in this field. */
export function useKept<T>(
  name: string,
  first: T | (() => T),
  allowed?: readonly string[],
): [T, (value: T) => void] {
  const fields = useContext(FieldsOfAttempt);
  const [value, setValue] = useState<T>(() => {
    const own = typeof first === 'function' ? (first as () => T)() : first;
    return fields?.kept(name, own, allowed) ?? own;
  });
  const put = useCallback(
    (next: T) => {
      setValue(next);
      fields?.put(name, next);
    },
    [fields, name],
  );
  return [value, put];
}
