/** What the bench or an instrument refuses, told as it ends "not done: …" or "no reading: …". */
import { expect, test } from 'vitest';
import type { OperationInput } from '../../src/bench/operation.ts';
import { CATALOGUE, cannotBePutRight } from '../../src/faults/catalogue.ts';
import { refusalText } from '../../src/words/refusals.ts';
import { benchWith, CHARGE, doing, MAKE_DEAD, THREE_PHASE, type Wanted } from '../bench/build.ts';
import { INSTALLATION_NAMES, settingOn } from '../faults/installations.ts';

const LOOP: OperationInput = { op: 'measure', quantity: 'loop', between: ['outlet.L1', 'outlet.PE'] };
const RISING: OperationInput = {
  op: 'measure',
  quantity: 'residual',
  waveform: 'sinusoidal',
  mode: 'ramp',
};
const ORDER: OperationInput = { op: 'measure', quantity: 'phase-sequence', at: 'outlet' };
const ON_SUPPLY: OperationInput = { op: 'measure', quantity: 'continuity', between: ['supply.L1', 'met'] };
const ON_LIVE: OperationInput = { op: 'measure', quantity: 'continuity', between: ['incoming.L1', 'met'] };

const ROWS: readonly { told: string; script: readonly OperationInput[]; on?: Wanted }[] = [
  { told: 'cover closed', script: [ON_SUPPLY] },
  {
    told: 'the circuit is not isolated',
    script: [{ op: 'open-cover' }, { op: 'put-right', what: 'pe-joint' }],
  },
  { told: 'the supply is off', script: [{ op: 'isolate' }, { op: 'reset', what: 'supply' }] },
  {
    told: 'a link goes from a line to PE or N at the origin',
    script: [{ op: 'link', between: ['supply.L1', 'supply.PE'] }],
  },
  { told: 'this site has no electrode of its own', script: [{ op: 'measure', quantity: 'electrode' }] },
  { told: 'this unit has no arrester', script: [...MAKE_DEAD, { op: 'disconnect', what: 'arrester' }] },
  { told: 'the tester’s fuse is open', script: [ON_LIVE, ON_LIVE] },
  { told: 'no voltage between the leads', script: [LOOP] },
  { told: 'outlet not live', script: [RISING] },
  { told: 'origin not live', script: [{ op: 'isolate' }, { ...RISING, at: 'origin' } as OperationInput] },
  {
    told: 'no return for the test current',
    script: [...CHARGE, RISING],
    on: { faults: [{ fault: 'pe-not-landed', values: {} }] },
  },
  { told: 'this site has one line', script: [ORDER] },
  { told: 'a line is missing', script: [ORDER], on: { site: THREE_PHASE } },
  { told: 'it belongs to the distributor', script: [...MAKE_DEAD, { op: 'put-right', what: 'pen-open' }] },
];
test.each(ROWS)('$told', ({ told, script, on = {} }) => {
  const last = doing(benchWith(on), ...script).at(-1);
  const [refused] = [last?.refused, ...(last?.readings ?? []).map(({ reason }) => reason)].flatMap((one) =>
    one == null ? [] : [refusalText(one)],
  );
  expect(refused).toBe(told);
});

test('a tester on a live part says in whole volts what it met', () => {
  const [outcome] = doing(benchWith(), ON_LIVE);
  const { reason } = outcome?.readings[0] ?? {};
  const [, volts] =
    /^voltage on the leads: (\d+) V$/.exec(reason === undefined ? '' : refusalText(reason)) ?? [];
  // The site's voltage, line to neutral, which is earthed at the source.
  expect(Number(volts)).toBeGreaterThan(230);
  expect(Number(volts)).toBeLessThan(240);
});

test('whatever cannot be put right says why, as half a sentence', () => {
  const told = INSTALLATION_NAMES.flatMap((name) =>
    CATALOGUE.flatMap((entry) => {
      const why = cannotBePutRight(entry, settingOn(name));
      return why === null ? [] : [refusalText({ id: 'never-put-right', why })];
    }),
  );
  expect(told.length).toBeGreaterThan(50);
  for (const text of told) expect(text).toMatch(/^[a-z].*[^.]$/);
});
