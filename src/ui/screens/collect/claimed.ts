import type { Look } from '../../../desk/collect.ts';
import { shortened } from '../../../scenario/quoted.ts';

/** The total that a file says it has, where that is another; null where it says the same. */
export function claimedTotal(looks: readonly Look[]): string | null {
  const look = looks.find(({ id }) => id === 'total-differs');
  return look?.id === 'total-differs' ? shortened(String(look.said)) : null;
}
