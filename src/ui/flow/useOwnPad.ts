/** Whether figures are typed on the page's own key pad: on a phone, or in as narrow a window, where it has room. */
import { useMatches } from './useMatches.ts';

/** Below the field, or lying beside it. */
const ROOM = '((min-height: 30rem) or ((min-width: 40rem) and (min-height: 20rem)))';

export const useOwnPad = (): boolean =>
  useMatches(`(pointer: coarse) and ${ROOM}, (max-width: 600px) and (min-height: 30rem)`);
