/** What an operation may say, what is filled in where it says nothing, and what is refused with where it is wrong. */
import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { type OperationInput, operation } from '../../src/bench/operation.ts';
import { operationSchema } from '../../src/bench/operationSchema.ts';
import { MEASUREMENTS, OPERATIONS } from '../../src/bench/usual.ts';

const parsed = (input: unknown) => v.safeParse(operationSchema, input);
const between = ['origin.L1', 'origin.PE'];
const measure = (quantity: string, more: object = {}) => ({ op: 'measure', quantity, ...more });
const RESIDUAL = { waveform: 'sinusoidal', mode: 'ramp' };

/** What is left out, and what then stands. */
const DEFAULTS: readonly (readonly [input: object, filled: object])[] = [
  [{ op: 'isolate' }, { at: 'origin', poles: 'all', lock: true }],
  [{ op: 'energise' }, {}],
  [{ op: 'open-cover' }, {}],
  [{ op: 'close-cover' }, {}],
  [{ op: 'check-instruments' }, {}],
  [{ op: 'discharge' }, {}],
  [{ op: 'guard' }, {}],
  [{ op: 'inspect' }, {}],
  [{ op: 'pull-plug' }, {}],
  [{ op: 'null-leads' }, { on: true }],
  [{ op: 'flex-cable' }, { on: true }],
  [
    { op: 'prove-dead', at: 'supply' },
    { tool: 'two-pole', proof: 'both' },
  ],
  [{ op: 'energise', at: 'main-switch' }, {}],
  [{ op: 'disconnect', what: 'electrode' }, {}],
  [{ op: 'reconnect', what: 'unit' }, {}],
  [{ op: 'put-right', what: 'pe-not-landed' }, {}],
  [{ op: 'link', between }, {}],
  [{ op: 'unlink', between }, {}],
  [{ op: 'vehicle' }, {}],
  [{ op: 'wait', seconds: 0 }, {}],
  [{ op: 'press', button: 'stop' }, {}],
  [{ op: 'supply' }, {}],
  [{ op: 'reset', what: 'upstream' }, {}],
  [{ op: 'stop', why: '' }, {}],
  [measure('continuity', { between }), {}],
  [measure('insulation', { between, volts: 250 }), {}],
  [measure('voltage', { between }), { tool: 'two-pole' }],
  [measure('pilot'), {}],
  [measure('coding'), {}],
  [measure('electrode'), {}],
  [measure('phase-sequence', { at: 'incoming' }), {}],
  [measure('loop', { between }), { current: 'low' }],
  [measure('residual', RESIDUAL), { line: 'L1', at: 'outlet' }],
  [measure('opening-time'), { of: 'C-to-B' }],
];

describe('left out, it stands at what is usual', () => {
  test.each(DEFAULTS)('%o', (input, filled) => {
    expect(operation(input as OperationInput)).toEqual({ ...input, ...filled });
    expect(parsed(input)).toMatchObject({ success: true, output: { ...input, ...filled } });
  });

  test.each(DEFAULTS)(
    '%o comes to the same text as from a file, in whatever order it is written',
    (input) => {
      const turned = Object.fromEntries(Object.entries({ ...input, nothing: undefined }).reverse());
      const { output } = parsed(input);
      expect(JSON.stringify(operation(turned as unknown as OperationInput))).toBe(JSON.stringify(output));
    },
  );

  test('every word of every operation has its place in the order of logs', () => {
    const [plain, measurement] = operationSchema.options;
    expect(
      Object.fromEntries(
        plain.options.map(({ entries: { op, ...says } }) => [op.literal, Object.keys(says)]),
      ),
    ).toEqual(Object.fromEntries(Object.entries(OPERATIONS).map(([op, says]) => [op, Object.keys(says)])));
    expect(
      Object.fromEntries(
        measurement.options.map(({ entries: { op: _, quantity, ...says } }) => [
          quantity.literal,
          Object.keys(says),
        ]),
      ),
    ).toEqual(Object.fromEntries(Object.entries(MEASUREMENTS).map(([of, says]) => [of, Object.keys(says)])));
  });

  test.each(DEFAULTS)('a word that is not known in %o is refused', (input) => {
    expect(parsed({ ...input, volume: 11 }).success).toBe(false);
  });
});

