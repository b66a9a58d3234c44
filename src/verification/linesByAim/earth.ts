/** The lines of the tests of the aim `earth`, which come together. */
import { earthsApart } from '../lines/earthsApart.ts';
import { electrode } from '../lines/electrode.ts';
import { peCircuit } from '../lines/peCircuit.ts';
import { peOutlet } from '../lines/peOutlet.ts';
import { ze } from '../lines/ze.ts';
import type { TestLines } from '../testAction.ts';

export const earth: Readonly<Record<string, TestLines>> = {
  'pe-circuit': peCircuit,
  'pe-outlet': peOutlet,
  electrode,
  'earths-apart': earthsApart,
  ze,
};
