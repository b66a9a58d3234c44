/** The papers in words: the unit's sheet (the maker's extract) and the installation, as a trainee reads them. */
import type { CableKind, Method } from '../laws/currentCarrying.ts';
import { TABLES } from '../laws/currentCarrying.ts';
import { cableOf } from '../site/design.ts';
import type { Circuit } from '../site/site.ts';
import type { Clearing, LatchReason } from '../unit/design.ts';
import type { Papers } from '../verification/testAction.ts';

export interface PaperLine {
  readonly term: string;
  readonly text: string;
}

export const CLEARING_WORDS: Readonly<Record<Clearing, string>> = {
  'state-A': 'clears when the vehicle is unplugged',
  reset: 'clears by the reset button',
  supply: 'clears by switching the supply off and on',
  self: 'clears by itself when its cause is gone',
};
export const REASON_WORDS: Readonly<Record<LatchReason, string>> = {
  E: 'pilot shorted to PE',
  F: 'contactor failed',
  diode: 'vehicle’s diode missing',
  residual: 'residual trip',
  direct: 'd.c. trip',
  openPen: 'open PEN',
};
export const OPEN_PEN_WORDS = {
  none: 'none',
  'voltage-window': 'voltage window, line to neutral 207 to 253 V, reset by hand',
  'earth-sensing': 'protective conductor against true earth, 70 V',
  other: 'another method, see the maker',
} as const;

const percent = (share: number): number => Math.round(1000 * share) / 10;

/** What an open-PEN measure does in time, and where its PE pole stands without power. */
const openPenLines = ({
  openPen,
  openPenRidesOut,
  openPenUnpowered,
}: Papers['sheet']): readonly PaperLine[] =>
  openPen === 'none'
    ? []
    : [
        {
          term: 'open-PEN time',
          text: openPenRidesOut
            ? 'opens within 5 s; rides out what is over within 4 s'
            : 'opens within 1 s; rides out nothing',
        },
        {
          term: 'its PE pole',
          text:
            openPenUnpowered === 'open'
              ? 'stands open without power: the outlet’s PE then reads open; exposed metal stays earthed'
              : 'stays closed without power',
        },
      ];

export function sheetLines({ site, sheet }: Papers): readonly PaperLine[] {
  const { residual, cable } = sheet;
  return [
    {
      term: 'outlet',
      text:
        sheet.outlet === 'tethered'
          ? `tethered cable, ${cable.length} m of ${cable.area} mm², coded ${cable.coding} A`
          : `socket-outlet with plug retention; at hand a cable of ${cable.length} m, ${cable.area} mm², coded ${cable.coding} A`,
    },
    { term: 'rated current', text: `${sheet.ratedCurrent} A` },
    { term: 'set current', text: `${sheet.setCurrent} A` },
    {
      term: 'residual device',
      text:
        residual.type === null
          ? 'none in the unit: it belongs upstream'
          : `type ${residual.type}, ${1000 * (residual.rated ?? 0)} mA, opens ${residual.by === 'breaker' ? 'the unit’s own breaker: the unit goes dark' : 'the contactor'}`,
    },
    {
      term: 'd.c. detector',
      text:
        residual.direct === null
          ? 'none'
          : residual.direct === 'monitoring'
            ? 'monitoring kind, 6 mA, opens the contactor'
            : `protective kind, 6 mA, opens ${residual.by === 'breaker' ? 'the unit’s own breaker' : 'the contactor'}`,
    },
    {
      term: 'insulation tests',
      text: `at most ${sheet.insulationTestVoltageMax} V d.c. with the unit connected`,
    },
    ...(sheet.leastVoltage === null
      ? []
      : [{ term: 'supply voltage', text: `declared for ${sheet.leastVoltage} V and more at its terminals` }]),
    { term: 'open-PEN measure', text: OPEN_PEN_WORDS[sheet.openPen] },
    ...openPenLines(sheet),
    { term: 'surge arrester', text: sheet.surgeArrester ? 'fitted' : 'none' },
    {
      term: 'permission',
      text: {
        open: 'none needed',
        authorise: `steady pilot until authorised; ${
          sheet.authoriseBefore
            ? 'this may be done before plugging in, for the next vehicle'
            : 'only once a vehicle is connected'
        }`,
        held: 'held back by the site’s load management',
      }[sheet.permission],
    },
    {
      term: 'start delay',
      text:
        sheet.startDelay === 0
          ? 'none'
          : `random, up to ${sheet.startDelay} s after a vehicle is connected, and each time it asks again; pilot steady meanwhile; can be overridden until it is unplugged`,
    },
    ...(sheet.schedule === null
      ? []
      : [
          {
            term: 'charging hours',
            text: `not from 08:00 to 11:00 and 16:00 to 22:00, Monday to Friday; can be overridden until the vehicle is unplugged. A charge that is running when they end stops ${
              sheet.hoursEnd === 'delayed' ? 'after a random delay' : 'at once'
            }`,
          },
        ]),
    ...(sheet.loadLimit === null ? [] : [{ term: 'load limit', text: `${sheet.loadLimit} A` }]),
    ...(sheet.serviceLimit === null
      ? []
      : [
          {
            term: 'service sensor',
            text: `on the incoming lines: offers what other loads leave of ${sheet.serviceLimit} A a line`,
          },
        ]),
    {
      term: 'plug',
      text:
        sheet.outlet === 'tethered'
          ? 'no plug at the unit'
          : sheet.holdInB
            ? 'held from the moment a vehicle is connected'
            : 'held before the contactor closes',
    },
    ...(sheet.outlet === 'socket'
      ? [
          {
            term: 'cable’s coding',
            text: `a vehicle that draws over ${percent(sheet.overCode.margin)} % more than its cable is coded for is cut off after ${sheet.overCode.seconds} s, until it is unplugged`,
          },
        ]
      : []),
    {
      term: 'vehicle’s diode',
      text:
        sheet.diodeCheck === 'always' ? 'watched all the time' : 'checked before the contactor closes only',
    },
    { term: 'ventilation', text: sheet.ventilation ? 'can be commanded' : 'none: state D is refused' },
    {
      term: 'open poles',
      text: sheet.poleBleed === null ? 'no path across them' : `${sheet.poleBleed / 1000} kΩ across each`,
    },
    ...(site.phases === 1
      ? []
      : [
          {
            term: 'a line lost',
            text:
              sheet.lostLine === 'stops'
                ? 'L1 feeds the electronics; without another line it stops'
                : 'L1 feeds the electronics; without another line it goes on with those that are left',
          },
        ]),
    { term: 'start-up', text: `${sheet.startUp} s, pilot at 0 V` },
    {
      term: 'dips of the supply',
      text: 'no hold-up: when its supply goes, however briefly, it opens and starts again from the beginning',
    },
    ...(Object.keys(REASON_WORDS) as LatchReason[])
      .filter((reason) => reason !== 'openPen' || sheet.openPen !== 'none')
      .map((reason) => ({
        term: REASON_WORDS[reason],
        text: CLEARING_WORDS[sheet.clearsBy[reason]],
      })),
  ];
}

