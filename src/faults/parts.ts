/**
 * Everything physical about one installation before it is assembled: what a fault may change. The site and the
 * sheet say what was meant; design and parts say what is really there.
 */
import type { Found, OneWayPart, Part, Source } from '../site/part.ts';
import type { Site } from '../site/site.ts';
import { siteParts, siteSources } from '../site/site.ts';
import type { UnitDesign } from '../unit/design.ts';
import { unitOneWays, unitParts } from '../unit/parts.ts';

export interface Parts {
  readonly site: Site;
  readonly design: UnitDesign;
  readonly parts: readonly Part[];
  readonly sources: readonly Source[];
  readonly oneWays: readonly OneWayPart[];
  /** What can be seen to be wrong, by looking. */
  readonly visible: readonly Found[];
}

/** The installation as it was meant. */
export const soundParts = (site: Site, design: UnitDesign): Parts => ({
  site,
  design,
  parts: [...siteParts(site), ...unitParts(design, site.phases)],
  sources: siteSources(site),
  oneWays: unitOneWays(design, site.phases),
  visible: [],
});

/** The same installation with one part altered. Throws when there is no such part: a slip in the catalogue. */
export function withPart(parts: Parts, id: string, change: (part: Part) => Part): Parts {
  if (!parts.parts.some((part) => part.id === id)) throw new Error(`no part "${id}" to change`);
  return { ...parts, parts: parts.parts.map((part) => (part.id === id ? change(part) : part)) };
}
