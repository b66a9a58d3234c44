/**
 * Putting a cause right by hand: dead work on what the cause is about. Where the fault is there it is gone afterwards;
 * where it is not, a sound part has taken the place of a sound one. Nothing that the bench says or shows tells which.
 */
import { asTold, cannotBePutRight, entryNamed } from '../faults/catalogue.ts';
import { COMPONENTS } from '../faults/components.ts';
import type { Seconds } from '../laws/quantities.ts';
import { reassemble, reequip } from './assemble.ts';
import { isIsolated } from './plant.ts';
import type { Refusal } from './refusal.ts';
import { pass } from './settle.ts';
import type { World } from './world.ts';

/** How long any repair takes, s. Fixed by us, and the same for all: how long it took tells nothing. */
const REPAIR: Seconds = 900;

/** Puts it right and lets the time pass that it takes; or says why it cannot be done, by what anybody can see. */
export function putRight(world: World, what: string): Refusal | null {
  const entry = entryNamed(what);
  if (entry === undefined) throw new Error(`no entry "${what}" in the catalogue`);
  const { plant, sound, powered } = world;
  const papers = asTold({ site: sound.site, sheet: sound.design.sheet }, world.faults);
  const never = cannotBePutRight(entry, papers);
  if (never !== null) return { id: 'never-put-right', why: never };
  const left = world.faults.filter(({ fault }) => fault !== what);
  if (COMPONENTS[entry.component] === 'in hand') {
    pass(world, REPAIR);
    reequip(world, left);
    if (entry.component === 'detector') {
      world.plant = { ...world.plant, detectorLead: 'whole' };
      world.knowledge = { ...world.knowledge, detectorFailed: false };
    }
    return null;
  }
  if (COMPONENTS[entry.component] === 'behind cover' && plant.cover === 'closed')
    return { id: 'cover-closed' };
  if (!isIsolated(plant) || powered) return { id: 'not-isolated' };
  // Whatever was still on its way comes to rest first.
  pass(world, REPAIR);
  reassemble(world, left);
  return null;
}