export const CABLE_WORDS: Readonly<Record<CableKind, string>> = {
  sheathed: 'sheathed multicore',
  flat: 'flat twin and earth',
  armoured: 'armoured multicore',
};
export const METHOD_WORDS: Readonly<Record<Method, string>> = {
  A: 'in conduit in an insulated wall',
  B: 'in conduit or trunking on a wall',
  C: 'clipped direct',
  D: 'in the ground',
  '100': 'on a ceiling, up to 100 mm of insulation over it',
  '102': 'in an insulated stud wall, touching its face',
  '103': 'in an insulated stud wall, touching no face',
};

/** How the cable is laid; what the table supposes anyway is not said. */
function laidText(circuit: Circuit): string {
  const { method, ambient, grouped, insulated } = circuit;
  const cable = cableOf(circuit);
  return [
    `${CABLE_WORDS[cable]}, 70 °C (${TABLES[cable]}), method ${method}: ${METHOD_WORDS[method]}`,
    ...(ambient === 30 ? [] : [`air of ${ambient} °C`]),
    ...(grouped === 1 ? [] : [`${grouped} circuits bunched`]),
    ...(insulated === 0 ? [] : [`${insulated} mm of it wholly in thermal insulation`]),
  ].join('; ');
}

export function siteLines({ site }: Papers): readonly PaperLine[] {
  const { circuit } = site;
  const { breaker, residualDevice } = circuit;
  return [
    {
      term: 'supply',
      text: `${site.phases === 1 ? 'single-phase' : 'three-phase'}, 230 V nominal, ${site.house === undefined ? site.earthing : 'TN-C-S (PME) in the house; this circuit TT, on an electrode of its own'}`,
    },
    ...(site.house === undefined
      ? []
      : [
          {
            term: 'two earths',
            text: 'MET is this circuit’s own earthing terminal, apart from the house’s; no metal that is earthed with the house is within reach of the unit',
          },
        ]),
    site.earthing === 'TT'
      ? { term: 'electrode', text: `${site.electrodeResistance} Ω by the papers` }
      : { term: 'Ze', text: `${site.loopImpedance} Ω by the papers` },
    {
      term: 'circuit',
      text: `${circuit.length} m, lines ${circuit.lineArea} mm², protective conductor ${circuit.protectiveArea} mm²`,
    },
    { term: 'cable', text: laidText(circuit) },
    ...(circuit.capacitance === undefined
      ? []
      : [
          {
            term: 'coupling',
            text: `${Number((1e9 * circuit.capacitance * circuit.length).toPrecision(2))} nF between any two cores of the run`,
          },
        ]),
    ...(circuit.parallelEarth === null
      ? []
      : [{ term: 'beside PE', text: `armour, steel or tray of ${circuit.parallelEarth} Ω in parallel` }]),
    {
      term: 'overcurrent device',
      text: `${breaker.type}${breaker.rating}, ${breaker.poles} poles, ${breaker.breakingCapacity / 1000} kA${circuit.conditionalRating === null ? '' : `; its consumer unit is declared for ${circuit.conditionalRating / 1000} kA with it`}`,
    },
    {
      term: 'residual device at the origin',
      text:
        residualDevice === null
          ? 'none'
          : `type ${residualDevice.type}, ${1000 * residualDevice.rated} mA, ${residualDevice.delay === 'S' ? 'delayed (S)' : 'general'}, ${residualDevice.poles} poles${circuit.points === 1 ? '' : `; ${circuit.points} charging points stand behind it`}`,
    },
    ...(circuit.faultProtection === 'residual'
      ? [{ term: 'fault protection', text: 'by the residual device at the origin' }]
      : []),
    ...(site.service === null
      ? []
      : [
          {
            term: 'service',
            text: `${site.service.rating} A a line; the house asks ${Number(site.service.demand.toFixed(1))} A of it, after diversity`,
          },
        ]),
    ...(site.nextPoint === undefined
      ? []
      : [
          {
            term: 'next point',
            text: `a second charging point, up to ${site.nextPoint.ratedCurrent} A a line, with a board, breaker and residual device of its own where the tails part. It does not give way. ${
              site.nextPoint.draws === 0
                ? 'Nothing is charging on it'
                : `A vehicle is charging on it, at ${site.nextPoint.draws} A`
            }`,
          },
        ]),
  ];
}
