/** What nobody at the bench can see, for `play --inside`: the control's states, the plant's positions, node potentials. */
import type { World } from '../bench/world.ts';

const digits = (x: number): number => Number(x.toPrecision(6));

export function insideOf({ control, plant, solution, wiring, counts }: World) {
  const { mains, high, low } = solution.planes;
  return {
    states: control.snapshot.value,
    plant,
    potentials: Object.fromEntries(
      wiring.topology.nodes.map((node, i) => [
        node,
        {
          mains: [digits(mains.re[i] ?? 0), digits(mains.im[i] ?? 0)],
          high: digits(high[i] ?? 0),
          low: digits(low[i] ?? 0),
        },
      ]),
    ),
    counts,
  };
}
