/**
 * What every operation says besides its name, in the order in which logs have it, each with what it means where it is
 * left out: undefined where nothing does. What may be said is in operationSchema.ts and readings/schemas.ts.
 */

/**
 * When the detector was tried on a proving unit: before the test and after it, before it alone, not at all. Without a
 * word of it, as in scripts and logs from before it was asked, it was both.
 */
export const PROOFS = ['both', 'before', 'none'] as const;
export type DetectorProof = (typeof PROOFS)[number];

/** Buttons that the contract's `press` knows; `reset` is an operation of its own. */
export const PRESSABLE = ['residual-test', 'stop', 'emergency', 'authorise', 'override-delay'] as const;

const NOTHING = {};
const ITS_ENDS = { between: undefined };

export const OPERATIONS = {
  isolate: { at: 'origin', poles: 'all', lock: true },
  /** Left out, everything that is off goes on. */
  energise: { at: undefined },
  'open-cover': NOTHING,
  'close-cover': NOTHING,
  'check-instruments': { known: undefined },
  discharge: NOTHING,
  'null-leads': { on: true },
  'prove-dead': { at: undefined, tool: 'two-pole', proof: 'both' },
  disconnect: { what: undefined },
  reconnect: { what: undefined },
  'put-right': { what: undefined },
  link: ITS_ENDS,
  unlink: ITS_ENDS,
  vehicle: {
    plugged: undefined,
    state: undefined,
    coding: undefined,
    pilot: undefined,
    diode: undefined,
    earth: undefined,
    load: undefined,
    leakage: undefined,
  },
  wait: { seconds: undefined },
  'pull-plug': NOTHING,
  press: { button: undefined },
  supply: {
    pen: undefined,
    voltage: undefined,
    missing: undefined,
    neighbours: undefined,
    loadLimit: undefined,
    siteLoad: undefined,
    nextPoint: undefined,
  },
  guard: NOTHING,
  inspect: NOTHING,
  'flex-cable': { on: true },
  reset: { what: undefined },
  stop: { why: undefined },
} as const;

/** Of `measure`, by its quantity. */
export const MEASUREMENTS = {
  continuity: ITS_ENDS,
  insulation: { between: undefined, volts: undefined },
  voltage: { between: undefined, tool: 'two-pole' },
  pilot: NOTHING,
  coding: NOTHING,
  loop: { between: undefined, current: 'low' },
  residual: {
    line: 'L1',
    waveform: undefined,
    mode: undefined,
    amps: undefined,
    seconds: undefined,
    angle: undefined,
    at: 'outlet',
  },
  'opening-time': { of: 'C-to-B' },
  electrode: NOTHING,
  'phase-sequence': { at: undefined },
} as const;

/** What is said, and what is usual where it is not; what neither says is not in it. */
export const filled = (usual: object, said: object): object => known({ ...usual, ...known(said) });

const known = (said: object): object =>
  Object.fromEntries(Object.entries(said).filter(([, value]) => value !== undefined));
