/** What is drawn of the installation: all of it where there is room, else one part. */
import { useMemo } from 'react';
import type { Bench } from '../flow/bench.ts';
import type { Position } from '../flow/position.ts';
import type { Part } from './layout.ts';
import { layoutOf } from './layout.ts';
import { planOf } from './plan.ts';
import { sceneOf } from './scene.ts';
import { useMatches } from './useMatches.ts';

/** From here the whole sheet has its lettering at full size; paper always has. */
const ROOM = '(min-width: 80rem), print';

export function useDrawn(bench: Bench, position: Position, part: Part) {
  const isWhole = useMatches(ROOM);
  const { papers } = bench.run;
  const view = isWhole ? 'whole' : part;
  const layout = useMemo(() => layoutOf(papers, position, view), [papers, position, view]);
  const plan = useMemo(() => planOf(sceneOf(bench, position, layout)), [bench, position, layout]);
  return { isWhole, layout, plan };
}
