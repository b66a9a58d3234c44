/**
 * What is truly other in one installation than in another: parts, the hidden design, devices, what can be seen. Each
 * with the place on an opened drawing where it sits, and the entry of the catalogue that brings it about. Knows
 * parts by their names in the network, and no fault by its id.
 */
import type { FaultChoice } from '../faults/catalogue.ts';
import { faultsAmong, withFaults } from '../faults/catalogue.ts';
import type { Fault } from '../faults/fault.ts';
import type { Parts } from '../faults/parts.ts';
import { LIVES } from '../laws/conductors.ts';
import type { Part } from '../site/part.ts';
import { OPEN } from '../site/part.ts';
import type { UnitDesign } from '../unit/design.ts';
import { ampsText, insulationText, ohmsText, secondsText, shareText, voltsText } from './inWords.ts';

/** A spot on the opened drawing, such as `pole.L1` or `pe.supply`. */
export type Place = string;

export interface Root {
  readonly place: Place;
  readonly what: string;
  readonly unit: string;
  readonly twin: string;
}

/** A root with what the catalogue says of it; null where it comes from something else. */
export interface Cause extends Root {
  readonly fault: Fault | null;
}

const keyOf = ({ place, what }: Root): string => `${place} ${what}`;

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
    .filter(({ what }) => !twin.visible.some((other) => other.what === what))
    .map(({ where, what }) => ({
      place: `seen.${where}`,
      what: `to be seen: ${where}`,
      unit: what,
      twin: 'nothing amiss',
    })),
];

/** Names of a part's place and of what it is, by the part's id; `$1` is the conductor. */
const PART_PLACES: readonly (readonly [RegExp, Place, string])[] = [
  [/^(?:source\.PE|source\.N|pen)$/, 'supply', 'supply’s return conductor'],
  [/^source\./, 'supply', 'supply’s line'],
  [/^earthing$/, 'earthing', 'earthing conductor'],
  [/^electrode$/, 'electrode', 'earth electrode'],
  [/^electrode\.conductor$/, 'electrode', 'electrode’s clamp and conductor'],
  [/^met\.earth$/, 'met', 'ground path of the main earthing terminal'],
  [/^circuit\.PE$/, 'pe.supply', 'circuit’s protective conductor'],
  [/^circuit\.parallel$/, 'pe.supply', 'metal of the building, beside the protective conductor'],
  [/^circuit\.(L\d|N)$/, 'circuit.$1', 'circuit’s $1 conductor'],
  [/^insulation\.circuit\.(.+)$/, 'insulation.circuit', 'circuit’s insulation, $1'],
  [/^insulation\.(?:outlet|cable)\.PE-CP$/, 'pilot.outlet', 'insulation from pilot to PE'],
  [/^insulation\.(?:outlet|cable)\.(.+)$/, 'insulation.outlet', 'insulation at the outlet, $1'],
  [/^unit\.PE$/, 'pe.pole', 'PE pole'],
  [/^outlet\.PE$/, 'pe.outlet', 'PE from the unit’s bar to the outlet'],
  [/^cable\.PE$/, 'pe.cable', 'PE of the outlet’s cable'],
  [/^case$/, 'case', 'bond of the exposed metal'],
  [/^contactor\.(L\d|N)$/, 'pole.$1', '$1 pole'],
  [/^pilot\.source$/, 'pilot.resistor', 'pilot’s source resistance'],
  [/^(?:pilot\.conductor|cable\.CP)$/, 'pilot.conductor', 'pilot conductor'],
  [/^proximity\.source$/, 'proximity', 'resistor that reads the coding'],
  [/^coding\./, 'coding', 'coding resistor'],
  [/^test-button$/, 'residual', 'resistor behind the test button'],
];
/** Where a part that only one side has is drawn, by a node that it is joined to. */
const NODE_PLACES: readonly (readonly [RegExp, Place, string])[] = [
  [/^pilot$/, 'pilot.conductor', 'resistor across the pilot'],
  [/PP$/, 'proximity', 'resistance in the proximity contact'],
  [/^bar$/, 'bar', 'path from the PE bar to elsewhere'],
];

function seatOf(part: Part, extra: boolean): { place: Place; what: string } {
  for (const [pattern, place, what] of PART_PLACES) {
    const match = pattern.exec(part.id);
    if (match !== null)
      return { place: place.replace('$1', match[1] ?? ''), what: what.replace('$1', match[1] ?? '') };
  }
  if (extra)
    for (const [pattern, place, what] of NODE_PLACES)
      if (pattern.test(part.a) || pattern.test(part.b)) return { place, what };
  return { place: 'control', what: 'electronics' };
}

