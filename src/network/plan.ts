/*
 * Works out, once a topology, in which order its nodes are eliminated and which pairs of nodes
 * become linked on the way, so that reduce.ts and solve.ts run over flat lists without searching.
 * Knows no values.
 */
import type { NodeId, Topology } from './topology.ts';

/**
 * The elimination laid out flat. Step k eliminates node `order[k]`; its arms, the links to nodes
 * not yet eliminated, are the entries firstArm[k] … firstArm[k + 1] − 1 of `armNode` and `armSlot`.
 * A slot is one link between two nodes, parallel branches merged. `meshSlot` holds, step after
 * step, the slot of each pair of arms (first with second, first with third, …).
 */
export interface Plan {
  topology: Topology;
  slots: number;
  branchSlot: Int32Array;
  order: Int32Array;
  firstArm: Int32Array;
  armNode: Int32Array;
  armSlot: Int32Array;
  meshSlot: Int32Array;
}

/** The links of each node still present, with their slots. */
type Links = readonly Map<NodeId, number>[];

/**
 * Plans the elimination of every node but true earth, least number of links first (lowest index
 * among equals), which keeps new links few.
 * Throws RangeError for a branch that joins a node to itself or names a node that does not exist.
 */
export function plan(topology: Topology): Plan {
  const links: Links = topology.nodes.map(() => new Map());
  let slots = 0;
  const slotBetween = (a: NodeId, b: NodeId): number => {
    const [linksOfA, linksOfB] = [links[a], links[b]];
    if (linksOfA === undefined || linksOfB === undefined || a === b) {
      throw new RangeError(`no link is possible between nodes ${a} and ${b}`);
    }
    const known = linksOfA.get(b);
    if (known !== undefined) return known;
    const slot = slots++;
    linksOfA.set(b, slot);
    linksOfB.set(a, slot);
    return slot;
  };

  const branchSlot = Int32Array.from(topology.branches, ({ a, b }) => slotBetween(a, b));
  const order: NodeId[] = [];
  const firstArm = [0];
  const armNode: NodeId[] = [];
  const armSlot: number[] = [];
  const meshSlot: number[] = [];
  const left = new Set(topology.nodes.keys());
  left.delete(0);

  while (left.size > 0) {
    const node = leastLinked(left, links);
    const arms = [...(links[node] ?? [])].sort(([m], [n]) => m - n);
    for (const [i, [neighbour, slot]] of arms.entries()) {
      armNode.push(neighbour);
      armSlot.push(slot);
      links[neighbour]?.delete(node);
      for (const [other] of arms.slice(i + 1)) meshSlot.push(slotBetween(neighbour, other));
    }
    left.delete(node);
    order.push(node);
    firstArm.push(armNode.length);
  }

  return {
    topology,
    slots,
    branchSlot,
    order: Int32Array.from(order),
    firstArm: Int32Array.from(firstArm),
    armNode: Int32Array.from(armNode),
    armSlot: Int32Array.from(armSlot),
    meshSlot: Int32Array.from(meshSlot),
  };
}

function leastLinked(left: ReadonlySet<NodeId>, links: Links): NodeId {
  let least: NodeId = -1;
  let fewest = Number.POSITIVE_INFINITY;
  for (const node of left) {
    const count = links[node]?.size ?? 0;
    if (count < fewest || (count === fewest && node < least)) {
      least = node;
      fewest = count;
    }
  }
  return least;
}
