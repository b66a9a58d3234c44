/**
 * Everything physical about one installation before it is assembled: what a fault may change. The site and the
 * sheet say what was meant; design and parts say what is really there.
 */
import type { Ohms, Seconds } from '../laws/quantities.ts';
import type { Found, OneWayPart, Part, Source } from '../site/part.ts';
import { OPEN } from '../site/part.ts';
import type { Site } from '../site/site.ts';
import { siteParts, siteSources } from '../site/site.ts';
import type { UnitDesign } from '../unit/design.ts';
import { unitOneWays, unitParts } from '../unit/parts.ts';
import type { Detector, Tester } from './tester.ts';
import { SOUND_DETECTOR, SOUND_TESTER } from './tester.ts';

export interface Parts {
  readonly site: Site;
  readonly design: UnitDesign;
  readonly parts: readonly Part[];
  readonly sources: readonly Source[];
  readonly oneWays: readonly OneWayPart[];
  /** Ways of the board that are the circuit's by its schedule or in truth: what they carry, its devices feel. */
  readonly ways: readonly string[];
  /** What can be seen to be wrong, by looking. */
  readonly visible: readonly Found[];
  /** Whether a residual device at the origin acts at all. */
  readonly upstreamDevice: 'acts' | 'dead';
  /** How much later than later ones its first trip comes, s. */
  readonly upstreamFirstLater: Seconds;
  /** What the installation is tested with. */
  readonly tester: Tester;
  /** What it is proved dead with. */
  readonly detector: Detector;
}

/** The installation as it was meant. */
export const soundParts = (site: Site, design: UnitDesign): Parts => ({
  site,
  design,
  parts: [...siteParts(site), ...unitParts(design, site.phases)],
  sources: siteSources(site),
  oneWays: unitOneWays(design, site.phases),
  ways: ['origin'],
  visible: [],
  upstreamDevice: 'acts',
  upstreamFirstLater: 0,
  tester: SOUND_TESTER,
  detector: SOUND_DETECTOR,
});

/** The same installation with one part altered. Throws when there is no such part: a slip in the catalogue. */
export function withPart(parts: Parts, id: string, change: (part: Part) => Part): Parts {
  if (!parts.parts.some((part) => part.id === id)) throw new Error(`no part "${id}" to change`);
  return { ...parts, parts: parts.parts.map((part) => (part.id === id ? change(part) : part)) };
}

/** The same part with more resistance in series. */
export const withMore = (parts: Parts, id: string, ohms: Ohms): Parts =>
  withPart(parts, id, (part) => ({ ...part, resistance: part.resistance + ohms }));

export const withOpen = (parts: Parts, id: string): Parts =>
  withPart(parts, id, (part) => ({ ...part, resistance: OPEN }));

/** Two conductors that have changed places at their far ends. */
export function withCrossed(parts: Parts, first: string, second: string): Parts {
  const farEnd = (id: string): string => {
    const part = parts.parts.find((one) => one.id === id);
    if (part === undefined) throw new Error(`no part "${id}" to change`);
    return part.b;
  };
  const [b, c] = [farEnd(first), farEnd(second)];
  return withPart(
    withPart(parts, first, (part) => ({ ...part, b: c })),
    second,
    (part) => ({ ...part, b }),
  );
}

/** The same unit with another design: its hidden details or one rule, never its sheet. */
export const withDesign = (parts: Parts, change: Partial<Omit<UnitDesign, 'sheet'>>): Parts => ({
  ...parts,
  design: { ...parts.design, ...change },
});

export const withTiming = (parts: Parts, change: Partial<UnitDesign['timing']>): Parts =>
  withDesign(parts, { timing: { ...parts.design.timing, ...change } });

export const withVisible = (parts: Parts, where: Found['where'], what: Found['what']): Parts => ({
  ...parts,
  visible: [...parts.visible, { where, what }],
});

/** The same site with another fitted device or another supply; its papers keep what was meant. */
export const withSite = (parts: Parts, change: Partial<Site>): Parts => ({
  ...parts,
  site: { ...parts.site, ...change },
});
