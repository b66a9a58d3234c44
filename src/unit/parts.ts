/**
 * The charge point and its outlet as network parts: poles, filter, protective conductor, pilot source, tether or
 * socket with the customer's cable. Nodes: `supply.X` terminals, `inner.X` behind the unit's own breaker, `bar` its
 * PE bar, `socket.X` its own outlet contacts, `end.X` the far end of tether or cable. The stand-in is bench/'s.
 */

import { conductorResistance } from '../laws/conductor.ts';
import type { Live } from '../laws/conductors.ts';
import { PILOT_SOURCE } from '../laws/pilotLevels.ts';
import { codingResistance } from '../laws/proximity.ts';
import type { Ohms, Siemens } from '../laws/quantities.ts';
import type { OneWayPart, Part } from '../site/part.ts';
import { insulationAt, OPEN } from '../site/part.ts';
import type { UnitDesign, UnitSheet } from './design.ts';
import { opensEarthUnpowered, polesOf } from './design.ts';

/** Pole, terminal or plug contact, Ω: with the rest under the 0.05 Ω that unit and contacts may add. */
const CONTACT: Ohms = 0.002;
/** Test button current, times the rating. Common practice, no source: 2 to 3 times. */
const BUTTON_MULTIPLE = 2.5;
/** The earth-sensing measure's own electrode, Ω. A design choice. */
const SENSING_ELECTRODE: Ohms = 200;
/** Electronics on L1–N: about 5 W. Common practice, no source. */
const ELECTRONICS: Ohms = 10_000;
/** Filter from each live conductor to PE: 4.7 nF, 2π·50 Hz·C, with 20 MΩ of bleed; well under 3.5 mA (IEC 61851-1:2017 12.6). */
const FILTER_SUSCEPTANCE: Siemens = 1.476549e-6;
const FILTER_BLEED: Ohms = 20e6;
const UNIT_INSULATION: Ohms = 5e9;
/** Pilot core of 0.5 mm², class 5, Ω per metre at 20 °C (IEC 60228). */
const PILOT_CORE: Ohms = 0.039;
/** What pulls the proximity contact up inside a socket-outlet: 5 V behind 1 kΩ. A design choice. */
export const PROXIMITY_SOURCE = { volts: 5, resistance: 1000 } as const;
/** Clamping level of a sound arrester from each line and neutral to PE, V. From memory of trade data. */
const ARRESTER_CLAMP = 430;

export function unitParts(design: UnitDesign, phases: 1 | 3): readonly Part[] {
  const lives = polesOf(phases);
  return [
    ...liveParts(design.sheet, lives),
    ...protectiveParts(design.sheet),
    ...pilotParts(design.sheet),
    ...cableParts(design.sheet, lives),
    ...insulationAt('outlet', 'socket', [...lives, 'PE', 'CP', 'PP'], UNIT_INSULATION),
    ...insulationAt('cable', 'end', [...lives, 'PE', 'CP', 'PP'], UNIT_INSULATION),
  ];
}

function liveParts(sheet: UnitSheet, lives: readonly Live[]): readonly Part[] {
  return [
    ...lives.flatMap((x): Part[] => [
      { id: `unit.${x}`, a: `supply.${x}`, b: `inner.${x}`, resistance: CONTACT, contact: `unit.${x}` },
      {
        id: `filter.${x}`,
        a: `inner.${x}`,
        b: 'bar',
        resistance: FILTER_BLEED,
        susceptance: FILTER_SUSCEPTANCE,
      },
      {
        id: `contactor.${x}`,
        a: `inner.${x}`,
        b: `socket.${x}`,
        resistance: CONTACT,
        contact: `contactor.${x}`,
        openResistance: sheet.poleBleed ?? OPEN,
      },
    ]),
    { id: 'electronics', a: 'inner.L1', b: 'inner.N', resistance: ELECTRONICS },
    // The test button leads a current from behind the sensor to before it.
    ...(sheet.residual.type === null
      ? []
      : [
          {
            id: 'test-button',
            a: 'inner.L1',
            b: 'supply.N',
            resistance: 230 / (BUTTON_MULTIPLE * (sheet.residual.rated ?? 0.03)),
            contact: 'test-button',
          },
        ]),
  ];
}

const protectiveParts = (sheet: UnitSheet): readonly Part[] => [
  ...(sheet.openPen === 'earth-sensing' || sheet.openPen === 'other'
    ? [{ id: 'sensing.electrode', a: 'earth', b: 'sensing', resistance: SENSING_ELECTRODE }]
    : []),
  { id: 'unit.PE', a: 'supply.PE', b: 'bar', resistance: CONTACT, contact: 'open-pen' },
  // Where the pole stands open without power, exposed metal stays earthed ahead of it.
  { id: 'case', a: opensEarthUnpowered(sheet) ? 'supply.PE' : 'bar', b: 'case', resistance: CONTACT },
  { id: 'outlet.PE', a: 'bar', b: 'socket.PE', resistance: CONTACT },
];

function pilotParts(sheet: UnitSheet): readonly Part[] {
  return [
    { id: 'pilot.source', a: 'bar', b: 'pilot', resistance: PILOT_SOURCE.resistance },
    { id: 'pilot.conductor', a: 'pilot', b: 'socket.CP', resistance: CONTACT },
    ...(sheet.outlet === 'socket'
      ? [{ id: 'proximity.source', a: 'bar', b: 'socket.PP', resistance: PROXIMITY_SOURCE.resistance }]
      : []),
  ];
}

/** The proximity contact does not run through a cable: a resistor at each plug codes it (IEC 61851-1:2017 Annex B). */
function cableParts(sheet: UnitSheet, lives: readonly Live[]): readonly Part[] {
  const { length, area, coding } = sheet.cable;
  const plugged = sheet.outlet === 'socket' ? { contact: 'cable' } : {};
  const power = conductorResistance({ length, area, class: 5 }) + CONTACT;
  return [
    ...[...lives, 'PE'].map((x) => ({
      id: `cable.${x}`,
      a: `socket.${x}`,
      b: `end.${x}`,
      resistance: power,
      ...plugged,
    })),
    {
      id: 'cable.CP',
      a: 'socket.CP',
      b: 'end.CP',
      resistance: length * PILOT_CORE + CONTACT,
      ...plugged,
    },
    { id: 'coding.end', a: 'end.PP', b: 'end.PE', resistance: codingResistance(coding) },
    ...(sheet.outlet === 'socket'
      ? [
          {
            id: 'coding.plug',
            a: 'socket.PP',
            b: 'socket.PE',
            resistance: codingResistance(coding),
            contact: 'coding',
          },
        ]
      : []),
  ];
}

/** Surge arresters from each live conductor to the PE bar, both directions; none where the sheet has none. */
export function unitOneWays(design: UnitDesign, phases: 1 | 3): readonly OneWayPart[] {
  if (!design.sheet.surgeArrester) return [];
  return polesOf(phases).flatMap((x) => [
    { id: `arrester.${x}+`, a: `supply.${x}`, b: 'bar', drop: ARRESTER_CLAMP },
    { id: `arrester.${x}-`, a: 'bar', b: `supply.${x}`, drop: ARRESTER_CLAMP },
  ]);
}
