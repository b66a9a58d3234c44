/** Jobs of one aim in words: what is told of them before anything is done. */
import type { AimJobWords } from '../scenario/aimJobs.ts';
import { aimJob, drawnAddress } from '../scenario/aimJobs.ts';
import type { AimId, AimJob, SiteId } from '../scenario/aims.ts';
import { AIMS, aimJobIn } from '../scenario/aims.ts';
import { AIM_WORDS } from './aims.ts';

export const UNIT_WORDS: Readonly<Record<SiteId, string>> = {
  'single-pme': 'A single-phase tethered unit on a PME supply (TN-C-S).',
  'single-tns': 'A single-phase tethered unit on a TN-S supply.',
  'single-tt': 'A single-phase tethered unit on a TT supply with its own electrode.',
  'three-socket': 'A three-phase unit with a socket-outlet, on a TN-S supply.',
  'single-island':
    'A single-phase tethered unit on an electrode of its own (TT), at a house on PME (TN-C-S).',
  'single-shared':
    'A single-phase tethered unit on a PME supply (TN-C-S), beside a second charging point on the same service.',
};

/** Invented, like every site of the project. */
const PLACES = [
  'Sexton Row',
  'Malthouse Lane',
  'Ferry Steps',
  'Cooper’s Hill',
  'Lime Kiln Road',
  'Weaver’s Court',
  'Ropewalk',
  'Dovecote Lane',
  'Plough Field',
  'Tithe Barn Close',
  'Hurdle Green',
  'Osier Bank',
  'Smithy Fold',
  'Toll House Road',
  'Withy Cottages',
  'Granary Yard',
] as const;

export function aimJobWords(job: AimJob): AimJobWords {
  return {
    title: `${AIM_WORDS[job.aim].question} ${aimJobPlace(job.seed)}`,
    brief: `${UNIT_WORDS[job.site]} ${handedOverWords(job.aim)}`,
    by: 'a colleague, this morning',
  };
}

/** The scenario files of the program that an id may name: those that come with it, and the job of one aim that is made of the id. */
export function filesFor(id: string, shipped: readonly unknown[]): readonly unknown[] {
  const job = aimJobIn(id);
  return job === null ? shipped : [aimJob(job, aimJobWords(job))];
}

/** Where a job is, by its seed. */
export function aimJobPlace(seed: number): string {
  const { place, number } = drawnAddress(seed);
  return `${PLACES[Math.floor(place * PLACES.length)]}, number ${number}`;
}

/** What was done before and what comes after, so that it is plain what a verdict can rest on. */
function handedOverWords(aim: AimId): string {
  const before =
    AIMS[0].id === aim ? 'Nothing is tested yet' : 'The tests before this aim are done and signed';
  return AIMS.at(-1)?.id === aim
    ? `${before}; these are the last.`
    : `${before}; those after it are not begun, and are another day’s work.`;
}
