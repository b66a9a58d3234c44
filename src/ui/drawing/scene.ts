/**
 * What the drawing shows: the papers, and where the trainee's own hand has put things or, before the lock, will put
 * them. Nothing of what is wrong is known here, and no contact that the trainee has not moved.
 */
import type { Link, Removable } from '../../bench/plant.ts';
import { LINES } from '../../laws/conductors.ts';
import type { Papers } from '../../verification/testAction.ts';
import { INDICATOR_WORDS } from '../../words/seen.ts';
import type { Bench, Happened } from '../flow/bench.ts';
import type { Position } from '../flow/position.ts';
import type { Layout } from './layout.ts';

export interface BenchScene {
  readonly papers: Papers;
  /** As it is drawn: set up, perhaps not locked yet. */
  readonly position: Position;
  /** As it is. */
  readonly now: Position;
  /** What was taken off at the origin, and what is linked there. */
  readonly removed: readonly Removable[];
  readonly links: readonly Link[];
  /** When the supply was last switched, s; null: never. */
  readonly switchedAt: number | null;
  /** What the unit indicated when it was last looked at in this attempt; null: nobody has looked yet. */
  readonly says: string | null;
  /** Whether a hand can move what is drawn now. */
  readonly acts: boolean;
}

/** The same with a place for everything. */
export interface Scene extends BenchScene {
  readonly layout: Layout;
}

/** What of a bench is drawn: what is merely written down leaves the drawing as it is. */
interface Drawn extends Pick<Bench, 'happened' | 'position'> {
  readonly papers: Papers;
}

/** `acts`: whether a hand can move what is drawn. */
export function benchScene(
  { happened, position: now, papers }: Drawn,
  position: Position,
  acts: boolean,
): BenchScene {
  const switched = happened.findLast(({ operation: { op } }) => op === 'isolate' || op === 'energise');
  return {
    papers,
    position,
    now,
    removed: removedIn(happened),
    links: linksIn(happened),
    switchedAt: switched === undefined ? null : switched.at,
    says: saidBy(happened.at(-1)),
    acts,
  };
}

/** A dark unit says nothing. */
function saidBy(last: Happened | undefined): string | null {
  const indicator = last?.outcome.seen.indicator;
  return indicator === undefined || indicator === 'dark' ? null : INDICATOR_WORDS[indicator];
}

function removedIn(happened: readonly Happened[]): readonly Removable[] {
  const off = new Set<Removable>();
  for (const { operation, outcome } of happened) {
    if (outcome.refused !== null) continue;
    if (operation.op === 'disconnect') off.add(operation.what);
    if (operation.op === 'reconnect') off.delete(operation.what);
  }
  return [...off];
}

function linksIn(happened: readonly Happened[]): readonly Link[] {
  const linked = new Set<Link>();
  for (const { operation, outcome } of happened) {
    if (outcome.refused !== null || (operation.op !== 'link' && operation.op !== 'unlink')) continue;
    const ends = operation.between.flat();
    const line = LINES.find((x) => ends.includes(`origin.${x}`));
    if (line === undefined) continue;
    const link: Link = `${line}-${ends.includes('origin.N') ? 'N' : 'PE'}`;
    if (operation.op === 'link') linked.add(link);
    else linked.delete(link);
  }
  return [...linked];
}

/** Lengths and areas as papers give them: as many digits as needed, three at most. */
export const amount = (value: number): string => String(Number(value.toPrecision(3)));
