/** A wrong name is answered with the one that was meant, and never with another thing of the trade. */
import { describe, expect, test } from 'vitest';
import { CATALOGUE } from '../../src/faults/catalogue.ts';
import { BREAKER_TYPES } from '../../src/laws/overcurrent.ts';
import { DEVICE_TYPES } from '../../src/laws/residualLimits.ts';
import { nearest } from '../../src/scenario/nearest.ts';
import { EARTHINGS } from '../../src/site/site.ts';
import { ACTIONS } from '../../src/verification/actions.ts';

const actions = ACTIONS.map(({ id }) => id);
const faults = CATALOGUE.map(({ id }) => id);
const terminals = ['met', 'earth', 'earthing', 'supply.L1', 'supply.L2', 'supply.N', 'supply.PE'];
const removables = [
  'disconnect',
  'reconnect',
  'energise',
  'isolate',
  'plugged',
  'setCurrent',
  'ratedCurrent',
];

describe('the same name but for case, hyphens and spaces, or a slip of spelling in a long word', () => {
  test.each([
    ['TNCS', EARTHINGS, 'TN-C-S'],
    ['tn-c-s', EARTHINGS, 'TN-C-S'],
    ['TN_S', EARTHINGS, 'TN-S'],
    ['tt', EARTHINGS, 'TT'],
    ['b', BREAKER_TYPES, 'B'],
    ['Ze', actions, 'ze'],
    ['PE circuit', actions, 'pe-circuit'],
    ['pe-circut', actions, 'pe-circuit'],
    ['pe_jiont', faults, 'pe-joint'],
    ['supply_l1', terminals, 'supply.L1'],
    ['suply.L1', terminals, 'supply.L1'],
    ['earthin', terminals, 'earthing'],
    ['enregise', removables, 'energise'],
    ['disconect', removables, 'disconnect'],
    ['rated-curent', removables, 'ratedCurrent'],
  ])('%s', (name, valid, meant) => {
    expect(nearest(name, valid)).toBe(`did you mean "${meant}"?`);
  });
});

describe('another thing is not offered: all are listed', () => {
  test.each([
    ['TNC', EARTHINGS],
    ['TN-C', EARTHINGS],
    ['TN', EARTHINGS],
    ['IT', EARTHINGS],
    ['TTS', EARTHINGS],
    ['E', BREAKER_TYPES],
    ['AB', DEVICE_TYPES],
    ['EV', DEVICE_TYPES],
    ['zs', actions],
    ['state-e', actions],
    ['state-bb', actions],
    ['pe-open-circuit', actions],
    ['supply.L3', terminals],
    ['supply.PEN', terminals],
    ['supply.PP', terminals],
    ['unplugged', removables],
    ['preset-current', removables],
    ['', EARTHINGS],
    ['—', EARTHINGS],
    ['x'.repeat(1_000_000), actions],
  ])('%.20s', (name, valid) => {
    expect(nearest(name, valid)).toBe(`one of: ${valid.join(', ')}`);
  });

  test('nor one of two that are as near', () => {
    expect(nearest('unit-resset', ['unit-reset', 'unit-reseat'])).toBe('did you mean "unit-reset"?');
    expect(nearest('unit-reseet', ['unit-reset', 'unit-reseat'])).toBe('one of: unit-reset, unit-reseat');
  });
});

test('where nothing is valid nothing is said', () => {
  expect(nearest('anything', [])).toBe('');
});