describe('every choice that there is', () => {
  test.each([
    ...[
      'met',
      'earth',
      'case',
      'earthing',
      'incoming.L1',
      'origin.N',
      'supply.PE',
      'outlet.CP',
      'outlet.PP',
    ].map((terminal) => measure('voltage', { between: [terminal, ['supply.L2', 'supply.L3']] })),
    ...[50, 100, 250, 500, 1000].map((volts) => measure('insulation', { between, volts })),
    ...['origin', 'supply', 'outlet'].map((at) => measure('phase-sequence', { at })),
    ...['low', 'full'].map((current) => measure('loop', { between, current })),
    ...['fixed', 'ramp'].map((mode) => measure('residual', { ...RESIDUAL, mode })),
    ...[0, 180].map((angle) => measure('residual', { ...RESIDUAL, angle })),
    ...['all', 'line'].map((poles) => ({ op: 'isolate', poles })),
    ...['origin', 'main-switch'].flatMap((at) => [
      { op: 'isolate', at },
      { op: 'energise', at },
    ]),
    ...['both', 'before', 'none'].map((proof) => ({ op: 'prove-dead', at: 'origin', proof })),
    ...['sound', 'shorted-to-earth', 'open'].map((pilot) => ({ op: 'vehicle', pilot })),
    ...['sound', 'shorted'].map((diode) => ({ op: 'vehicle', diode })),
    ...['sound', 'open'].map((earth) => ({ op: 'vehicle', earth })),
    ...[null, 13, 20, 32, 63].map((coding) => ({ op: 'vehicle', coding })),
    ...[-0.1, 0.1].map((dc) => ({ op: 'vehicle', leakage: { ac: 0, dc, line: 'L1' } })),
    ...['sound', 'open'].map((pen) => ({ op: 'supply', pen })),
    ...[null, 100, 300].map((voltage) => ({ op: 'supply', voltage })),
    ...['unit', 'supply', 'upstream'].map((what) => ({ op: 'reset', what })),
    ...['residual-test', 'stop', 'emergency', 'authorise', 'override-delay'].map((button) => ({
      op: 'press',
      button,
    })),
  ])('%o', (input) => {
    expect(parsed(input)).toMatchObject({ success: true, output: input });
  });
});

describe('what is refused, and where it is wrong', () => {
  test.each([
    [{ op: 'fly' }, 'op'],
    [measure('weight'), 'quantity'],
    [measure('voltage', { between: ['xmet', 'met'] }), 'between.0'],
    [measure('voltage', { between: ['met', 'outlet.L1x'] }), 'between.1'],
    [measure('voltage', { between: ['met', 'outlet.L4'] }), 'between.1'],
    [measure('voltage', { between: ['met', []] }), 'between.1'],
    [measure('voltage', { between: ['met'] }), 'between.1'],
    [measure('insulation', { between, volts: 5000 }), 'volts'],
    [measure('residual', { ...RESIDUAL, amps: 0 }), 'amps'],
    [measure('residual', { ...RESIDUAL, amps: 2.6 }), 'amps'],
    [measure('residual', { ...RESIDUAL, seconds: 61 }), 'seconds'],
    [measure('residual', { ...RESIDUAL, angle: 90 }), 'angle'],
    [{ op: 'wait', seconds: -1 }, 'seconds'],
    [{ op: 'wait', seconds: Number.POSITIVE_INFINITY }, 'seconds'],
    [{ op: 'wait', seconds: 86_401 }, 'seconds'],
    [{ op: 'vehicle', load: 81 }, 'load'],
    [{ op: 'vehicle', leakage: { ac: -0.01, dc: 0, line: 'L1' } }, 'leakage.ac'],
    [{ op: 'vehicle', leakage: { ac: 0, dc: 0.11, line: 'L1' } }, 'leakage.dc'],
    [{ op: 'vehicle', leakage: { ac: 0, dc: -0.11, line: 'L1' } }, 'leakage.dc'],
    [{ op: 'vehicle', coding: 16 }, 'coding'],
    [{ op: 'supply', voltage: 99 }, 'voltage'],
    [{ op: 'supply', voltage: 301 }, 'voltage'],
    [{ op: 'put-right', what: 'everything' }, 'what'],
    [{ op: 'stop', why: 'x'.repeat(501) }, 'why'],
  ])('%o: %s', (input, where) => {
    const { success, issues = [] } = parsed(input);
    expect(success).toBe(false);
    expect(issues.map((issue) => v.getDotPath(issue))).toContain(where);
  });

  test('a terminal that there is none of: the message says what is expected', () => {
    const [issue] = parsed(measure('voltage', { between: ['met', 'socket'] })).issues ?? [];
    const words = [issue?.message, ...(issue?.issues ?? []).map(({ message }) => message)].join();
    expect(words).toContain('a terminal is expected: met, house, earth, case, earthing, or place.conductor');
  });
});
