/**
 * What the person testing can do wrong without harm: the reading is true and means nothing, so that no line is called
 * broken by it.
 */
import { describe, expect, test } from 'vitest';
import type { OperationInput } from '../../src/bench/operation.ts';
import { operation } from '../../src/bench/operation.ts';
import { actionNamed } from '../../src/verification/actions.ts';
import { judgeExpectations } from '../../src/verification/assess.ts';
import { observe } from '../../src/verification/observed.ts';
import { benchWith, CHARGE, MAKE_DEAD, SHEET, siteOf, type Wanted } from '../bench/build.ts';

/** What a line comes to after these operations. */
function findingOf(action: string, line: string, wanted: Wanted, ...inputs: readonly OperationInput[]) {
  const world = benchWith(wanted);
  const samples = inputs.map((input) => observe(world, operation(input)).sample);
  const papers = { site: siteOf(wanted.site), sheet: { ...SHEET, ...wanted.sheet } };
  const found = actionNamed(action);
  if (found === undefined) throw new Error(`no test action "${action}"`);
  const judged = judgeExpectations(found, papers, { samples }).find(
    ({ expectation }) => expectation.id === line,
  );
  return { finding: judged?.finding, last: samples.at(-1)?.readings[0] };
}

describe('N–PE insulation with the neutral joined at the origin reads the link there (follows from the circuit)', () => {
  const ONE_POLE: Wanted = {
    site: { circuit: { breaker: { type: 'B', rating: 40, breakingCapacity: 6000, poles: 1 } } },
  };
  const dead = (poles: 'all' | 'line'): readonly OperationInput[] => [
    { op: 'isolate', poles },
    ...MAKE_DEAD.slice(1),
  ];
  const pair = (x: string): OperationInput => ({
    op: 'measure',
    quantity: 'insulation',
    between: [`supply.${x}`, 'supply.PE'],
    volts: 500,
  });
  const alone: OperationInput = { op: 'disconnect', what: 'unit' };

  test('0.00 MΩ, and no fault of the cable', () => {
    const { finding, last } = findingOf(
      'insulation-circuit',
      'lives-to-earth',
      ONE_POLE,
      ...dead('line'),
      alone,
      pair('L1'),
      pair('N'),
    );
    expect(last?.value).toBeLessThan(20_000);
    expect(finding).toBe('not shown');
  });

  test('with the neutral open it is one', () => {
    const wanted: Wanted = {
      ...ONE_POLE,
      faults: [{ fault: 'neutral-pe-insulation-low', values: { ohms: 500 } }],
    };
    const { finding } = findingOf(
      'insulation-circuit',
      'lives-to-earth',
      wanted,
      ...dead('all'),
      alone,
      pair('N'),
    );
    expect(finding).toBe('broken');
  });

  test('nor of the unit, all its live conductors joined', () => {
    const joined: OperationInput = {
      op: 'measure',
      quantity: 'insulation',
      between: [['supply.L1', 'supply.N'], 'supply.PE'],
      volts: 250,
    };
    expect(findingOf('insulation-unit', 'unit-to-earth', ONE_POLE, ...dead('line'), joined).finding).toBe(
      'not shown',
    );
    expect(findingOf('insulation-unit', 'unit-to-earth', ONE_POLE, ...dead('all'), joined).finding).toBe(
      'met',
    );
  });
});

describe('a ghost on a meter of 10 MΩ is no live outlet (HSE GS38)', () => {
  const BLED: Wanted = { sheet: { poleBleed: 470_000 } };
  const pairs = (tool: 'meter' | 'two-pole'): readonly OperationInput[] =>
    ['outlet.N', 'outlet.PE'].map((to) => ({
      op: 'measure',
      quantity: 'voltage',
      between: ['outlet.L1', to],
      tool,
    }));

  test('over 50 V on the meter shows nothing, the detector shows it dead', () => {
    const ghost = findingOf('state-a', 'voltage', BLED, ...pairs('meter'));
    expect(ghost.last?.value).toBeGreaterThan(50);
    expect(ghost.finding).toBe('not shown');
    expect(findingOf('state-a', 'voltage', BLED, ...pairs('meter'), ...pairs('two-pole')).finding).toBe(
      'met',
    );
  });

  test('a welded pole is found by the detector', () => {
    const welded: Wanted = { faults: [{ fault: 'line-pole-welded', values: { line: 1 } }] };
    expect(findingOf('state-a', 'voltage', welded, ...pairs('two-pole')).finding).toBe('broken');
  });
});

describe('a test current taken off before its time is up has failed nobody', () => {
  const held = (
    waveform: 'sinusoidal' | 'smooth-dc-positive',
    amps: number,
    seconds: number,
  ): OperationInput => ({
    op: 'measure',
    quantity: 'residual',
    waveform,
    mode: 'fixed',
    amps,
    seconds,
  });

  // IEC 62955:2018 Table 2: 10 s at 6 mA. This detector takes 7 s and some.
  test.each([
    { seconds: 5, finding: 'not shown' },
    { seconds: 10, finding: 'met' },
  ])('6 mA of d.c. for $seconds s: $finding', ({ seconds, finding }) => {
    const late: Wanted = { design: { directDelay: 7 } };
    const found = findingOf(
      'dc-step',
      'in-time',
      late,
      ...CHARGE,
      held('smooth-dc-positive', 0.006, seconds),
    );
    expect(found.finding).toBe(finding);
  });

  // IEC 61008-1: 300 ms at the rating. This device takes 280 ms and some.
  test.each([
    { seconds: 0.1, finding: 'not shown' },
    { seconds: 0.5, finding: 'met' },
  ])('30 mA a.c. for $seconds s: $finding', ({ seconds, finding }) => {
    const late: Wanted = { design: { residualDelay: 0.24 } };
    const found = findingOf('residual-rated', 'in-time', late, ...CHARGE, held('sinusoidal', 0.03, seconds));
    expect(found.finding).toBe(finding);
  });

  test('held for its time and not tripped, it has failed', () => {
    const dead: Wanted = { design: { residualPickup: Infinity } };
    const found = findingOf('residual-rated', 'in-time', dead, ...CHARGE, held('sinusoidal', 0.03, 0.5));
    expect(found.finding).toBe('broken');
  });
});
