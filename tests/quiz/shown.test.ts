/**
 * The bench of a question: a file that the ordinary checks accept, its handover carried out among them, and a bench on
 * which the instruments show what the question says. What is read is held against the question's own figures, each within
 * the uncertainty of its reading (contract) and, where a design is drawn, the standard's range written out here.
 */
import { describe, expect, test } from 'vitest';
import type { OperationInput } from '../../src/bench/operation.ts';
import { operation } from '../../src/bench/operation.ts';
import { perform } from '../../src/bench/perform.ts';
import type { Reading } from '../../src/bench/reading.ts';
import type { World } from '../../src/bench/world.ts';
import { question } from '../../src/quiz/draw.ts';
import { KINDS } from '../../src/quiz/kinds.ts';
import type { Question } from '../../src/quiz/question.ts';
import { SHOWS_NOTHING, shownFile, shownState } from '../../src/quiz/shown.ts';
import { readScenario } from '../../src/scenario/readScenario.ts';
import { beginningOf, scenarioIn } from '../../src/scenario/scenario.ts';

const WORDS = { title: 'On the bench', brief: 'a question', by: 'a colleague' };

const asked = (kind: string, seeds: number): readonly Question[] =>
  (KINDS.find(({ id }) => id === kind)?.topics ?? []).flatMap((topic) =>
    Array.from({ length: seeds }, (_, i) => question(kind, topic, 500 + i)).filter((one) => one !== null),
  );

const fileOf = (one: Question): object | null => {
  const shown = shownState(one);
  return shown === null ? null : shownFile(one, shown, WORDS);
};

test('what shows nothing is named, and all other kinds stand on a bench', () => {
  for (const { id } of KINDS) {
    const shown = asked(id, 30).filter((one) => shownState(one) !== null);
    expect(shown.length > 0, id).toBe(!SHOWS_NOTHING.includes(id));
  }
});

const SHOWN = KINDS.map(({ id }) => id).filter((id) => !SHOWS_NOTHING.includes(id));

test.each(SHOWN)('%s: the file is in order, and its handover could be signed', (kind) => {
  const topics = KINDS.find(({ id }) => id === kind)?.topics.length ?? 0;
  for (const one of asked(kind, topics > 1 ? 1 : 30)
    .filter((each) => shownState(each) !== null)
    .slice(0, 12)) {
    const file = fileOf(one);
    const read = readScenario(file);
    expect(read.ok ? [] : read.problems, one.id).toEqual([]);
  }
});

const pilot: OperationInput = { op: 'measure', quantity: 'pilot' };
const between = (quantity: 'continuity' | 'loop' | 'voltage', a: string, b: string): OperationInput => ({
  op: 'measure',
  quantity,
  between: [a, b],
});

const did = (world: World, ...steps: readonly OperationInput[]): Reading => {
  const [reading] = steps.flatMap((step) => perform(world, operation(step)).readings).slice(-1);
  if (reading === undefined) throw new Error('nothing was read');
  return reading;
};

const figure = ({ values }: Question, name: string): number => Number(values[name]);
const answer = (one: Question): number => (one.way === 'figure' ? one.answer : Number.NaN);

/** Measures `count` benches of a kind, where they can be had. */
function onBenches(kind: string, look: (world: World, one: Question) => void): void {
  let seen = 0;
  for (const one of asked(kind, 30)) {
    if (seen === 8) break;
    const file = fileOf(one);
    if (file === null) continue;
    look(beginningOf(scenarioIn(file)).world, one);
    seen += 1;
  }
  expect(seen, kind).toBeGreaterThan(3);
}

/** Within the reading's own uncertainty, and what contacts and leads may add. */
function expectRead(reading: Reading, value: number, one: Question, beside = 0): void {
  expect(
    Math.abs((reading.value ?? Number.NaN) - value),
    `${one.id}: ${reading.value} for ${value}`,
  ).toBeLessThanOrEqual((reading.uncertainty ?? 0) + beside);
}

/** IEC 61851-1:2017 Table A.10, at the vehicle's measuring point, V. */
const PEAKS: Readonly<Record<string, readonly [number, number]>> = {
  A: [11.4, 12.6],
  B: [8.37, 9.59],
  C: [5.47, 6.53],
  D: [2.59, 3.28],
};