function partRoots(unit: Parts, twin: Parts): readonly Root[] {
  const sound = new Map(twin.parts.map((part) => [part.id, part]));
  return [
    ...unit.parts.flatMap((part): readonly Root[] => {
      const other = sound.get(part.id);
      if (other === undefined)
        return part.resistance >= 1e9
          ? []
          : [{ ...seatOf(part, true), unit: ohmsText(part.resistance), twin: 'none' }];
      const words = partWords(part, other);
      return words === null ? [] : [{ ...seatOf(part, false), ...words }];
    }),
    ...arresterRoots(unit, twin),
  ];
}

const conductorOf = (node: string): string => node.split('.')[1] ?? node;

/** What of a part differs, in words; null where nothing does that anybody could notice. */
function partWords(part: Part, other: Part): Pick<Root, 'unit' | 'twin'> | null {
  if (part === other) return null;
  if (conductorOf(part.b) !== conductorOf(other.b))
    return { unit: `lands on ${conductorOf(part.b)}`, twin: `lands on ${conductorOf(other.b)}` };
  const words = part.id.startsWith('insulation.') ? insulationText : ohmsText;
  if (part.contact !== other.contact)
    return {
      unit: `${words(part.openResistance ?? OPEN)} while it is bent`,
      twin: `${words(other.resistance)}, bent or not`,
    };
  if (part.openResistance !== other.openResistance)
    return {
      unit: `${ohmsText(part.openResistance ?? OPEN)} across it when open`,
      twin: `${ohmsText(other.openResistance ?? OPEN)} across it when open`,
    };
  if (part.resistance === other.resistance) return null;
  return { unit: words(part.resistance), twin: words(other.resistance) };
}

function arresterRoots(unit: Parts, twin: Parts): readonly Root[] {
  const other = twin.oneWays.find(({ id, drop }) => unit.oneWays.some((x) => x.id === id && x.drop !== drop));
  const own = unit.oneWays.find(({ id }) => id === other?.id);
  if (other === undefined || own === undefined) return [];
  return [
    {
      place: 'arrester',
      what: 'surge arrester conducts from',
      unit: voltsText(own.drop),
      twin: voltsText(other.drop),
    },
  ];
}

const SENSOR_WORDS = {
  right: 'round the incoming line, the right way',
  reversed: 'round the incoming line, the wrong way',
  'own circuit': 'round the unit’s own circuit',
} as const satisfies Record<UnitDesign['serviceSensor'], string>;

/** What may differ in the design: place, what it is, and its value in words. */
const DESIGN: readonly (readonly [Place, string, (design: UnitDesign) => string])[] = [
  [
    'contactor.watch',
    'contact that reports the poles',
    (d) => (d.weldCheck === 'none' ? 'not read' : 'read'),
  ],
  ['control', 'pilot’s positive level', (d) => voltsText(d.pilot.positive)],
  ['control', 'pilot’s negative level', (d) => voltsText(d.pilot.negative)],
  ['control', 'pilot’s frequency', (d) => `${d.pilot.frequency.toFixed(0)}\u202fHz`],
  ['control', 'taken for B down to', (d) => voltsText(d.thresholds[1])],
  ['control', 'taken for C down to', (d) => voltsText(d.thresholds[2])],
  ['control', 'taken for D down to', (d) => voltsText(d.thresholds[3])],
  ['control', 'low half of the pilot', (d) => (d.diodeRule === 'ignored' ? 'not looked at' : 'looked at')],
  [
    'control',
    'pilot near 0 V',
    (d) => (d.shortRule === 'ignored' ? 'taken for a request' : 'taken for a short'),
  ],
  ['control', 'offer', (d) => offerWords(d.dutyError)],
  ['control', 'acts on a change of the pilot after', (d) => secondsText(d.timing.debounce)],
  ['control', 'closes after', (d) => secondsText(d.timing.beforeClosing)],
  ['control', 'follows a limit after', (d) => secondsText(d.timing.limit)],
  ['control', 'after a trip', (d) => closing(d.closesAfterTrip)],
  [
    'control',
    'what has latched, when the supply comes back',
    (d) => (d.latchMemory === 'kept' ? 'is kept' : 'is forgotten'),
  ],
  ['control', 'stays steady before it offers again for', (d) => secondsText(d.timing.pause)],
  [
    'control',
    'watches for the loss of',
    (d) => (d.watchedLines === 'all' ? 'every line' : 'the line that feeds it alone'),
  ],
  ['supply', 'sensor of the service’s current', (d) => SENSOR_WORDS[d.serviceSensor]],
  ['proximity', 'cable’s coding', (d) => (d.codingRule === 'ignored' ? 'not looked at' : 'looked at')],
  [
    'control',
    'current above the cable’s coding',
    (d) => (d.overCodeRule === 'acted on' ? 'cut off' : 'not looked at'),
  ],
  ['coil', 'opens after', (d) => secondsText(d.timing.opening)],
  ['lock', 'lock’s motor', (d) => lockWords(d.lock)],
  ['lock', 'lock’s feedback', (d) => (d.lock.feedback === 'true' ? 'true' : 'always says held')],
  ['pe.pole', 'open-PEN measure', (d) => (d.openPen.senses ? 'senses' : 'senses nothing')],
  ['pe.pole', 'its PE pole', (d) => (d.openPen.opensEarth ? 'opens with the others' : 'stays closed')],
  ['pe.pole', 'open-PEN measure opens after', (d) => secondsText(d.timing.openPen)],
  ['residual', 'a.c. device is of type', (d) => d.residualType ?? 'none'],
  ['residual', 'a.c. device begins to act at', (d) => ampsText(d.residualPickup)],
  ['residual', 'a.c. device later than a sound one by', (d) => secondsText(d.residualDelay)],
  ['residual', 'a trip', (d) => (d.tripOpens ? 'opens' : 'opens nothing')],
  ['direct', 'd.c. detector begins to act at', (d) => ampsText(d.directPickup)],
  ['direct', 'd.c. detector later than a sound one by', (d) => secondsText(d.directDelay)],
  ['direct', 'd.c. detector feels', (d) => (d.directFeels === 'both' ? 'both ways round' : 'one way round')],
];

