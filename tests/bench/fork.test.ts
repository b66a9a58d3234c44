/**
 * A fork of a bench goes on exactly as the bench would have, and as if it were alone: at every operation of whole
 * verifications, and with something pending on the clock, whatever the other of the two does meanwhile.
 */
import { describe, expect, test } from 'vitest';
import { fork } from '../../src/bench/fork.ts';
import { type Operation, type OperationInput, operation } from '../../src/bench/operation.ts';
import { type Outcome, perform } from '../../src/bench/perform.ts';
import type { World } from '../../src/bench/world.ts';
import { benchOf, type Scenario } from '../../src/scenario/scenario.ts';
import { verify } from '../../src/scenario/verify.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';
import { benchWith, CHARGE, doing, PLUG_IN } from './build.ts';

/** What tells two benches apart that stand at the same point of the same work. */
const standing = ({ plant, knowledge, happenings, indicator, trips, timeline, counts, operations }: World) =>
  JSON.stringify([plant, knowledge, happenings, indicator, trips, timeline, counts, operations]);

const text = (outcome: Outcome): string => JSON.stringify(outcome);

/** Every operation of the whole verification, as a faultless trainee does them. */
const operationsOf = (scenario: Scenario): readonly Operation[] =>
  verify(scenario, { everything: true }).actions.flatMap(({ run }) =>
    run.samples.map((sample) => sample.operation),
  );

/** Whatever somebody else might do at any moment: switched, loaded, broken, waited for, read. */
const SOMETHING_ELSE: readonly Operation[] = (
  [
    { op: 'energise' },
    { op: 'vehicle', plugged: true, state: 'C', load: 40 },
    { op: 'wait', seconds: 7 },
    { op: 'supply', voltage: 200, pen: 'open', missing: 'N' },
    { op: 'measure', quantity: 'insulation', between: ['outlet.L1', 'outlet.CP'], volts: 500 },
    { op: 'press', button: 'stop' },
    { op: 'isolate', lock: false },
    { op: 'prove-dead', at: 'origin' },
    { op: 'wait', seconds: 3600 },
  ] as const satisfies readonly OperationInput[]
).map(operation);

/** Two of them, each in its turn. */
const disturb = (world: World, turn: number): void => {
  for (const i of [turn, turn + 1]) perform(world, SOMETHING_ELSE[i % SOMETHING_ELSE.length] as Operation);
};

/** So many operations a fork goes on for that was left standing until all was over. */
const SOME = 6;

// One phase, without a fault and with two; TT, with two; three phases.
describe.each(['harbour-mews', 'orchard-lane', 'saltings-farm', 'foundry-yard'])(
  'at every operation of a whole verification: %s',
  (id) => {
    const { scenario } = scenarioNamed(id);
    const operations = operationsOf(scenario);
    const alone = benchOf(scenario);
    const meant = operations.map((one) => ({ outcome: text(perform(alone, one)), at: standing(alone) }));
    const next = (world: World, i: number) => ({
      outcome: text(perform(world, operations[i] as Operation)),
      at: standing(world),
    });

    test('the bench goes on as if there were no fork, whatever the fork does', () => {
      expect(operations.length).toBeGreaterThan(200);
      const world = benchOf(scenario);
      const done = operations.map((_, i) => {
        const other = fork(world);
        disturb(other, i);
        return next(world, i);
      });
      expect(done).toEqual(meant);
    });

    test('the fork goes on as the bench would have, fork of a fork of a fork, whatever those do that it came from', () => {
      let world = benchOf(scenario);
      const done = operations.map((_, i) => {
        const other = world;
        world = fork(other);
        disturb(other, i);
        return next(world, i);
      });
      expect(done).toEqual(meant);
    });

    test('a fork left standing until the bench is at its end goes on from where it stood', () => {
      const world = benchOf(scenario);
      const forks = operations.map((one) => {
        const left = fork(world);
        perform(world, one);
        return left;
      });
      for (const [i, left] of forks.entries())
        for (let k = i; k < Math.min(i + SOME, operations.length); k++)
          expect(next(left, k)).toEqual(meant[k]);
    });
  },
);

