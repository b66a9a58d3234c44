/** For the `ref` of a sheet over the page that is shown as long as it is there. */
import type { RefObject } from 'react';
import { useEffect, useRef } from 'react';

export function useSheet(): RefObject<HTMLDialogElement | null> {
  const sheet = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const shown = sheet.current;
    if (shown?.open === false) shown.showModal();
    return () => shown?.close();
  }, []);
  return sheet;
}
