/**
 * What a scenario file means that leaves it out, as a bench fills it in without the schema (`scenarioIn`). What it may say
 * is in schema.ts, which has what is usual from here.
 */

export const BREAKER = { breakingCapacity: 6000 } as const;

export const CIRCUIT = {
  method: 'C',
  ambient: 30,
  grouped: 1,
  insulated: 0,
  conditionalRating: null,
  residualDevice: null,
  points: 1,
  faultProtection: 'overcurrent',
  parallelEarth: null,
} as const;

/** Where the house has another earth. */
export const HOUSE = { metEarthResistance: null } as const;

/** A second charging point on the service. */
export const NEXT_POINT = { draws: 0 } as const;

export const SITE = {
  electrodeResistance: null,
  sourceElectrodeResistance: 0.5,
  metEarthResistance: null,
  service: null,
  otherLoads: [],
  neighbours: [],
} as const;

export const UNIT = {
  openPen: 'none',
  openPenRidesOut: true,
  openPenUnpowered: 'closed',
  surgeArrester: false,
  ventilation: false,
  insulationTestVoltageMax: 250,
  startUp: 8,
  startDelay: 0,
  permission: 'open',
  authoriseBefore: false,
  loadLimit: null,
  serviceLimit: null,
  leastVoltage: null,
  schedule: null,
  hoursEnd: 'at-once',
  overCode: {},
  holdInB: true,
  diodeCheck: 'before-closing',
  poleBleed: null,
  lostLine: 'stops',
  clearsBy: {},
} as const;

export const MARKING = { weights: {}, pass: 70, setAside: [] } as const;

export const HANDOVER = { left: [] } as const;

export const FILE = {
  task: 'verify',
  aim: null,
  symptom: null,
  accept: [],
  lines: {},
  own: [],
  marking: {},
  handover: null,
} as const;
