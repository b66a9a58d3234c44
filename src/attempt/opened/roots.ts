/**
 * What is truly other in one installation than in another: parts, the hidden design, devices, what can be seen. Each
 * with the place on an opened drawing where it sits, and the entry of the catalogue that brings it about. Knows
 * parts by their names in the network, and no fault by its id.
 */
import type { FaultChoice } from '../../faults/catalogue.ts';
import { faultsAmong, withFaults } from '../../faults/catalogue.ts';
import type { Fault } from '../../faults/fault.ts';
import type { Parts } from '../../faults/parts.ts';
import type { Live } from '../../laws/conductors.ts';
import { LIVES } from '../../laws/conductors.ts';
import type { Amps, Ohms, Seconds, Volts } from '../../laws/quantities.ts';
import type { Part } from '../../site/part.ts';
import { OPEN, sameSight } from '../../site/part.ts';
import type { UnitDesign } from '../../unit/design.ts';
import type { PlainValue, PlainWhat, Value, What } from './value.ts';
import { resistanceOf, sameValue } from './value.ts';

/** A spot on the opened drawing, such as `pole.L1` or `pe.supply`. */
export type Place = string;

export interface Root {
  readonly place: Place;
  readonly what: What;
  readonly unit: Value;
  readonly twin: Value;
}

/** A root with what the catalogue says of it; null where it comes from something else. */
export interface Cause extends Root {
  readonly fault: Fault | null;
}

const keyOf = ({ place, what }: Root): string => `${place} ${JSON.stringify(what)}`;

/** Every root of an installation that the choices brought about, each with its entry. */
export function causesOf(unit: Parts, twin: Parts, choices: readonly FaultChoice[]): readonly Cause[] {
  const roots = rootsOf(unit, twin);
  if (roots.length === 0) return [];
  const brought = choices.map((choice) => ({
    fault: faultsAmong([choice])[0] ?? null,
    keys: new Set(rootsOf(withFaults(twin, [choice]), twin).map(keyOf)),
  }));
  return roots.map((root) => ({
    ...root,
    fault: brought.find(({ keys }) => keys.has(keyOf(root)))?.fault ?? null,
  }));
}

export const rootsOf = (unit: Parts, twin: Parts): readonly Root[] => [
  ...designRoots(unit.design, twin.design),
  ...partRoots(unit, twin),
  ...deviceRoots(unit, twin),
  ...unit.visible
    .filter(({ what }) => !twin.visible.some((other) => sameSight(other.what, what)))
    .map(({ where, what }) => ({
      place: `seen.${where}`,
      what: { id: 'seen', where } as const,
      unit: { id: 'found', found: [{ where, what }] } as const,
      twin: { id: 'nothing-amiss' } as const,
    })),
];

/** A part of one of several conductors, or between two of them, which its id names. */
type OfConductor = Extract<What, { of: string }>['id'] | 'pole';

/** A part's place and what it is, by the part's id; `$1` is the conductor. */
const PART_PLACES: readonly (readonly [RegExp, Place, PlainWhat | OfConductor])[] = [
  [/^(?:source\.PE|source\.N|pen)$/, 'supply', 'supply-return'],
  [/^source\./, 'supply', 'supply-line'],
  [/^earthing$/, 'earthing', 'earthing-conductor'],
  [/^electrode$/, 'electrode', 'electrode'],
  [/^electrode\.conductor$/, 'electrode', 'electrode-conductor'],
  [/^met\.earth$/, 'met', 'met-ground-path'],
  [/^circuit\.PE$/, 'pe.supply', 'circuit-protective'],
  [/^shared\.load$/, 'circuit.L1', 'shared-load'],
  [/^other-way\./, 'origin.breaker', 'other-way'],
  [/^circuit\.parallel$/, 'pe.supply', 'building-metal'],
  [/^circuit\.(L\d|N)$/, 'circuit.$1', 'circuit-conductor'],
  [/^insulation\.circuit\.(.+)$/, 'insulation.circuit', 'circuit-insulation'],
  [/^insulation\.(?:outlet|cable)\.PE-CP$/, 'pilot.outlet', 'pilot-insulation'],
  [/^insulation\.(?:outlet|cable)\.(.+)$/, 'insulation.outlet', 'outlet-insulation'],
  [/^unit\.PE$/, 'pe.pole', 'pe-pole'],
  [/^outlet\.PE$/, 'pe.outlet', 'outlet-pe'],
  [/^cable\.PE$/, 'pe.cable', 'cable-pe'],
  [/^case$/, 'case', 'case-bond'],
  [/^contactor\.(L\d|N)$/, 'pole.$1', 'pole'],
  [/^pilot\.source$/, 'pilot.resistor', 'pilot-source'],
  [/^(?:pilot\.conductor|cable\.CP)$/, 'pilot.conductor', 'pilot-conductor'],
  [/^proximity\.source$/, 'proximity', 'coding-reader'],
  [/^coding\./, 'coding', 'coding-resistor'],
  [/^test-button$/, 'residual', 'test-button'],
];
/** Where a part that only one side has is drawn, by a node that it is joined to. */
const NODE_PLACES: readonly (readonly [RegExp, Place, PlainWhat])[] = [
  [/^pilot$/, 'pilot.conductor', 'across-pilot'],
  [/PP$/, 'proximity', 'proximity-contact'],
  [/^bar$/, 'bar', 'path-from-bar'],
];

