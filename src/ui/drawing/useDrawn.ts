/** What is drawn of the installation: all of it where there is room, else one part. */
import { useMemo } from 'react';
import type { Bench } from '../flow/bench.ts';
import type { Position } from '../flow/position.ts';
import { useMatches } from '../flow/useMatches.ts';
import type { Part } from './layout.ts';
import { layoutOf } from './layout.ts';
import { planOf } from './plan.ts';
import { benchScene } from './scene.ts';

/** From here the whole sheet has its lettering at full size; paper always has. */
export const ROOM = '(min-width: 80rem), print';

interface Wanted {
  readonly part: Part;
  /** Without it, by the room that there is. */
  readonly whole?: boolean | undefined;
  /** Whether a hand can move what is drawn. */
  readonly acts?: boolean;
}

export function useDrawn(bench: Bench, position: Position, { part, whole, acts = false }: Wanted) {
  const hasRoom = useMatches(ROOM);
  const isWhole = whole ?? hasRoom;
  const { happened, position: now } = bench;
  const { papers } = bench.run;
  const view = isWhole ? 'whole' : part;
  const layout = useMemo(() => layoutOf(papers, position, view), [papers, position, view]);
  const plan = useMemo(
    () => planOf({ ...benchScene({ happened, position: now, papers }, position, acts), layout }),
    [happened, now, papers, position, acts, layout],
  );
  return { isWhole, layout, plan };
}