const offerWords = (error: number): string =>
  error === 0 ? 'as meant' : `${shareText(Math.abs(error))} of a period too ${error > 0 ? 'high' : 'low'}`;
const closing = (after: number | null): string =>
  after === null ? 'stays open until reset' : `closes by itself after ${secondsText(after)}`;
const lockWords = ({ engages, releases }: UnitDesign['lock']): string =>
  engages && releases ? 'holds and lets go' : engages ? 'never lets go' : 'never holds';
const poleWords = ({ welded, stuckOpen }: UnitDesign['poles']['N']): string =>
  welded ? 'welded' : stuckOpen === true ? 'never closes' : 'follows the coil';

function designRoots(unit: UnitDesign, twin: UnitDesign): readonly Root[] {
  if (unit === twin) return [];
  return [
    ...LIVES.map((live) => ({
      place: `pole.${live}`,
      what: `${live} pole`,
      unit: poleWords(unit.poles[live]),
      twin: poleWords(twin.poles[live]),
    })),
    ...DESIGN.map(([place, what, words]) => ({ place, what, unit: words(unit), twin: words(twin) })),
  ].filter((root) => root.unit !== root.twin);
}

function deviceRoots(unit: Parts, twin: Parts): readonly Root[] {
  const words = ({ site, upstreamDevice }: Parts): readonly (readonly [Place, string, string])[] => [
    ['supply', 'no-load voltage', voltsText(site.voltage)],
    ['supply', 'neighbours’ loads behind the same PEN', `${neighboursOf(site.neighbours)}`],
    ['origin.breaker', 'breaker is of type', site.circuit.breaker.type],
    ['origin.breaker', 'breaker is rated', ampsText(site.circuit.breaker.rating)],
    ['circuit.L1', 'cable is laid', laidWords(site.circuit)],
    ['supply', 'service, and what the house asks of it', serviceWords(site.service)],
    [
      'origin.residual',
      'residual device at the origin is of type',
      site.circuit.residualDevice?.type ?? 'none',
    ],
    ['origin.residual', 'residual device at the origin', upstreamDevice === 'acts' ? 'acts' : 'does not act'],
  ];
  const other = words(twin);
  return words(unit).flatMap(([place, what, value], i) => {
    const meant = other[i]?.[2] ?? '';
    return value === meant ? [] : [{ place, what, unit: value, twin: meant }];
  });
}

const laidWords = ({ method, lineArea, insulated }: Parts['site']['circuit']): string =>
  `method ${method}, lines of ${lineArea}\u202fmm²${insulated === 0 ? '' : `, ${insulated}\u202fmm of it in thermal insulation`}`;

const serviceWords = (service: Parts['site']['service']): string =>
  service === null ? 'not stated' : `${ampsText(service.rating)}, ${ampsText(service.demand)}`;

const neighboursOf = (loads: Parts['site']['neighbours']): string =>
  loads.length === 0 ? 'none' : loads.map(({ line, power }) => `${line} ${power}\u202fW`).join(', ');
