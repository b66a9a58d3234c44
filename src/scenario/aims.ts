/**
 * The twelve aims: what a verification is to find out, one question each, with the tests that answer it, in order. Every
 * test action belongs to exactly one. The questions in words are in src/words/aims.ts. And the kinds of site that they
 * are asked on.
 */

interface AimTests {
  readonly id: string;
  /** Test actions by their ids; those that the papers give nothing to test for are left out of a job. */
  readonly tests: readonly string[];
}

export const AIMS = [
  { id: 'design', tests: ['papers'] },
  { id: 'dead', tests: ['instruments', 'isolate', 'prove-dead'] },
  { id: 'earth', tests: ['pe-circuit', 'pe-outlet', 'electrode', 'earths-apart', 'ze'] },
  { id: 'insulation', tests: ['insulation-circuit', 'insulation-unit', 'insulation-outlet'] },
  { id: 'wiring', tests: ['inspect', 'r1r2-polarity', 'poles-open', 'coding', 'make-good'] },
  {
    id: 'supply',
    tests: ['pfc', 'supply-volts', 'energise', 'supply-return', 'lost-line', 'open-pen'],
  },
  { id: 'outlet-dead', tests: ['state-a', 'unplug', 'release'] },
  { id: 'offer', tests: ['state-b', 'coding-sizes', 'limit', 'next-point', 'sharing'] },
  { id: 'lets-go', tests: ['hold', 'state-c', 'c-to-b', 'coding-in-use', 'state-d', 'stop'] },
  { id: 'clears', tests: ['loop', 'volt-drop'] },
  {
    id: 'leakage',
    tests: [
      'residual-origin',
      'residual-half',
      'residual-rated',
      'residual-five',
      'residual-ramp',
      'half-wave',
      'dc-ramp',
      'dc-step',
      'residual-again',
    ],
  },
  {
    id: 'refuses',
    tests: ['pilot-short', 'pilot-open', 'diode', 'diode-in-c', 'pe-open', 'recovery', 'finish'],
  },
] as const satisfies readonly AimTests[];

export type AimId = (typeof AIMS)[number]['id'];
export type Aim = AimTests & { readonly id: AimId };

/** Null where no aim has this id. */
export const aimNamed = (id: string): Aim | null => AIMS.find((aim) => aim.id === id) ?? null;

const AIM_OF: ReadonlyMap<string, AimId> = new Map(
  AIMS.flatMap(({ id, tests }) => tests.map((test): [string, AimId] => [test, id])),
);

/** The aim that a test action belongs to; null where there is no such test. */
export const aimOf = (test: string): AimId | null => AIM_OF.get(test) ?? null;

/**
 * Supply and unit: single-phase and tethered on each earthing, three-phase with a socket-outlet, a circuit on an
 * electrode of its own at a house on PME, and a unit that shares its service with another charging point.
 */
export const SITES = [
  'single-pme',
  'single-tns',
  'single-tt',
  'three-socket',
  'single-island',
  'single-shared',
] as const;
export type SiteId = (typeof SITES)[number];

export const isSite = (id: string): id is SiteId => (SITES as readonly string[]).includes(id);

/** What a job of one aim is made of. */
export interface AimJob {
  readonly aim: AimId;
  readonly site: SiteId;
  /** A whole number from 0 to `GREATEST_SEED`. */
  readonly seed: number;
}

export const GREATEST_SEED = 2_147_483_647;

/** The id of the job's scenario. */
export const aimJobId = ({ aim, site, seed }: AimJob): string => `aim-${aim}-${site}-${seed}`;

/** The job that a scenario's id names; null where it names none. */
export function aimJobIn(id: string): AimJob | null {
  const seed = Number(/-(\d{1,10})$/.exec(id)?.[1] ?? Number.NaN);
  const jobs = AIMS.flatMap(({ id: aim }) => SITES.map((site) => ({ aim, site, seed })));
  return seed <= GREATEST_SEED ? (jobs.find((job) => aimJobId(job) === id) ?? null) : null;
}
