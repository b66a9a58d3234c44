/*
 * What a network is made of: named nodes and the branches between them. A topology never changes;
 * a contact that opens changes a value, not the list. Values are reduce.ts's business.
 */

/** Index into `Topology.nodes`. Node 0 is true earth, the zero of all potentials. */
export type NodeId = number;

export interface Topology {
  nodes: readonly string[];
  branches: readonly { id: string; a: NodeId; b: NodeId }[];
}
