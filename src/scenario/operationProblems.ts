/** What in an operation cannot be done on the site that it is for: terminals and lines that it does not have. */
import type { Operation } from '../bench/operation.ts';
import { terminalsIn, terminalsOf } from '../bench/terminals.ts';
import type { Site } from '../site/site.ts';
import { nearest } from './nearest.ts';
import type { Problem } from './problems.ts';
import { quoted } from './quoted.ts';

/** What in an operation this site does not have, or what nobody could join. */
export function operationProblems(
  operation: Operation,
  path: string,
  site: Pick<Site, 'phases' | 'earthing'>,
): readonly Problem[] {
  const probes = 'between' in operation ? operation.between : [];
  const line = lineOf(operation);
  // Most operations name none, and a class hands in a hundred thousand.
  if (probes.length === 0 && line === undefined) return [];
  const terminals = terminalsOf(site);
  const lacking = probes.flatMap((probe, i) =>
    terminalsIn(probe)
      .filter((terminal) => !terminals.includes(terminal))
      .map((terminal) => ({
        path: `${path}.between[${i}]`,
        message: `this site has no terminal ${quoted(terminal)}; ${nearest(terminal, terminals)}`,
      })),
  );
  const twice = probes.flatMap((probe, i) =>
    terminalsIn(probe)
      .filter((terminal, j, all) => all.indexOf(terminal) < j)
      .map((terminal) => ({
        path: `${path}.between[${i}]`,
        message: `${quoted(terminal)} is joined to itself: each terminal once is expected`,
      })),
  );
  const missingLine = line !== undefined && !terminals.includes(`outlet.${line}`);
  return [
    ...lacking,
    ...twice,
    ...(missingLine ? [{ path: `${path}.line`, message: `this site has no ${line}: L1 is expected` }] : []),
  ];
}

function lineOf(operation: Operation): string | undefined {
  if (operation.op === 'measure' && operation.quantity === 'residual') return operation.line;
  return operation.op === 'vehicle' ? operation.leakage?.line : undefined;
}
