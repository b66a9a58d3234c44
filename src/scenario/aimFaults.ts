/**
 * Which faults of the catalogue may be drawn in a job of one aim: those with which the tests before it could all be
 * signed, and with which a faultless trainee finds the unit not sound by the aim's tests alone, by a line or limit that
 * points to where the fault is: else it could be seen and not found. Works out what aimFaults.json holds.
 */
import { CATALOGUE, entryNamed } from '../faults/catalogue.ts';
import type { Family } from '../faults/families.ts';
import type { AimFaults } from './aimJobs.ts';
import { jobWith } from './aimJobs.ts';
import type { AimId, SiteId } from './aims.ts';
import { AIMS, SITES } from './aims.ts';
import { readScenario } from './readScenario.ts';
import type { VerifiedAction } from './verify.ts';
import { verify } from './verify.ts';

export const ALL_FAULTS: readonly string[] = CATALOGUE.filter(({ kind }) => kind === 'fault').map(
  ({ id }) => id,
);

/** The seed that the table is worked out with. What reads too near a limit to be told with another one is not kept out. */
const SEED = 1;

/** Whether a fault, at its usual size, shows in the tests of this aim on this kind of site and in none handed over. */
export function showsInAim(aim: AimId, site: SiteId, fault: string, seed: number = SEED): boolean {
  const read = readScenario(jobWith({ aim, site, seed }, { title: aim, brief: aim, by: aim }, [fault]));
  // Refused: it cannot be on this site, or a test handed over could not have been signed.
  if (!read.ok) return false;
  const { conclusion, actions } = verify(read.scenario);
  const family = entryNamed(fault)?.family;
  return conclusion === 'not sound' && actions.some((action) => pointsOf(action).some((at) => at === family));
}

/** Where what is broken in a test says to look. */
const pointsOf = ({ expectations, limits }: VerifiedAction): readonly Family[] => [
  ...expectations
    .filter(({ finding }) => finding === 'broken')
    .flatMap(({ expectation }) => expectation.points),
  ...limits.filter(({ pass }) => !pass).flatMap(({ limit }) => limit.points),
];

export const workOutAimFaults = (): AimFaults =>
  Object.fromEntries(
    AIMS.map(({ id }) => [
      id,
      Object.fromEntries(
        ALL_FAULTS.map((fault) => [fault, SITES.filter((site) => showsInAim(id, site, fault))] as const)
          .filter(([, sites]) => sites.length > 0)
          .map(([fault, sites]) => [fault, sites.length === SITES.length ? 'all' : sites]),
      ),
    ]),
  ) as AimFaults;
