/**
 * Jobs of one aim: of an aim, a kind of site and a seed a scenario, the same to the byte whenever it is made. Its
 * tests are the aim's; those of the aims before it are handed over as done. By the draw half of the jobs have nothing
 * wrong; what may be wrong in the others is a table that `npm run aim-faults` works out (aimFaults.ts).
 */

import { drawer } from '../bench/draw.ts';
import FAULTS from './aimFaults.json' with { type: 'json' };
import INSTALLATIONS from './aimSites.json' with { type: 'json' };
import type { AimId, AimJob, SiteId } from './aims.ts';
import { AIMS, aimJobId, aimNamed } from './aims.ts';

/** Of each aim the faults, in the order of the catalogue, with the kinds of site on which they may be drawn. */
export type AimFaults = Readonly<Record<AimId, Readonly<Record<string, 'all' | readonly SiteId[]>>>>;

const GREATEST_NUMBER = 60;

/** A day's clock; what is tested does not hang on it. */
const CLOCK = '2026-05-12T10:00';

/**
 * The catalogue's faults that may be drawn; each shows in the aim's tests and in none that is handed over. None for
 * proving dead: nothing of the catalogue keeps a circuit alive that is isolated, so there every job is sound.
 */
export const faultsOf = ({ aim, site }: Pick<AimJob, 'aim' | 'site'>): readonly string[] =>
  Object.entries((FAULTS as unknown as AimFaults)[aim]).flatMap(([fault, sites]) =>
    sites === 'all' || sites.includes(site) ? fault : [],
  );

/** What is told of a job; nothing of it depends on what is wrong. Its words are in src/words/aimJobs.ts. */
export interface AimJobWords {
  readonly title: string;
  readonly brief: string;
  /** Who handed over what is done. */
  readonly by: string;
}

/** Where the job is, by the draw: a share of the list of places, and a house number. */
export function drawnAddress(seed: number): { readonly place: number; readonly number: number } {
  const draw = drawer(seed);
  return { place: draw('aim-job-place'), number: 1 + Math.floor(GREATEST_NUMBER * draw('aim-job-number')) };
}

/** The scenario file's object. */
export function aimJob(job: AimJob, words: AimJobWords): object {
  const { aim, site, seed } = job;
  const draw = drawer(seed);
  const faults = faultsOf(job);
  const isSound = draw(`aim-job-sound-${aim}-${site}`) < 0.5;
  const drawn = oneOf(faults, draw(`aim-job-fault-${aim}-${site}`));
  return jobWith(job, words, isSound || drawn === undefined ? [] : [drawn]);
}

const oneOf = <T>(list: readonly T[], share: number): T | undefined => list[Math.floor(share * list.length)];

/** The same with these faults, whatever the draw says: what the table is worked out with. */
export function jobWith(
  { aim, site, seed }: AimJob,
  { title, brief, by }: AimJobWords,
  faults: readonly string[],
): object {
  const { site: installation, unit, rules } = INSTALLATIONS[site];
  const before = testsBefore(aim);
  return {
    format: 1,
    id: aimJobId({ aim, site, seed }),
    title,
    brief,
    rules,
    clock: CLOCK,
    task: 'aim',
    aim,
    site: installation,
    unit,
    faults: faults.map((fault) => ({ fault })),
    allowed: aimNamed(aim)?.tests,
    ...(before.length === 0 ? {} : { handover: { by, done: before } }),
    support: 'practice',
    seed,
  };
}

/** In the order of the aims; the bench carries out those that apply, in the usual order. */
const testsBefore = (aim: AimId): readonly string[] =>
  AIMS.slice(
    0,
    AIMS.findIndex(({ id }) => id === aim),
  ).flatMap(({ tests }) => tests);
