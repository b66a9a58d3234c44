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

/** Told of the unit in the brief; nothing of it depends on what is wrong. */
const UNIT_WORDS: Readonly<Record<SiteId, string>> = {
  'single-pme': 'A single-phase tethered unit on a PME supply (TN-C-S).',
  'single-tns': 'A single-phase tethered unit on a TN-S supply.',
  'single-tt': 'A single-phase tethered unit on a TT supply with its own electrode.',
  'three-socket': 'A three-phase unit with a socket-outlet, on a TN-S supply.',
};

/** Invented, like every site of the project. */
const PLACES: readonly string[] = [
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
];
const GREATEST_NUMBER = 60;

/** A day's clock; what is tested does not hang on it. */
const CLOCK = '2026-05-12T10:00';

/**
 * The catalogue's faults that may be drawn; each shows in the aim's tests and in none that is handed over. None for
 * proving dead: nothing of the catalogue keeps a circuit alive that is isolated, so there every job is sound.
 */
export const faultsOf = ({ aim, site }: Pick<AimJob, 'aim' | 'site'>): readonly string[] =>
  (FAULTS as Readonly<Record<SiteId, Readonly<Record<AimId, readonly string[]>>>>)[site][aim];

/** The scenario file's object. `question`: the aim in words, which the title begins with. */
export function aimJob(job: AimJob, question: string): object {
  const { aim, site, seed } = job;
  const draw = drawer(seed);
  const faults = faultsOf(job);
  const isSound = draw(`aim job: ${aim} ${site}: sound`) < 0.5;
  const drawn = oneOf(faults, draw(`aim job: ${aim} ${site}: fault`));
  const place = oneOf(PLACES, draw('aim job: place')) ?? '';
  const number = 1 + Math.floor(GREATEST_NUMBER * draw('aim job: number'));
  return jobWith(job, {
    title: `${question} ${place}, number ${number}`,
    faults: isSound || drawn === undefined ? [] : [drawn],
  });
}

const oneOf = <T>(list: readonly T[], share: number): T | undefined => list[Math.floor(share * list.length)];

/** The same with these faults, whatever the draw says: what the table is worked out with. */
export function jobWith(
  { aim, site, seed }: AimJob,
  { title, faults }: { readonly title: string; readonly faults: readonly string[] },
): object {
  const { site: installation, unit, rules } = INSTALLATIONS[site];
  const before = testsBefore(aim);
  return {
    format: 1,
    id: aimJobId({ aim, site, seed }),
    title,
    brief: `${UNIT_WORDS[site]} ${handedOverWords(before.length > 0, aim)}`,
    rules,
    clock: CLOCK,
    site: installation,
    unit,
    faults: faults.map((fault) => ({ fault })),
    allowed: aimNamed(aim)?.tests,
    ...(before.length === 0 ? {} : { handover: { by: 'a colleague, this morning', done: before } }),
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

/** What was done before and what comes after, so that it is plain what a verdict can rest on. */
function handedOverWords(hasBefore: boolean, aim: AimId): string {
  const isLast = AIMS.at(-1)?.id === aim;
  const before = hasBefore ? 'The tests before this aim are done and signed' : 'Nothing is tested yet';
  return isLast
    ? `${before}; these are the last.`
    : `${before}; those after it are not begun, and are another day’s work.`;
}
