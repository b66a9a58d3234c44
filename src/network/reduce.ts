/*
 * Turns branch values into the factors that solve.ts works with, by star–mesh elimination along
 * the plan: one complex factoring for 50 Hz, one real factoring for the d.c. planes.
 *
 * Why star–mesh: a node's own admittance is always the sum of the links it has left, never a
 * difference, so 0.1 mΩ links beside 10 GΩ of insulation cost no digits. In the real network all
 * links stay positive. With susceptance a new link can lie outside the first quadrant; the tests
 * against exact arithmetic show that this costs no digits either.
 */
import { FloatingNode, NotFinite } from './errors.ts';
import { listsOf } from './lists.ts';
import type { Plan } from './plan.ts';

/** Values by branch index, in siemens, zero or above; the susceptance is that at 50 Hz. */
export interface BranchValues {
  conductance: Float64Array;
  susceptance: Float64Array;
}

/** One real factoring: for each arm its share of the node's own admittance, for each step 1 / own. */
interface RealFactors {
  share: Float64Array;
  inverse: Float64Array;
}

/** The same for the complex network, real and imaginary parts apart. */
interface ComplexFactors {
  shareRe: Float64Array;
  shareIm: Float64Array;
  inverseRe: Float64Array;
  inverseIm: Float64Array;
}

export interface Reduced {
  plan: Plan;
  /** A copy: the caller may go on changing its own arrays. */
  values: BranchValues;
  direct: RealFactors;
  mains: ComplexFactors;
}

/**
 * Factors the network for all planes. Call again when a value has changed.
 * Throws NotFinite, naming the branch, for a value that is negative, infinite or NaN;
 * FloatingNode, naming the node, where no conducting path leads to true earth (capacitors alone
 * leave a node floating in the d.c. planes); RangeError when the lists do not fit the topology.
 */
export function reduce(plan: Plan, values: BranchValues): Reduced {
  const { branches } = plan.topology;
  for (const list of [values.conductance, values.susceptance]) {
    if (list.length !== branches.length) {
      throw new RangeError(`${list.length} values for ${branches.length} branches`);
    }
    for (let i = 0; i < list.length; i++) {
      const value = list[i] as number;
      if (!(value >= 0 && value < Number.POSITIVE_INFINITY)) {
        throw new NotFinite(`branch "${branches[i]?.id}"`, value);
      }
    }
  }
  const [conductance, susceptance] = listsOf(branches.length, branches.length);
  conductance.set(values.conductance);
  susceptance.set(values.susceptance);
  return {
    plan,
    values: { conductance, susceptance },
    direct: factorReal(plan, conductance),
    mains: factorComplex(plan, conductance, susceptance),
  };
}

/** Adds up branch values in the slots of their links. */
function gather(plan: Plan, byBranch: Float64Array, bySlot: Float64Array): void {
  for (let i = 0; i < byBranch.length; i++) {
    const slot = plan.branchSlot[i] as number;
    bySlot[slot] = (bySlot[slot] as number) + (byBranch[i] as number);
  }
}

function floatingAt(plan: Plan, step: number): FloatingNode {
  return new FloatingNode(plan.topology.nodes[plan.order[step] as number] ?? '');
}

function factorReal(plan: Plan, conductance: Float64Array): RealFactors {
  const { order, firstArm, armSlot, meshSlot, slots } = plan;
  const [link, share, inverse] = listsOf(slots, armSlot.length, order.length);
  gather(plan, conductance, link);
  let mesh = 0;
  for (let step = 0; step < order.length; step++) {
    const first = firstArm[step] as number;
    const end = firstArm[step + 1] as number;
    let own = 0;
    for (let arm = first; arm < end; arm++) own += link[armSlot[arm] as number] as number;
    if (own === 0) throw floatingAt(plan, step);
    inverse[step] = 1 / own;
    for (let arm = first; arm < end; arm++) {
      share[arm] = (link[armSlot[arm] as number] as number) / own;
    }
    for (let arm = first; arm < end; arm++) {
      const here = link[armSlot[arm] as number] as number;
      for (let other = arm + 1; other < end; other++) {
        const slot = meshSlot[mesh++] as number;
        link[slot] = (link[slot] as number) + here * (share[other] as number);
      }
    }
  }
  return { share, inverse };
}

function factorComplex(plan: Plan, conductance: Float64Array, susceptance: Float64Array): ComplexFactors {
  const { order, firstArm, armSlot, meshSlot, slots } = plan;
  const [arms, steps] = [armSlot.length, order.length];
  const [linkRe, linkIm, shareRe, shareIm, inverseRe, inverseIm] = listsOf(
    slots,
    slots,
    arms,
    arms,
    steps,
    steps,
  );
  gather(plan, conductance, linkRe);
  gather(plan, susceptance, linkIm);
  let mesh = 0;
  for (let step = 0; step < order.length; step++) {
    const first = firstArm[step] as number;
    const end = firstArm[step + 1] as number;
    let ownRe = 0;
    let ownIm = 0;
    for (let arm = first; arm < end; arm++) {
      const slot = armSlot[arm] as number;
      ownRe += linkRe[slot] as number;
      ownIm += linkIm[slot] as number;
    }
    const square = ownRe * ownRe + ownIm * ownIm;
    if (square === 0) throw floatingAt(plan, step);
    const invRe = ownRe / square;
    const invIm = -ownIm / square;
    inverseRe[step] = invRe;
    inverseIm[step] = invIm;
    for (let arm = first; arm < end; arm++) {
      const slot = armSlot[arm] as number;
      const re = linkRe[slot] as number;
      const im = linkIm[slot] as number;
      shareRe[arm] = re * invRe - im * invIm;
      shareIm[arm] = re * invIm + im * invRe;
    }
    for (let arm = first; arm < end; arm++) {
      const here = armSlot[arm] as number;
      const re = linkRe[here] as number;
      const im = linkIm[here] as number;
      for (let other = arm + 1; other < end; other++) {
        const slot = meshSlot[mesh++] as number;
        const otherRe = shareRe[other] as number;
        const otherIm = shareIm[other] as number;
        linkRe[slot] = (linkRe[slot] as number) + re * otherRe - im * otherIm;
        linkIm[slot] = (linkIm[slot] as number) + re * otherIm + im * otherRe;
      }
    }
  }
  return { shareRe, shareIm, inverseRe, inverseIm };
}
