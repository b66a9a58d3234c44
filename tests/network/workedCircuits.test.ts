/** Circuits worked out in textbooks, by the network floor alone: potentials at 50 Hz and in the d.c. planes. */
import { expect, test } from 'vitest';
import { seenFrom } from '../../src/network/port.ts';
import { potentials } from '../../src/network/potentials.ts';
import { WORKED_CIRCUITS, WORKED_STAR, type WorkedCircuit } from '../references/workedCircuits.ts';
import { networkOf, type Row, reduced } from './build.ts';

const RADIANS = Math.PI / 180;

function solved({ elements }: WorkedCircuit) {
  const network = networkOf(
    elements.map(({ id, a, b, ohms, reactance }): Row => [id, a, b, ohms, reactance ? 1 / reactance : 0]),
  );
  const emfs = elements.flatMap(({ id, volts = 0, degrees = 0 }) =>
    volts === 0
      ? []
      : [
          {
            branch: network.branch(id),
            mains: { re: volts * Math.cos(degrees * RADIANS), im: volts * Math.sin(degrees * RADIANS) },
            high: volts,
            low: -volts,
          },
        ],
  );
  return { network, emfs };
}

test.each(WORKED_CIRCUITS)('$name ($source)', (circuit) => {
  const { network, emfs } = solved(circuit);
  const isDirect = circuit.elements.every(({ reactance, degrees }) => (reactance ?? degrees) === undefined);
  const planes = potentials(reduced(network), emfs, [], []);
  for (const { between, volts, degrees, half } of circuit.voltages) {
    const [a, b] = between.map(network.node) as [number, number];
    const { re, im } = planes.mains;
    const [x, y] = [(re[a] ?? 0) - (re[b] ?? 0), (im[a] ?? 0) - (im[b] ?? 0)];
    expect(Math.abs(Math.hypot(x, y) - volts)).toBeLessThanOrEqual(half);
    if (degrees !== undefined) expect(Math.abs(Math.atan2(y, x) / RADIANS - degrees)).toBeLessThan(0.01);
    if (!isDirect) continue;
    for (const [plane, sign] of [
      ['high', 1],
      ['low', -1],
    ] as const) {
      const drop = (planes[plane][a] ?? 0) - (planes[plane][b] ?? 0);
      expect(Math.abs(sign * drop - volts)).toBeLessThanOrEqual(half);
    }
  }
});

test(`a delta is its star from every pair of ends (${WORKED_STAR.source})`, () => {
  const { delta, star } = WORKED_STAR;
  const network = networkOf([
    ['ab', 'a', 'b', delta.ab],
    ['bc', 'b', 'c', delta.bc],
    ['ca', 'c', 'a', delta.ca],
    ['held', 'a', 'earth', 1],
  ]);
  const r = reduced(network);
  const planes = potentials(r, [], [], []);
  for (const [x, y] of [
    ['a', 'b'],
    ['b', 'c'],
    ['c', 'a'],
  ] as const) {
    const port = { a: network.node(x), b: network.node(y) };
    expect(Math.abs(seenFrom(r, planes, port).resistance - (star[x] + star[y]))).toBeLessThan(0.01);
  }
});
