/** The site of a job, field by field: supply and earthing, the circuit, its devices, and what else is on the service. */
import { CONDUCTOR_AREAS } from '../../../laws/conductor.ts';
import type { Line } from '../../../laws/conductors.ts';
import { LINES } from '../../../laws/conductors.ts';
import { AMBIENTS, METHODS, MOST_GROUPED } from '../../../laws/currentCarrying.ts';
import { BREAKER_TYPES } from '../../../laws/overcurrent.ts';
import { DEVICE_TYPES } from '../../../laws/residualLimits.ts';
import { RESIDUAL_RATINGS } from '../../../scenario/schema.ts';
import { CIRCUIT, NEXT_POINT, SITE } from '../../../scenario/usual.ts';
import { hasPen } from '../../../site/site.ts';
import { CABLE_WORDS, METHOD_WORDS } from '../../../words/papers.ts';
import type { Field, FieldGroup } from './fields.ts';
import { each, figure, oneOf, orLeftOut, placed, said, scaled, worded, yesOrNo } from './fields.ts';
import type { JobFile } from './jobFile.ts';
import { withField } from './jobFile.ts';

export const AREAS = each([...CONDUCTOR_AREAS], 'mm²');
export const RESIDUAL_SIZES = RESIDUAL_RATINGS.map((amps) => [`${1000 * amps} mA`, amps] as const);
const RATINGS = [6, 10, 16, 20, 25, 32, 40, 50, 63];

export function siteFields(file: JobFile): readonly FieldGroup[] {
  return [
    { title: 'Supply and earthing', fields: supply(file) },
    { title: 'The circuit', fields: circuit },
    { title: 'Devices at the origin', fields: devices(file) },
    { title: 'The service, and what else is on it', fields: service(file) },
  ];
}

function supply({ site }: JobFile): readonly Field[] {
  const isTT = site.earthing === 'TT';
  const earthed = site.house === undefined ? 'site.metEarthResistance' : 'site.house.metEarthResistance';
  return [
    figure(placed('site.voltage'), 'supply, line to neutral', 'V', [200, 265]),
    isTT
      ? figure(placed('site.electrodeResistance'), 'earth electrode, RA', 'Ω', [0.5, 5000])
      : figure(placed('site.loopImpedance'), 'external loop impedance, Ze', 'Ω', [0.01, 50]),
    figure(
      placed('site.neutralImpedance'),
      'line–neutral loop at the origin',
      'Ω',
      [0.01, 50],
      isTT ? '0.25 Ω' : 'as Ze',
    ),
    figure(
      placed('site.sourceElectrodeResistance', SITE.sourceElectrodeResistance),
      'distributor’s electrode',
      'Ω',
      [0.01, 50],
    ),
    figure(
      placed(earthed),
      site.house === undefined
        ? 'MET to true earth by pipes and bonding'
        : 'house’s earth to true earth by pipes and bonding',
      'Ω',
      [0.1, 10_000],
      'no path',
    ),
  ];
}

const circuit: readonly Field[] = [
  figure(placed('site.circuit.length'), 'length of the run', 'm', [0.5, 500]),
  oneOf(placed('site.circuit.lineArea'), 'line and neutral', AREAS),
  oneOf(placed('site.circuit.protectiveArea'), 'protective conductor', AREAS),
  oneOf(
    placed('site.circuit.method', CIRCUIT.method),
    'reference method',
    METHODS.map((method) => [`${method}: ${METHOD_WORDS[method]}`, method] as const),
  ),
  oneOf(orLeftOut(placed('site.circuit.cable')), 'cable', [
    ['the usual one for the method', null],
    ...worded(CABLE_WORDS),
  ]),
  oneOf(placed('site.circuit.ambient', CIRCUIT.ambient), 'air round it', each(AMBIENTS, '°C')),
  oneOf(
    placed('site.circuit.grouped', CIRCUIT.grouped),
    'circuits bunched, with this one',
    each(Array.from({ length: MOST_GROUPED }, (_, i) => i + 1)),
  ),
  figure(
    placed('site.circuit.insulated', CIRCUIT.insulated),
    'wholly in thermal insulation',
    'mm',
    [0, 1000],
  ),
  figure(placed('site.circuit.parallelEarth'), 'armour, steel or tray beside PE', 'Ω', [0.001, 1000], 'none'),
  figure(
    scaled(placed('site.circuit.capacitance'), 1e12),
    'between any two cores',
    'pF/m',
    [1, 1000],
    'nothing couples',
  ),
];

