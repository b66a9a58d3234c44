/** What in an operation the site that it is for does not have: terminals and lines. */
import type { Operation } from '../bench/operation.ts';
import { terminalsIn, terminalsOf } from '../bench/terminals.ts';
import type { Site } from '../site/site.ts';
import { nearest } from './nearest.ts';
import type { Problem } from './problems.ts';
import { quoted } from './quoted.ts';

/** What in an operation this site does not have. */
export function operationProblems(
  operation: Operation,
  path: string,
  site: Pick<Site, 'phases' | 'earthing'>,
): readonly Problem[] {
  const terminals = terminalsOf(site);
  const probes = 'between' in operation ? operation.between : [];
  const lacking = probes.flatMap((probe, i) =>
    terminalsIn(probe)
      .filter((terminal) => !terminals.includes(terminal))
      .map((terminal) => ({
        path: `${path}.between[${i}]`,
        message: `this site has no terminal ${quoted(terminal)}; ${nearest(terminal, terminals)}`,
      })),
  );
  const line =
    operation.op === 'measure' && operation.quantity === 'residual'
      ? operation.line
      : operation.op === 'vehicle'
        ? operation.leakage?.line
        : undefined;
  const missingLine = line !== undefined && !terminals.includes(`outlet.${line}`);
  return [
    ...lacking,
    ...(missingLine ? [{ path: `${path}.line`, message: `this site has no ${line}: L1 is expected` }] : []),
  ];
}
