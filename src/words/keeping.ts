/** What is kept, and why nothing is, in words; what is lost by it is said where it is lost. */
import type { KeepProblem } from '../store/keepProblem.ts';

export const WHY_NOT_KEPT: Readonly<Record<KeepProblem, string>> = {
  refused: 'This browser keeps nothing, as in a private window or with storage switched off.',
  full: 'No room is left on this device; deleting attempts in My record makes some.',
  'other version':
    'Another tab holds another version of this page: close the other tabs, then load this one anew.',
  newer:
    'What this device keeps was made by a newer version of this page: load the page anew. If this stays, whoever looks after the page gives you an old one.',
  'taken over': 'Another tab has taken the attempt over.',
  deleted: 'The attempt was deleted in another tab.',
};

/** An attempt that cannot be read may have no title. */
export const titleOf = (title: string): string => (title === '' ? 'An attempt without a title' : title);