function seatOf(part: Part, extra: boolean): Pick<Root, 'place' | 'what'> {
  for (const [pattern, place, what] of PART_PLACES) {
    const match = pattern.exec(part.id);
    if (match !== null)
      return { place: place.replace('$1', match[1] ?? ''), what: whatOf(what, match[1] ?? '') };
  }
  if (extra)
    for (const [pattern, place, what] of NODE_PLACES)
      if (pattern.test(part.a) || pattern.test(part.b)) return { place, what: { id: what } };
  return { place: 'control', what: { id: 'electronics' } };
}

function whatOf(id: PlainWhat | OfConductor, of: string): What {
  switch (id) {
    case 'pole':
      return { id, live: of as Live };
    case 'circuit-conductor':
    case 'circuit-insulation':
    case 'outlet-insulation':
      return { id, of };
    default:
      return { id };
  }
}

function partRoots(unit: Parts, twin: Parts): readonly Root[] {
  const sound = new Map(twin.parts.map((part) => [part.id, part]));
  return [
    ...unit.parts.flatMap((part): readonly Root[] => {
      const other = sound.get(part.id);
      if (other === undefined)
        return part.resistance >= 1e9
          ? []
          : [{ ...seatOf(part, true), unit: resistanceOf(part.resistance), twin: { id: 'none' } }];
      const values = partValues(part, other);
      return values === null ? [] : [{ ...seatOf(part, false), ...values }];
    }),
    ...arresterRoots(unit, twin),
    ...gapRoots(unit, twin),
  ];
}

const conductorOf = (node: string): string => node.split('.')[1] ?? node;

/** What of a part differs; null where nothing does that anybody could notice. */
function partValues(part: Part, other: Part): Pick<Root, 'unit' | 'twin'> | null {
  if (part === other) return null;
  if (conductorOf(part.b) !== conductorOf(other.b))
    return {
      unit: { id: 'lands-on', conductor: conductorOf(part.b) },
      twin: { id: 'lands-on', conductor: conductorOf(other.b) },
    };
  if (part.a !== other.a) return { unit: { id: 'from-elsewhere' }, twin: { id: 'from-its-own-way' } };
  if (part.warms !== other.warms)
    return {
      unit: { id: 'warms', cold: resistanceOf(part.resistance) },
      twin: resistanceOf(other.resistance),
    };
  const resistance = (ohms: Ohms) => resistanceOf(ohms, part.id.startsWith('insulation.'));
  if (part.dries !== other.dries)
    return {
      unit: { id: 'dries-from', resistance: resistance(part.resistance) },
      twin: resistance(other.resistance),
    };
  if (part.susceptance !== other.susceptance) return { unit: leaks(part), twin: leaks(other) };
  if (part.contact === 'under-cover')
    return {
      unit: { id: 'under-cover', resistance: resistance(part.openResistance ?? OPEN) },
      twin: { id: 'cover-or-not', resistance: resistance(other.resistance) },
    };
  if (part.contact !== other.contact)
    return {
      unit: { id: 'while-bent', resistance: resistance(part.openResistance ?? OPEN) },
      twin: { id: 'bent-or-not', resistance: resistance(other.resistance) },
    };
  if (part.openResistance !== other.openResistance)
    return {
      unit: { id: 'across-open', resistance: resistanceOf(part.openResistance ?? OPEN) },
      twin: { id: 'across-open', resistance: resistanceOf(other.openResistance ?? OPEN) },
    };
  if (part.resistance === other.resistance) return null;
  return { unit: resistance(part.resistance), twin: resistance(other.resistance) };
}

/** What a capacitance passes at 230 V. */
const leaks = ({ susceptance = 0 }: Part): Value => ({ id: 'leaks', amps: 230 * susceptance });

/** A gap that a voltage jumps, where the other has none. */
const gapRoots = (unit: Parts, twin: Parts): readonly Root[] =>
  unit.oneWays
    .filter(({ id, a }) => a.startsWith('supply.') && !twin.oneWays.some((other) => other.id === id))
    .map(({ drop }) => ({
      place: 'insulation.circuit',
      what: { id: 'flashes-over' },
      unit: volts(drop),
      twin: { id: 'none' },
    }));

