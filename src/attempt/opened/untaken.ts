/**
 * What else could have been measured on the bench as it stood, with the leads in hand: other pairs of terminals and
 * the pilot while it is powered, paths while it is dead. Reads only; nothing on the bench changes.
 */
import { continuity } from '../../bench/instruments/directTester.ts';
import { pilot } from '../../bench/instruments/pilotMeter.ts';
import { voltage } from '../../bench/instruments/voltageTools.ts';
import type { Measurement } from '../../bench/operation.ts';
import { isIsolated } from '../../bench/plant.ts';
import { leadsOn } from '../../bench/port.ts';
import type { Reading, Truth } from '../../bench/reading.ts';
import { pairOf, shown } from '../../bench/reading.ts';
import type { AnyFields, Quantity } from '../../bench/readings/quantity.ts';
import type { Terminal } from '../../bench/terminals.ts';
import type { World } from '../../bench/world.ts';
import { pairsOf } from '../../site/part.ts';
import { livesOf } from '../../site/site.ts';

export interface Untaken {
  /** The same for the same leads, whichever way round. */
  readonly key: string;
  readonly measurement: Measurement;
  readonly reading: Reading;
}

/** What a reading is of: quantity and its pair of terminals. */
export const keyOfReading = (one: { readonly quantity: Quantity } & AnyFields): string =>
  `${one.quantity} ${[...(pairOf(one) ?? [])].sort().join(' – ')}`;

export function untakenAt(world: World, taken: ReadonlySet<string>): readonly Untaken[] {
  const list = isIsolated(world.plant) ? dead(world) : powered(world);
  return list.flatMap(([measurement, truth]) => {
    const key = keyOfReading({ quantity: truth.quantity, ...truth.details });
    if (taken.has(key)) return [];
    return [{ key, measurement, reading: shown(truth, `untaken ${key}`, 0, world.draw) }];
  });
}

type Option = readonly [Measurement, Truth];

function powered(world: World): readonly Option[] {
  const { plant, installation } = world;
  const pairs = pairsOf([...livesOf(installation.site), 'PE'].map((x) => `outlet.${x}`));
  const { frequency } = installation.design.pilot;
  return [
    ...pairs.map(
      ([a, b]): Option => [
        { op: 'measure', quantity: 'voltage', between: [a, b], tool: 'two-pole' },
        voltage(leadsOn(world, a, b), 'two-pole', plant.duty, { between: [a, b] }),
      ],
    ),
    [
      { op: 'measure', quantity: 'pilot' },
      pilot(leadsOn(world, 'outlet.CP', 'outlet.PE'), { duty: plant.duty, frequency }),
    ],
  ];
}

function dead(world: World): readonly Option[] {
  const { plant, installation, knowledge } = world;
  // Nobody is to be told that a continuity tester would have helped where nothing was proved dead.
  const isProved = Object.values(knowledge.provedDead).some(({ isWhole }) => isWhole);
  if (plant.testerFuse === 'opened' || !isProved) return [];
  const behindCover = [...livesOf(installation.site), 'PE'].map((x): [Terminal, Terminal] => [
    `supply.${x}`,
    `outlet.${x}`,
  ]);
  const pairs: readonly (readonly [Terminal, Terminal])[] = [
    ['met', 'outlet.PE'],
    ['met', 'case'],
    ...(plant.cover === 'open' ? behindCover : []),
  ];
  return pairs.map(
    ([a, b]): Option => [
      { op: 'measure', quantity: 'continuity', between: [a, b] },
      continuity(leadsOn(world, a, b), plant.leadsNulled, installation.tester, { between: [a, b] }),
    ],
  );
}
