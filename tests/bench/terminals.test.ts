/** The terminals that leads can be put on, by site. */
import { describe, expect, test } from 'vitest';
import { isAt, labelOf, terminalsIn, terminalsOf } from '../../src/bench/terminals.ts';

describe('every terminal of a site, in the order of the installation', () => {
  test('one phase, TN', () => {
    expect(terminalsOf({ phases: 1, earthing: 'TN-S' })).toEqual([
      ...['earth', 'met', 'earthing'],
      ...['incoming.L1', 'incoming.N'],
      ...['origin.L1', 'origin.N', 'origin.PE'],
      ...['supply.L1', 'supply.N', 'supply.PE'],
      'case',
      ...['outlet.L1', 'outlet.N', 'outlet.PE', 'outlet.CP', 'outlet.PP'],
    ]);
  });

  // A TT site has no earth of the distributor's.
  test('three phases, TT', () => {
    const terminals = terminalsOf({ phases: 3, earthing: 'TT' });
    expect(terminals).not.toContain('earthing');
    expect(terminals).toHaveLength(2 + 4 + 5 + 5 + 1 + 7);
    for (const line of ['L1', 'L2', 'L3'])
      for (const place of ['incoming', 'origin', 'supply', 'outlet'])
        expect(terminals).toContain(`${place}.${line}`);
    expect(new Set(terminals).size).toBe(terminals.length);
  });
});

test('several joined are one probe, and are said together', () => {
  expect(terminalsIn('met')).toEqual(['met']);
  expect(terminalsIn(['outlet.L1', 'outlet.N'])).toEqual(['outlet.L1', 'outlet.N']);
  expect([labelOf('met'), labelOf(['outlet.L1', 'outlet.N'])]).toEqual(['met', 'outlet.L1 + outlet.N']);
  expect([isAt('supply.L1', 'supply'), isAt('outlet.L1', 'supply')]).toEqual([true, false]);
});