function arresterRoots(unit: Parts, twin: Parts): readonly Root[] {
  const other = twin.oneWays.find(({ id, drop }) => unit.oneWays.some((x) => x.id === id && x.drop !== drop));
  const own = unit.oneWays.find(({ id }) => id === other?.id);
  if (other === undefined || own === undefined) return [];
  return [
    {
      place: 'arrester',
      what: { id: 'arrester-from' },
      unit: volts(own.drop),
      twin: volts(other.drop),
    },
  ];
}

const volts = (of: Volts): Value => ({ id: 'volts', volts: of });
const seconds = (of: Seconds): Value => ({ id: 'seconds', seconds: of });
const amps = (of: Amps): Value => ({ id: 'amps', amps: of });
const type = (of: string | null | undefined): Value =>
  of == null ? { id: 'none' } : { id: 'type', type: of };

const limitOf = ({ sheet: { serviceLimit }, serviceLimitOver }: UnitDesign): Value =>
  serviceLimit === null ? { id: 'none' } : amps(serviceLimit + serviceLimitOver);

const SENSOR = {
  right: 'sensor-right',
  reversed: 'sensor-reversed',
  'own circuit': 'sensor-own-circuit',
  'past parting': 'sensor-past-parting',
} as const satisfies Record<UnitDesign['serviceSensor'], PlainValue>;

/** What may differ in the design: place, what it is, and its value. */
const DESIGN: readonly (readonly [Place, PlainWhat, (design: UnitDesign) => Value | PlainValue])[] = [
  ['contactor.watch', 'watching-contact', (d) => (d.weldCheck === 'none' ? 'not-read' : 'read')],
  ['control', 'pilot-positive', (d) => volts(d.pilot.positive)],
  ['control', 'pilot-negative', (d) => volts(d.pilot.negative)],
  ['control', 'oscillator-frequency', (d) => ({ id: 'hertz', hertz: d.pilot.frequency })],
  ['control', 'b-down-to', (d) => volts(d.thresholds[1])],
  ['control', 'c-down-to', (d) => volts(d.thresholds[2])],
  ['control', 'd-down-to', (d) => volts(d.thresholds[3])],
  ['control', 'low-half', (d) => (d.diodeRule === 'ignored' ? 'not-looked-at' : 'looked-at')],
  ['control', 'pilot-near-zero', (d) => (d.shortRule === 'ignored' ? 'for-a-request' : 'for-a-short')],
  ['control', 'offer', (d) => offerOf(d.dutyError)],
  ['control', 'acts-after', (d) => seconds(d.timing.debounce)],
  ['control', 'closes-after', (d) => seconds(d.timing.beforeClosing)],
  ['control', 'limit-after', (d) => seconds(d.timing.limit)],
  ['control', 'after-trip', (d) => closing(d.closesAfterTrip)],
  ['control', 'latch-memory', (d) => (d.latchMemory === 'kept' ? 'is-kept' : 'is-forgotten')],
  ['control', 'pause', (d) => seconds(d.timing.pause)],
  ['control', 'watched-lines', (d) => (d.watchedLines === 'all' ? 'every-line' : 'own-line-alone')],
  ['supply', 'service-sensor', (d) => SENSOR[d.serviceSensor]],
  ['control', 'service-limit', (d) => limitOf(d)],
  ['proximity', 'cable-coding', (d) => (d.codingRule === 'ignored' ? 'not-looked-at' : 'looked-at')],
  ['control', 'over-code', (d) => (d.overCodeRule === 'acted on' ? 'cut-off' : 'not-looked-at')],
  ['coil', 'opens-after', (d) => seconds(d.timing.opening)],
  ['lock', 'lock-motor', (d) => lockOf(d.lock)],
  ['lock', 'lock-feedback', (d) => (d.lock.feedback === 'true' ? 'true' : 'always-held')],
  ['pe.pole', 'open-pen-measure', (d) => (d.openPen.senses ? 'senses' : 'senses-nothing')],
  ['pe.pole', 'its-pe-pole', (d) => (d.openPen.opensEarth ? 'opens-with-others' : 'stays-closed')],
  ['pe.pole', 'open-pen-after', (d) => seconds(d.timing.openPen)],
  ['residual', 'ac-type', (d) => type(d.residualType)],
  ['residual', 'ac-from', (d) => amps(d.residualPickup)],
  ['residual', 'ac-later-by', (d) => seconds(d.residualDelay)],
  ['residual', 'first-later-by', (d) => seconds(d.firstTripLater)],
  [
    'coil',
    'sticks',
    (d) => (d.sticks === null ? 'never' : { id: 'one-in', count: d.sticks.oneIn, seconds: d.sticks.seconds }),
  ],
  ['residual', 'a-trip', (d) => (d.tripOpens ? 'opens' : 'opens-nothing')],
  ['direct', 'dc-from', (d) => amps(d.directPickup)],
  ['direct', 'dc-later-by', (d) => seconds(d.directDelay)],
  ['direct', 'dc-feels', (d) => (d.directFeels === 'both' ? 'both-ways' : 'one-way')],
];

