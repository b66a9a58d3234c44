/** The measurements that procedures are made of, as operations. */
import type { OperationInput } from '../bench/operation.ts';
import type { Probe } from '../bench/terminals.ts';
import { linesOf } from '../site/site.ts';
import type { Papers } from './testAction.ts';

type Ends = [string | string[], string | string[]];
const ends = (a: Probe, b: Probe): Ends =>
  [a, b].map((probe) => (typeof probe === 'string' ? probe : [...probe])) as Ends;

export const continuity = (a: Probe, b: Probe): OperationInput => ({
  op: 'measure',
  quantity: 'continuity',
  between: ends(a, b),
});

export const insulation = (a: Probe, b: Probe, volts: 50 | 100 | 250 | 500): OperationInput => ({
  op: 'measure',
  quantity: 'insulation',
  between: ends(a, b),
  volts,
});

export const voltage = (a: Probe, b: Probe): OperationInput => ({
  op: 'measure',
  quantity: 'voltage',
  between: ends(a, b),
});

export const loop = (a: Probe, b: Probe): OperationInput => ({
  op: 'measure',
  quantity: 'loop',
  between: ends(a, b),
});

export const pilot: OperationInput = { op: 'measure', quantity: 'pilot' };

export const waitFor = (seconds: number): OperationInput => ({ op: 'wait', seconds });

/** Line to neutral and line to PE of every line, then neutral to PE: what shows polarity and whether it is live. */
export const outletVoltages = ({ site }: Papers): readonly OperationInput[] => [
  ...linesOf(site).flatMap((x) => [voltage(`outlet.${x}`, 'outlet.N'), voltage(`outlet.${x}`, 'outlet.PE')]),
  voltage('outlet.N', 'outlet.PE'),
];