describe('what is pending on the clock is pending in both', () => {
  const contactor = (world: World) => world.plant.contactor;
  const wait = (seconds: number): OperationInput => ({ op: 'wait', seconds });
  const heard = (outcomes: readonly Outcome[]) => outcomes.flatMap(({ events }) => events);

  test('a start delay', () => {
    const world = benchWith({ sheet: { startDelay: 60 } });
    doing(world, ...PLUG_IN, { op: 'vehicle', state: 'C' }, wait(0.1));
    const [other, third] = [fork(world), fork(world)];
    doing(other, { op: 'vehicle', plugged: false });
    const [here, there] = [doing(world, wait(70)), doing(third, wait(70))];
    expect(heard(here).map(({ what }) => what)).toEqual(['contactor closed']);
    expect(there).toEqual(here);
    doing(other, wait(70));
    expect([contactor(world), contactor(other), contactor(third)]).toEqual(['closed', 'open', 'closed']);
  });

  test('a contactor on its way, which the other calls back', () => {
    const world = benchWith({});
    doing(world, ...CHARGE, { op: 'vehicle', state: 'B' }, wait(0.001));
    const stillClosed = contactor(world);
    const other = fork(world);
    doing(other, wait(5));
    expect([stillClosed, contactor(world), contactor(other)]).toEqual(['closed', 'closed', 'open']);
    doing(world, wait(5));
    expect([contactor(world), world.timeline.now]).toEqual([contactor(other), other.timeline.now]);
  });

  test('a trip that is filling: half of its time before the fork, half after', () => {
    // Twice the rating of its breaker: it opens after a minute or so, and not at once.
    const load = [...CHARGE, { op: 'vehicle', load: 32 }] as const;
    const world = benchWith({
      site: { circuit: { breaker: { type: 'B', rating: 16, breakingCapacity: 6000, poles: 2 } } },
    });
    doing(world, ...load);
    const whole = heard(doing(fork(world), wait(7200)));
    expect(whole.map(({ what }) => what)).toContain('circuit breaker tripped');
    const due = whole.find(({ what }) => what === 'circuit breaker tripped')?.at ?? 0;
    doing(world, wait((due - world.timeline.now / 1e6) / 2));
    const [eased, left] = [fork(world), fork(world)];
    doing(eased, { op: 'vehicle', load: 0 });
    expect(heard(doing(left, wait(7200)))).toEqual(whole);
    expect(heard(doing(eased, wait(7200)))).toEqual([]);
    expect(heard(doing(world, wait(7200)))).toEqual(whole);
  });

  test('the edge of the charging hours', () => {
    // A Tuesday: from 16:00 on they forbid it.
    const world = benchWith({ sheet: { schedule: 'default-hours' } });
    doing(world, ...CHARGE, wait(4 * 3600 - 60));
    const other = fork(world);
    expect(contactor(world)).toBe('closed');
    doing(other, wait(120));
    expect([contactor(world), contactor(other)]).toEqual(['closed', 'open']);
    doing(world, wait(120));
    expect(contactor(world)).toBe('open');
  });
});

test('whoever looks on at a bench is told nothing of its fork', () => {
  const world = benchWith({});
  let told = 0;
  world.onlooker = {
    moved: () => {
      told += 1;
    },
    met: () => {},
  };
  doing(fork(world), ...CHARGE);
  expect(told).toBe(0);
  doing(world, ...CHARGE);
  expect(told).toBeGreaterThan(0);
});

test.each(['harbour-mews', 'station-yard'])(
  'whoever asks for the bench of a scenario finds it untouched, whatever was done on the one before: %s',
  (id) => {
    const { scenario } = scenarioNamed(id);
    const before = benchOf(scenario);
    const asFound = standing(before);
    disturb(before, 0);
    disturb(before, 2);
    expect(standing(before)).not.toBe(asFound);
    expect(standing(benchOf(scenario))).toBe(asFound);
  },
);
