/*
 * The ways a network can have no answer. Each error names the node, branch or part at fault,
 * so that a wrong model is found by its name and never travels on as NaN.
 */

/** A node with no path to true earth: its potential is undetermined. */
export class FloatingNode extends Error {
  readonly node: string;

  constructor(node: string) {
    super(`node "${node}" has no path to true earth`);
    this.name = 'FloatingNode';
    this.node = node;
  }
}

/** A value that is NaN, infinite, or negative where only zero and above make sense. */
export class NotFinite extends Error {
  readonly subject: string;
  readonly value: number;

  constructor(subject: string, value: number) {
    super(`${subject} is ${value}`);
    this.name = 'NotFinite';
    this.subject = subject;
    this.value = value;
  }
}

/** No set of conducting one-way parts agrees with the network. */
export class OneWaysUnsettled extends Error {
  constructor(rounds: number) {
    super(`the one-way parts did not settle in ${rounds} rounds`);
    this.name = 'OneWaysUnsettled';
  }
}