function devices({ site }: JobFile): readonly Field[] {
  const { residualDevice } = site.circuit;
  const poles = site.phases + 1;
  const switched = each(site.phases === 1 ? [1, 2] : [3, 4]);
  const at = (name: string) => placed(`site.circuit.residualDevice.${name}`);
  return [
    oneOf(placed('site.circuit.breaker.type'), 'breaker, type', each(BREAKER_TYPES)),
    oneOf(placed('site.circuit.breaker.rating'), 'breaker, rating', each(RATINGS, 'A')),
    oneOf(placed('site.circuit.breaker.poles', poles), 'breaker, poles', switched),
    figure(
      placed('site.circuit.breaker.breakingCapacity', 6000),
      'breaker, breaking capacity',
      'A',
      [1000, 100_000],
    ),
    figure(
      placed('site.circuit.conditionalRating'),
      'consumer unit declared, with it, for',
      'A',
      [1000, 100_000],
      'not declared',
    ),
    oneOf(
      said(placed('site.circuit.residualDevice'), { type: 'A', rated: 0.03, delay: 'general', poles }),
      'residual device at the origin',
      yesOrNo('fitted', 'none'),
    ),
    ...(residualDevice == null
      ? []
      : [
          oneOf(at('type'), 'residual device, type', each(DEVICE_TYPES)),
          oneOf(at('rated'), 'residual device, rated', RESIDUAL_SIZES),
          oneOf(at('delay'), 'residual device, delay', worded({ general: 'general', S: 'delayed (S)' })),
          oneOf(at('poles'), 'residual device, poles', switched),
          oneOf(
            placed('site.circuit.points', CIRCUIT.points),
            'charge points behind it',
            each(Array.from({ length: 20 }, (_, i) => i + 1)),
          ),
        ]),
    ...(site.earthing === 'TT'
      ? []
      : [
          oneOf(
            placed('site.circuit.faultProtection', CIRCUIT.faultProtection),
            'fault protection by',
            worded({ overcurrent: 'the breaker', residual: 'the residual device at the origin' }),
          ),
        ]),
  ];
}

function service(file: JobFile): readonly Field[] {
  const { site, unit } = file;
  const { nextPoint } = site;
  return [
    oneOf(
      said(placed('site.service'), { rating: 100, demand: 40 }),
      'service, in the papers',
      yesOrNo('its rating and the house’s demand', 'nothing is said'),
    ),
    ...(site.service != null
      ? [
          figure(placed('site.service.rating'), 'service: rating or agreed limit, each line', 'A', [20, 400]),
          figure(
            placed('site.service.demand'),
            'house’s demand by the design, after diversity, each line',
            'A',
            [0, 400],
          ),
        ]
      : []),
    ...LINES.slice(0, site.phases).map((line) =>
      figure(
        loadOn('otherLoads', line),
        site.phases === 1 ? 'house’s load, as found' : `house’s load on ${line}, as found`,
        'W',
        [0, 30_000],
      ),
    ),
    oneOf(
      said(placed('site.nextPoint'), { ratedCurrent: unit.ratedCurrent }),
      'next charge point, on the same service',
      yesOrNo('there is one', 'none'),
    ),
    ...(nextPoint === undefined
      ? []
      : [
          figure(placed('site.nextPoint.ratedCurrent'), 'next point: takes at most, each line', 'A', [6, 80]),
          figure(
            placed('site.nextPoint.draws', NEXT_POINT.draws),
            'next point: draws as found, each line',
            'A',
            [0, nextPoint.ratedCurrent],
          ),
        ]),
    ...(hasPen(site)
      ? LINES.map((line) =>
          figure(loadOn('neighbours', line), `neighbours on the same PEN, ${line}`, 'W', [0, 30_000]),
        )
      : []),
  ];
}

interface Load {
  readonly line: Line;
  readonly power: number;
}

/** All of the loads on one line, as one figure; the least that a load may have in a file is 1 W. */
function loadOn(kind: 'otherLoads' | 'neighbours', line: Line) {
  const path = ['site', kind];
  const loads = (file: JobFile): readonly Load[] => file.site[kind] ?? SITE[kind];
  return {
    at: `site.${kind}.${line}`,
    read: (file: JobFile) =>
      loads(file)
        .filter((load) => load.line === line)
        .reduce((sum, { power }) => sum + power, 0),
    write: (file: JobFile, power: unknown) => {
      const others = loads(file).filter((load) => load.line !== line);
      const all = Number(power) < 1 ? others : [...others, { line, power: Number(power) }];
      return withField(file, path, all.length === 0 ? undefined : all);
    },
  };
}
