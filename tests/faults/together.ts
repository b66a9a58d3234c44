/*
 * Several faults at once, drawn: whatever they are, the bench settles and reads. Every test is done, also those before
 * which somebody would have stopped, then what people do to a unit in any order.
 */
import { drawer } from '../../src/bench/draw.ts';
import { perform } from '../../src/bench/perform.ts';
import type { FaultChoice } from '../../src/faults/catalogue.ts';
import { CATALOGUE, whyImpossible } from '../../src/faults/catalogue.ts';
import type { CatalogueEntry } from '../../src/faults/fault.ts';
import { applicableActions, benchOf, papersOf } from '../../src/scenario/scenario.ts';
import { workingThrough } from '../../src/scenario/verify.ts';
import { MOVES, WAITS } from '../safety/watch.ts';
import { INSTALLATION_NAMES, scenarioOn, settingOn, settingsOf } from './installations.ts';

/** Moves after the tests. */
const LENGTH = 20;

/**
 * What went wrong with so many faults at once, number `index` of a seed; null if nothing did. Every second draw takes
 * its faults from one component where that has enough.
 */
export function runTogether(size: number, seed: number, index: number): string | null {
  const draw = drawer(seed);
  const one = <T>(of: readonly T[], name: string): T =>
    of[Math.floor(of.length * draw(`${size} together ${index} ${name}`))] as T;
  const on = one(INSTALLATION_NAMES, 'installation');
  const setting = settingOn(on);
  const possible = CATALOGUE.flatMap((entry) => {
    const [, values] = one(settingsOf(entry), entry.id);
    return entry.kind === 'fault' && whyImpossible(entry, setting, values) === null
      ? [{ entry, values }]
      : [];
  });
  const faults: FaultChoice[] = [];
  let left: readonly { readonly entry: CatalogueEntry; readonly values: FaultChoice['values'] }[] = possible;
  while (faults.length < size && left.length > 0) {
    const { entry, values } = one(left, `fault ${faults.length}`);
    faults.push({ fault: entry.id, values });
    const others = left.filter((other) => other.entry !== entry);
    const beside = others.filter((other) => other.entry.component === entry.component);
    left = index % 2 === 0 && beside.length > 0 ? beside : others;
  }
  const what = `${faults.map(({ fault, values }) => `${fault} ${JSON.stringify(values)}`).join(' + ')} on ${on}`;
  let doing = 'the tests';
  try {
    const scenario = scenarioOn(on, faults);
    const world = benchOf(scenario);
    const work = workingThrough(world, applicableActions(scenario), papersOf(scenario), true);
    for (let next = work.next(); next.done !== true; next = work.next())
      for (const reading of next.value?.run.outcomes.flatMap(({ readings }) => readings) ?? [])
        if (reading.value !== null && !Number.isFinite(reading.value))
          return `${what}: ${next.value?.action.id} read ${reading.value}`;
    for (let i = 0; i < LENGTH; i++) {
      const move = one(MOVES, `move ${i}`);
      doing = `move ${i}, ${JSON.stringify(move)}`;
      perform(world, move);
      perform(world, one(WAITS, `wait ${i}`));
    }
    return null;
  } catch (error) {
    return `${what}, in ${doing}: ${String(error)}`;
  }
}