describe('a bench shows what its question says', () => {
  test.each(['state-of-level', 'level-of-state'])('%s: the pilot of its state', (kind) => {
    onBenches(kind, (world, one) => {
      const [least = 0, greatest = 0] = PEAKS[String(one.values.state)] ?? [];
      const high = did(world, pilot).value ?? 0;
      expect(high, one.id).toBeGreaterThanOrEqual(least - 0.05);
      expect(high, one.id).toBeLessThanOrEqual(greatest + 0.05);
    });
  });

  test('low-half: the negative peak is that of its diode', () => {
    onBenches('low-half', (world, one) => {
      const right = one.way === 'choice' ? one.choices.find(({ id }) => id === one.answer) : undefined;
      const { low } = did(world, pilot) as Reading & { low: number };
      // A unit that has latched on a shorted diode holds its pilot steady.
      if (one.values.diode === 'sound' || one.values.state === 'B')
        expect(Math.abs(low - Number(right?.values?.volts)), one.id).toBeLessThanOrEqual(0.6);
    });
  });

  test.each([
    ['duty-of-current', (one: Question) => answer(one)],
    ['high-time', (one: Question) => 100 * answer(one)],
    ['current-of-duty', (one: Question) => figure(one, 'percent')],
    ['current-of-times', (one: Question) => (100 * figure(one, 'high')) / figure(one, 'period')],
    ['duty-band', (one: Question) => figure(one, 'percent')],
  ] as const)('%s: the duty', (kind, percentOf) => {
    onBenches(kind, (world, one) => {
      const { duty } = did(world, pilot) as Reading & { duty: number };
      // The instrument's 0.2 point, and as much again that a sound unit may be off (IEC 61851-1:2017 Table A.2).
      expect(Math.abs(100 * duty - percentOf(one)), `${one.id}: ${duty}`).toBeLessThanOrEqual(0.75);
    });
  });

  test('least-of-limits: the amperes that are offered', () => {
    onBenches('least-of-limits', (world, one) => {
      const { amps } = did(world, pilot) as Reading & { amps: number | null };
      expect(Math.abs((amps ?? 0) - answer(one)), one.id).toBeLessThanOrEqual(0.6);
    });
  });

  test.each(['coding-of-ohms', 'coding-with-contact', 'uncoded-plug'])(
    '%s: what the unit makes of it',
    (kind) => {
      onBenches(kind, (world, one) => {
        const right = one.way === 'choice' ? one.answer : '';
        const { amps } = did(world, pilot) as Reading & { amps: number | null };
        const isSupplied = /^\d/.test(right);
        // Of a size above the unit's 32 A the unit offers its own.
        if (isSupplied)
          expect(
            Math.abs((amps ?? 0) - Math.min(32, Number.parseInt(right, 10))),
            one.id,
          ).toBeLessThanOrEqual(0.6);
        else if (right !== 'gap') expect(amps ?? 0, one.id).toBe(0);
      });
    },
  );

  test('protective-ohms: PE end to end', () => {
    onBenches('protective-ohms', (world, one) => {
      expectRead(
        did(world, { op: 'null-leads' }, between('continuity', 'met', 'supply.PE')),
        answer(one),
        one,
        0.06,
      );
    });
  });

  test.each(['line-and-protective', 'sum-judged'])('%s: R1 + R2', (kind) => {
    onBenches(kind, (world, one) => {
      const read = did(
        world,
        { op: 'link', between: ['origin.L1', 'origin.PE'] },
        { op: 'null-leads' },
        between('continuity', 'supply.L1', 'supply.PE'),
      );
      expectRead(read, kind === 'sum-judged' ? figure(one, 'read') : answer(one), one, 0.06);
    });
  });

  test.each(['loop-of-parts', 'loop-judged', 'loop-beside-its-sum'])(
    '%s: the loop at the connector',
    (kind) => {
      onBenches(kind, (world, one) => {
        const read = did(world, between('loop', 'outlet.L1', 'outlet.PE'));
        // Contacts and low-current residual coils add up to 0.15 Ω (contract).
        const value = kind === 'loop-of-parts' ? answer(one) : figure(one, 'read');
        expectRead(read, value + 0.05, one, 0.11);
      });
    },
  );

  test('prospective-current, prospective-three-phases and breaking-capacity: the loop at the origin', () => {
    for (const kind of ['prospective-current', 'prospective-three-phases', 'breaking-capacity'])
      onBenches(kind, (world, one) => {
        const ohms = kind === 'prospective-three-phases' ? 230 / figure(one, 'single') : figure(one, 'ohms');
        expectRead(did(world, between('loop', 'incoming.L1', 'incoming.N')), ohms, one, 0.1);
      });
  });

  test('supply-voltage: the volts at the board', () => {
    onBenches('supply-voltage', (world, one) => {
      // The house's own loads take a few volts of it.
      expectRead(
        did(world, between('voltage', 'incoming.L1', 'incoming.N')),
        figure(one, 'volts') - 2,
        one,
        3,
      );
    });
  });

  test('which-pole: the three pairs', () => {
    onBenches('which-pole', (world, one) => {
      const pairs = [
        ['outlet.L1', 'outlet.N', 'lineNeutral'],
        ['outlet.L1', 'outlet.PE', 'lineEarth'],
        ['outlet.N', 'outlet.PE', 'neutralEarth'],
      ] as const;
      for (const [a, b, name] of pairs) {
        const { value } = did(world, between('voltage', a, b));
        const isLive = figure(one, name) > 0;
        expect((value ?? 0) > 50, `${one.id} ${name}: ${value}`).toBe(isLive);
      }
    });
  });

  test('low-line-neutral: both readings on their side of the least', () => {
    onBenches('low-line-neutral', (world, one) => {
      const volts = 250;
      const ohms = (a: string[], b: string[]) =>
        did(world, { op: 'measure', quantity: 'insulation', between: [a, b], volts }).value ?? Infinity;
      const least = 1e6;
      expect(ohms(['supply.L1', 'supply.N'], ['supply.PE']) < least, one.id).toBe(figure(one, 'toEarth') < 1);
      expect(ohms(['supply.L1'], ['supply.N']) < least, one.id).toBe(figure(one, 'lineNeutral') < 1);
    });
  });

  test('whom a cause of the catalogue is about, it is in the unit', () => {
    for (const kind of ['which-cause', 'ruled-out', 'reads-the-same', 'best-next-test', 'whom-to-tell'])
      for (const one of asked(kind, 1)) {
        const named = [one.way === 'choice' ? one.answer : '', one.values.cause, one.values.a];
        const [cause, ...more] = shownState(one)?.causes ?? [];
        expect(named, one.id).toContain(cause?.fault);
        expect(more).toEqual([]);
      }
  });
});
