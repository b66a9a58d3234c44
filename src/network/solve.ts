/*
 * From currents put into the nodes to the potentials of the nodes, on a network that reduce.ts
 * has factored. Both functions work in place: the list of currents becomes the list of potentials.
 */
import type { Reduced } from './reduce.ts';

/** D.c.: `list` holds amps into each node and is left holding volts against true earth. */
export function solveDirect(reduced: Reduced, list: Float64Array): void {
  const { order, firstArm, armNode } = reduced.plan;
  const { share, inverse } = reduced.direct;
  for (let step = 0; step < order.length; step++) {
    const here = list[order[step] as number] as number;
    if (here === 0) continue;
    const end = firstArm[step + 1] as number;
    for (let arm = firstArm[step] as number; arm < end; arm++) {
      const node = armNode[arm] as number;
      list[node] = (list[node] as number) + here * (share[arm] as number);
    }
  }
  list[0] = 0;
  for (let step = order.length - 1; step >= 0; step--) {
    const node = order[step] as number;
    const end = firstArm[step + 1] as number;
    let volts = (list[node] as number) * (inverse[step] as number);
    for (let arm = firstArm[step] as number; arm < end; arm++) {
      volts += (share[arm] as number) * (list[armNode[arm] as number] as number);
    }
    list[node] = volts;
  }
}

/** 50 Hz: the same with phasors, real and imaginary parts apart. */
export function solveMains(reduced: Reduced, re: Float64Array, im: Float64Array): void {
  const { order, firstArm, armNode } = reduced.plan;
  const { shareRe, shareIm, inverseRe, inverseIm } = reduced.mains;
  for (let step = 0; step < order.length; step++) {
    const hereRe = re[order[step] as number] as number;
    const hereIm = im[order[step] as number] as number;
    if (hereRe === 0 && hereIm === 0) continue;
    const end = firstArm[step + 1] as number;
    for (let arm = firstArm[step] as number; arm < end; arm++) {
      const node = armNode[arm] as number;
      const partRe = shareRe[arm] as number;
      const partIm = shareIm[arm] as number;
      re[node] = (re[node] as number) + hereRe * partRe - hereIm * partIm;
      im[node] = (im[node] as number) + hereRe * partIm + hereIm * partRe;
    }
  }
  re[0] = 0;
  im[0] = 0;
  for (let step = order.length - 1; step >= 0; step--) {
    const node = order[step] as number;
    const end = firstArm[step + 1] as number;
    const invRe = inverseRe[step] as number;
    const invIm = inverseIm[step] as number;
    let voltsRe = (re[node] as number) * invRe - (im[node] as number) * invIm;
    let voltsIm = (re[node] as number) * invIm + (im[node] as number) * invRe;
    for (let arm = firstArm[step] as number; arm < end; arm++) {
      const other = armNode[arm] as number;
      const partRe = shareRe[arm] as number;
      const partIm = shareIm[arm] as number;
      voltsRe += partRe * (re[other] as number) - partIm * (im[other] as number);
      voltsIm += partRe * (im[other] as number) + partIm * (re[other] as number);
    }
    re[node] = voltsRe;
    im[node] = voltsIm;
  }
}
