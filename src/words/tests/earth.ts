/** The words of the tests of the aim `earth`, which come together. */
import { earthsApart } from '../actions/earthsApart.ts';
import { electrode } from '../actions/electrode.ts';
import { peCircuit } from '../actions/peCircuit.ts';
import { peOutlet } from '../actions/peOutlet.ts';
import { ze } from '../actions/ze.ts';
import type { ActionWords } from '../actionWords.ts';

export const earth: Readonly<Record<string, ActionWords>> = {
  'pe-circuit': peCircuit,
  'pe-outlet': peOutlet,
  electrode,
  'earths-apart': earthsApart,
  ze,
};
