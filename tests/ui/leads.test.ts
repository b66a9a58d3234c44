// Leads put on by tap: one after the other, joined, taken off again. Drawing and lists share what comes out.

import { describe, expect, test } from 'vitest';
import { operation } from '../../src/bench/operation.ts';
import type { Happened } from '../../src/ui/flow/bench.ts';
import type { LeadEnd } from '../../src/ui/flow/leads.ts';
import { leadOn, outOfReach, tapped, touchedSince } from '../../src/ui/flow/leads.ts';
import { positionAtStart } from '../../src/ui/flow/position.ts';
import type { UnitSheet } from '../../src/unit/design.ts';

/** Taps in order; `first`, `joined` or `second` before a colon chooses what goes on. */
function after(...taps: readonly string[]) {
  let ends: { first: readonly string[]; second: string } = { first: [''], second: '' };
  let next: LeadEnd = 'first';
  for (const tap of taps) {
    const [chosen, terminal] = tap.includes(':') ? tap.split(':') : [next, tap];
    const placed = tapped(ends, chosen as LeadEnd, terminal ?? '');
    ends = { first: placed.first, second: placed.second };
    next = placed.next;
  }
  return { ...ends, next };
}

describe('taps, and where the leads are then', () => {
  test.each([
    ['first, then second', ['L1', 'PE'], ['L1'], 'PE', 'first'],
    ['the third tap moves the first lead on', ['L1', 'PE', 'N'], ['N'], 'PE', 'second'],
    ['joined stays chosen', ['L1', 'joined:N'], ['L1', 'N'], '', 'joined'],
    ['L and N joined, to PE', ['L1', 'joined:N', 'second:PE'], ['L1', 'N'], 'PE', 'first'],
    ['four joined at most', ['L1', 'joined:L2', 'L3', 'N', 'PE'], ['L1', 'L2', 'L3', 'N'], '', 'joined'],
    ['joined to nothing is the first', ['joined:N'], ['N'], '', 'joined'],
    ['a second tap takes it off', ['L1', 'PE', 'PE'], ['L1'], '', 'second'],
    ['the first taken off leaves the second', ['L1', 'PE', 'L1'], [''], 'PE', 'first'],
    ['what was joined moves up', ['L1', 'joined:N', 'L1'], ['N'], '', 'joined'],
  ] as const)('%s', (_, taps, first, second, next) =>
    expect(after(...taps)).toEqual({ first: [...first], second, next }),
  );
});

test('which lead is on a terminal', () => {
  const ends = { first: ['L1', 'N'], second: 'PE' };
  expect(['L1', 'N', 'PE', 'CP'].map((t) => leadOn(ends, t))).toEqual(['first', 'joined', 'second', null]);
});

test('the supply terminals are behind the cover while it is closed', () => {
  const closed = positionAtStart({ cable: { coding: 32 } } as UnitSheet);
  expect(outOfReach('supply.L1', closed)).toBe('behind the cover');
  expect(outOfReach('supply.L1', { ...closed, cover: 'open' })).toBeNull();
  expect(outOfReach('outlet.L1', closed)).toBeNull();
});

test('terminals that leads were on in this test, the last first, each once', () => {
  const volts = (a: string, b: string) => operation({ op: 'measure', quantity: 'voltage', between: [a, b] });
  const acts = [volts('outlet.L1', 'outlet.N'), volts('met', 'earth'), volts('case', 'earth')];
  const happened = acts.map((act, entry) => ({ entry, operation: act })) as unknown as Happened[];
  expect(touchedSince(happened, 0)).toEqual(['earth', 'case', 'met']);
  expect(touchedSince(happened, -1)).toEqual(['earth', 'case', 'met', 'outlet.N', 'outlet.L1']);
  expect(touchedSince(happened, 2)).toEqual([]);
});