const offerOf = (error: number): Value => (error === 0 ? { id: 'as-meant' } : { id: 'offer-off', by: error });
const closing = (after: Seconds | null): Value =>
  after === null ? { id: 'open-until-reset' } : { id: 'closes-again', after };
const lockOf = ({ engages, releases }: UnitDesign['lock']): PlainValue =>
  engages && releases ? 'holds-and-lets-go' : engages ? 'never-lets-go' : 'never-holds';
const poleOf = ({ welded, stuckOpen }: UnitDesign['poles']['N']): Value => ({
  id: welded ? 'welded' : stuckOpen === true ? 'never-closes' : 'follows-coil',
});

const asValue = (value: Value | PlainValue): Value => (typeof value === 'string' ? { id: value } : value);

function designRoots(unit: UnitDesign, twin: UnitDesign): readonly Root[] {
  if (unit === twin) return [];
  return [
    ...LIVES.map(
      (live): Root => ({
        place: `pole.${live}`,
        what: { id: 'pole', live },
        unit: poleOf(unit.poles[live]),
        twin: poleOf(twin.poles[live]),
      }),
    ),
    ...DESIGN.map(
      ([place, what, of]): Root => ({
        place,
        what: { id: what },
        unit: asValue(of(unit)),
        twin: asValue(of(twin)),
      }),
    ),
  ].filter((root) => !sameValue(root.unit, root.twin));
}

function deviceRoots(unit: Parts, twin: Parts): readonly Root[] {
  const values = ({
    site,
    upstreamDevice,
    upstreamFirstLater,
    tester,
    detector,
  }: Parts): readonly (readonly [Place, PlainWhat, Value])[] => [
    ['supply', 'site-voltage', volts(site.voltage)],
    ['supply', 'neighbours', neighboursOf(site.neighbours)],
    ['origin.breaker', 'breaker-type', type(site.circuit.breaker.type)],
    ['origin.breaker', 'breaker-rating', amps(site.circuit.breaker.rating)],
    ['circuit.L1', 'cable-laid', laidOf(site.circuit)],
    ['supply', 'service', serviceOf(site.service)],
    ['origin.residual', 'upstream-type', type(site.circuit.residualDevice?.type)],
    ['origin.residual', 'upstream-rated', ratedOf(site.circuit.residualDevice?.rated)],
    ['origin.residual', 'upstream-poles', polesOf(site)],
    ['tester', 'tester-lead', resistanceOf(tester.lead)],
    ['tester', 'tester-null', { id: tester.nulls ? 'is-kept' : 'is-forgotten' }],
    ['tester', 'tester-scale', { id: 'times', times: tester.gain }],
    ['tester', 'detector-lead', { id: detector.leadParts ? 'parts-in-use' : 'holds' }],
    ['tester', 'tester-battery', { id: 'times', times: tester.battery }],
    ['origin.residual', 'upstream-first-later', seconds(upstreamFirstLater)],
    ['origin.residual', 'upstream', { id: upstreamDevice === 'acts' ? 'acts' : 'does-not-act' }],
  ];
  const other = values(twin);
  return values(unit).flatMap(([place, what, value], i) => {
    const meant = other[i]?.[2] ?? value;
    return sameValue(value, meant) ? [] : [{ place, what: { id: what }, unit: value, twin: meant }];
  });
}

const ratedOf = (rated: Amps | undefined): Value => (rated === undefined ? { id: 'none' } : amps(rated));
const polesOf = ({ phases, circuit: { residualDevice } }: Parts['site']): Value => ({
  id: residualDevice === null ? 'none' : residualDevice.poles > phases ? 'every-live' : 'lines-alone',
});

const laidOf = ({ method, lineArea, insulated }: Parts['site']['circuit']): Value => ({
  id: 'laid',
  method,
  lineArea,
  insulated,
});

const serviceOf = (service: Parts['site']['service']): Value =>
  service === null ? { id: 'not-stated' } : { id: 'service', rating: service.rating, demand: service.demand };

const neighboursOf = (loads: Parts['site']['neighbours']): Value =>
  loads.length === 0 ? { id: 'none' } : { id: 'neighbours', loads };
