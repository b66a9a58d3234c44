/*
 * Runs sequences from a seed: a sound unit of some configuration, some moves and waits, one watch. Each sequence has a
 * key of its own, so that one that went wrong can be run again alone.
 */
import { createHash } from 'node:crypto';
import { assemble } from '../../src/bench/assemble.ts';
import { drawer } from '../../src/bench/draw.ts';
import type { Operation } from '../../src/bench/operation.ts';
import { soundParts } from '../../src/faults/parts.ts';
import type { UnitSheet } from '../../src/unit/design.ts';
import { soundDesign } from '../../src/unit/design.ts';
import { MIDDAY, SHEET, SITE } from '../bench/build.ts';
import { MOVES, WAITS, Watch } from './watch.ts';

const SHEETS: readonly Partial<UnitSheet>[] = [
  {},
  { outlet: 'socket', holdInB: false },
  { outlet: 'socket', residual: { type: 'A', rated: 0.03, by: 'breaker', direct: 'protective' } },
  {
    permission: 'authorise',
    diodeCheck: 'always',
    clearsBy: { ...SHEET.clearsBy, E: 'self', diode: 'self' },
  },
  { ventilation: true, startDelay: 5, clearsBy: { ...SHEET.clearsBy, E: 'reset', F: 'self' } },
  { outlet: 'socket', openPen: 'voltage-window', surgeArrester: true, loadLimit: 16, poleBleed: 300_000 },
];
/** Moves in one sequence. */
const LENGTH = 10;

/** What went wrong in sequence number `index` of a seed, with its moves; null if nothing did. */
export function runSequence(seed: number, index: number): string | null {
  const drawn = createHash('sha256').update(`${seed} ${index}`).digest();
  const one = <T>(of: readonly T[], at: number): T =>
    of[Math.floor(((drawn[at] ?? 0) * of.length) / 256)] as T;
  const sheet: UnitSheet = { ...SHEET, startUp: 2, ...one(SHEETS, 0) };
  const world = assemble(
    soundParts(SITE, soundDesign(sheet, drawer(seed + index))),
    [],
    seed + index,
    MIDDAY,
  );
  const watch = new Watch(world);
  const done: { readonly move: Operation; readonly wait: Operation }[] = [];
  for (let i = 0; i < LENGTH; i++) {
    const step = { move: one(MOVES, 2 * i + 1), wait: one(WAITS, 2 * i + 2) };
    done.push(step);
    const wrong = watch.step(step.move, step.wait);
    if (wrong !== null)
      return `sequence ${index}, seed ${seed}: ${wrong}\n${done.map((at) => JSON.stringify(at)).join('\n')}`;
  }
  return null;
}
