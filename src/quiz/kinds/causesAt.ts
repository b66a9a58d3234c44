/** Causes that may be drawn in jobs of one aim on a kind of site, of one aim or of all. */
import { faultsOf } from '../../scenario/aimJobs.ts';
import type { AimId, SiteId } from '../../scenario/aims.ts';
import { AIMS } from '../../scenario/aims.ts';

export const causesAt = (site: SiteId, aim?: AimId): readonly string[] =>
  aim === undefined
    ? [...new Set(AIMS.flatMap(({ id }) => faultsOf({ aim: id, site })))]
    : faultsOf({ aim, site });
