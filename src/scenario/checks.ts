/**
 * What the schema alone cannot see in a scenario: names that must exist, values that contradict each other (wrong),
 * and design that is legal here but would teach something false (a warning).
 */
import { CATALOGUE, entryNamed, whyImpossible } from '../faults/catalogue.ts';
import type { Component } from '../faults/components.ts';
import type { Setting } from '../faults/fault.ts';
import { LINES } from '../laws/conductors.ts';
import { isTabled } from '../laws/currentCarrying.ts';
import { greatestElectrode } from '../laws/electrode.ts';
import { measuredLoopLimit } from '../laws/overcurrent.ts';
import { OFFER_RANGE } from '../laws/pilotDuty.ts';
import { greatestResidualLoop } from '../laws/residualProtection.ts';
import { SUPPLY_VOLTAGE } from '../laws/supplyLimits.ts';
import { cableOf, laidAs } from '../site/design.ts';
import { hasPen } from '../site/site.ts';
import { ACTIONS } from '../verification/actions.ts';
import { designSums, isRight } from '../verification/designSums.ts';
import type { Papers } from '../verification/testAction.ts';
import { aimNamed } from './aims.ts';
import { operationProblems } from './operationProblems.ts';
import type { Problem } from './problems.ts';
import { quoted, shortened } from './quoted.ts';
import type { ScenarioFile } from './schema.ts';
import type { Task } from './tasks.ts';
import { weightsOf } from './tasks.ts';
import { figureIn, meant, WHERE_FAULTS, WHERE_TESTS } from './tradeNames.ts';

/** What of a file the schema accepts: a slip in one section does not hide those in another. */
export type Readable = Partial<
  Pick<
    ScenarioFile,
    | 'clock'
    | 'task'
    | 'aim'
    | 'symptom'
    | 'site'
    | 'unit'
    | 'faults'
    | 'accept'
    | 'allowed'
    | 'marking'
    | 'handover'
  >
>;

/** Every contradiction in the file. */
export const checkScenario = ({
  clock,
  task,
  aim,
  symptom,
  site,
  unit,
  faults,
  accept,
  allowed,
  marking,
  handover,
}: Readable): readonly Problem[] => [
  ...(clock === undefined ? [] : clockProblems(clock)),
  ...(task === undefined || aim === undefined ? [] : taskProblems({ task, aim }, allowed)),
  ...(task === undefined || symptom === undefined ? [] : symptomProblems({ task, symptom }, allowed)),
  ...(site === undefined ? [] : siteProblems({ site })),
  ...(site === undefined || unit === undefined ? [] : unitProblems({ site, unit })),
  ...(faults === undefined ? [] : faultProblems(faults, site && unit ? { site, sheet: unit } : null)),
  ...(faults === undefined ? [] : testerProblems(faults, allowed)),
  ...(faults === undefined || accept === undefined ? [] : acceptProblems(accept, faults)),
  ...(allowed === undefined || allowed === 'all' ? [] : actionProblems(allowed, 'allowed')),
  ...(marking === undefined ? [] : weightProblems(marking, task ?? 'verify')),
  ...(handover == null ? [] : handoverProblems(handover, site)),
];

const when = (condition: boolean, path: string, message: string): readonly Problem[] =>
  condition ? [{ path, message }] : [];

/** A day that its month lacks would be read as one of the next month. */
function clockProblems(clock: string): readonly Problem[] {
  const [year = 0, month = 0, day = 0, hour = 0, minute = 0] = clock.split(/\D/).map(Number);
  const exists = day >= 1 && day <= daysOf(year, month) && hour <= 23 && minute <= 59;
  return when(
    !exists,
    'clock',
    `${clock} does not exist: a day of the calendar and 00:00 to 23:59 are expected`,
  );
}

/** A task of one aim says which, and allows its tests alone: the conclusion is about nothing else. */
function taskProblems(
  { task, aim }: Pick<ScenarioFile, 'task' | 'aim'>,
  allowed: Readable['allowed'],
): readonly Problem[] {
  if (task !== 'aim')
    return when(aim !== null, 'aim', 'only a task of one aim has one: "task": "aim" is expected with it');
  if (aim === null) return [{ path: 'aim', message: 'which of the aims it is: one of them is expected' }];
  const own: readonly string[] = aimNamed(aim)?.tests ?? [];
  const others = allowed === 'all' ? ['all'] : (allowed ?? []).filter((id) => !own.includes(id));
  return when(
    others.length > 0,
    'allowed',
    `${quoted(others.join(', '))} is not a test of the aim "${aim}": ${own.join(', ')} are`,
  );
}

/** How many tests a job to find what is behind a symptom allows: more take longer than ten minutes, fewer tell it. */
export const TESTS_OF_FIND = { least: 4, most: 8 } as const;

/** A task to find what is behind a symptom tells it, and allows a few tests to choose from. */
function symptomProblems(
  { task, symptom }: Pick<ScenarioFile, 'task' | 'symptom'>,
  allowed: Readable['allowed'],
): readonly Problem[] {
  if (task !== 'find')
    return when(
      symptom !== null,
      'symptom',
      'only a task to find what is behind one has a symptom: "task": "find" is expected with it',
    );
  const { least, most } = TESTS_OF_FIND;
  const few = `a list of ${least} to ${most} tests is expected with "task": "find"`;
  const count = allowed === undefined || allowed === 'all' ? null : new Set(allowed).size;
  return [
    ...when(symptom === null, 'symptom', 'missing: what a customer or a colleague says is expected'),
    ...when(allowed === 'all', 'allowed', `"all" does not fit: ${few}`),
    ...when(
      count !== null && (count < least || count > most),
      'allowed',
      `${count} ${count === 1 ? 'test' : 'tests'}: ${few}`,
    ),
  ];
}

/** Of a month of the Gregorian calendar; none where there is no such month. */
function daysOf(year: number, month: number): number {
  const isLeap = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
  return [31, isLeap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][month - 1] ?? 0;
}

function weightProblems({ weights }: ScenarioFile['marking'], task: Task): readonly Problem[] {
  const sum = Object.values(weightsOf(task, weights)).reduce((total, points) => total + points, 0);
  return when(
    Math.abs(sum - 100) > 1e-6,
    'marking.weights',
    `a sum of ${Number(sum.toPrecision(6))}, with the usual points for parts that are left out: 100 is expected`,
  );
}

function siteProblems({ site }: Pick<ScenarioFile, 'site'>): readonly Problem[] {
  const { circuit, earthing, phases } = site;
  const beyond = (poles: number | undefined) => poles !== undefined && (poles > phases + 1 || poles < phases);
  const loads = (kind: 'otherLoads' | 'neighbours') =>
    site[kind].flatMap((load, i) =>
      when(
        kind === 'otherLoads' && phases === 1 && load.line !== 'L1',
        `site.${kind}[${i}].line`,
        `this site has no ${load.line}: L1 is expected`,
      ),
    );
  return [
    ...when(
      earthing !== 'TT' && site.loopImpedance === undefined,
      'site.loopImpedance',
      `missing: a number in ohms is expected on ${earthing}`,
    ),
    ...when(
      earthing === 'TT' && site.loopImpedance !== undefined,
      'site.loopImpedance',
      'on TT it follows from the electrodes: leave it out',
    ),
    ...when(
      earthing === 'TT' && site.electrodeResistance === null,
      'site.electrodeResistance',
      'missing: a number in ohms is expected on TT',
    ),
    ...when(
      earthing !== 'TT' && site.electrodeResistance !== null,
      'site.electrodeResistance',
      `only a TT site has its own electrode: leave it out on ${earthing}`,
    ),
    ...when(
      beyond(circuit.breaker.poles),
      'site.circuit.breaker.poles',
      `${phases} or ${phases + 1} is expected on ${phases === 1 ? 'one phase' : 'three phases'}`,
    ),
    ...when(
      beyond(circuit.residualDevice?.poles),
      'site.circuit.residualDevice.poles',
      `${phases} or ${phases + 1} is expected on ${phases === 1 ? 'one phase' : 'three phases'}`,
    ),
    ...when(
      !hasPen(site) && site.neighbours.length > 0,
      'site.neighbours',
      'neighbours share a PEN conductor: only on TN-C-S',
    ),
    ...when(
      site.house !== undefined && earthing !== 'TT',
      'site.house',
      `a house with another earth than the circuit: the circuit is TT, not ${earthing}`,
    ),
    ...when(
      site.house !== undefined && site.metEarthResistance !== null,
      'site.metEarthResistance',
      'pipes and bonding are the house’s: give them in site.house.metEarthResistance',
    ),
    ...when(
      site.house !== undefined && circuit.parallelEarth !== null,
      'site.circuit.parallelEarth',
      'metal beside the protective conductor would join the two earths: leave it out',
    ),
    ...when(
      site.nextPoint !== undefined && site.nextPoint.draws > site.nextPoint.ratedCurrent,
      'site.nextPoint.draws',
      `above the ${site.nextPoint?.ratedCurrent} A that it takes at most`,
    ),
    ...when(
      earthing !== 'TT' &&
        site.neutralImpedance !== undefined &&
        site.loopImpedance !== undefined &&
        site.neutralImpedance < site.loopImpedance / 2,
      'site.neutralImpedance',
      'below half of loopImpedance: the line’s half is in both loops',
    ),
    ...when(
      !isTabled(laidAs({ ...site, circuit })),
      'site.circuit.method',
      `no ${cableOf(circuit)} cable of ${circuit.lineArea} mm² is tabled for method ${circuit.method} on ${phases === 1 ? 'one phase' : 'three phases'} (BS 7671 Appendix 4)`,
    ),
    ...when(
      circuit.method === 'D' && (circuit.ambient !== 30 || circuit.grouped !== 1 || circuit.insulated !== 0),
      'site.circuit.method',
      'ambient, grouped and insulated are of cables in air: leave them out with method D',
    ),
    ...when(
      earthing === 'TT' && circuit.faultProtection === 'residual',
      'site.circuit.faultProtection',
      'on TT it is the residual device in any case: leave it out',
    ),
    ...when(
      circuit.points > 1 && circuit.residualDevice === null,
      'site.circuit.points',
      'there is no residual device at the origin that several points could share: leave it out',
    ),
    ...loads('otherLoads'),
    ...loads('neighbours'),
  ];
}

function unitProblems({ site, unit }: Pick<ScenarioFile, 'site' | 'unit'>): readonly Problem[] {
  const { residual } = unit;
  const incomplete = residual.type !== null && (residual.rated === undefined || residual.by === undefined);
  return [
    ...when(
      unit.setCurrent !== undefined && unit.setCurrent > unit.ratedCurrent,
      'unit.setCurrent',
      `above ratedCurrent, ${unit.ratedCurrent} A: at most that is expected`,
    ),
    ...when(
      site.phases === 3 && unit.openPen === 'voltage-window',
      'unit.openPen',
      'a voltage window cannot see an open PEN on three phases (BS 7671 722.411.4.1): another kind is expected',
    ),
    ...when(
      site.phases === 1 && unit.lostLine === 'goes-on',
      'unit.lostLine',
      'on one phase there is no other line to go on with: stops is expected',
    ),
    ...when(
      incomplete,
      'unit.residual',
      'rated and by are expected beside a type; without a device in the unit, type is null',
    ),
    ...when(
      residual.type === null && (residual.rated !== undefined || residual.by !== undefined),
      'unit.residual',
      'rated and by are left out where type is null',
    ),
    ...(['residual', 'direct'] as const).flatMap((reason) =>
      when(
        ['self', 'restored', 'state-A'].includes(unit.clearsBy[reason] ?? ''),
        `unit.clearsBy.${reason}`,
        'no unit may close by itself after a trip (IEC 61851-1 clause 14, UK note): reset or supply is expected',
      ),
    ),
  ];
}

function faultProblems(faults: ScenarioFile['faults'], on: Setting | null): readonly Problem[] {
  return faults.flatMap(({ fault, ...values }, i) => {
    const path = `faults[${i}]`;
    const entry = entryNamed(fault);
    if (entry === undefined) {
      const valid = CATALOGUE.map(({ id }) => id);
      return [
        {
          path: `${path}.fault`,
          message: `unknown fault ${quoted(fault)}; ${meant(fault, valid, WHERE_FAULTS)}`,
        },
      ];
    }
    const names = entry.parameters.map(({ name }) => name);
    const own = Object.entries(values).flatMap(([name, value]) => {
      const parameter = entry.parameters.find((p) => p.name === name);
      if (parameter === undefined) {
        const hint = names.length === 0 ? 'this fault has none' : meant(name, names);
        return [
          { path: `${path}.${shortened(name)}`, message: `unknown parameter ${quoted(name)}; ${hint}` },
        ];
      }
      const { min, max, unit } = parameter;
      const fits = typeof value === 'number' && value >= min && value <= max;
      const typed = typeof value === 'string' ? figureIn(value) : null;
      const hint =
        typed === null ? '' : `${quoted(String(value))} is text: ${typed.value}, without quotes or unit; `;
      return when(!fits, `${path}.${name}`, `${hint}${min} to ${max} ${unit} is expected`.replace('  ', ' '));
    });
    if (own.length > 0 || on === null) return own;
    const impossible = whyImpossible(entry, on, values as Record<string, number>);
    return impossible === null ? [] : [{ path, message: { id: 'impossible', why: impossible } }];
  });
}

/** What counts in full beside the true cause is a fault, and another one. */
function acceptProblems(accept: readonly string[], faults: ScenarioFile['faults']): readonly Problem[] {
  const valid = CATALOGUE.filter(({ kind }) => kind === 'fault').map(({ id }) => id);
  return accept.flatMap((id, i) => [
    ...when(
      !valid.includes(id),
      `accept[${i}]`,
      `unknown fault ${quoted(id)}; ${meant(id, valid, WHERE_FAULTS)}`,
    ),
    ...when(accept.indexOf(id) < i, `accept[${i}]`, `${quoted(id)} stands in it already`),
    ...when(
      faults.some(({ fault }) => fault === id),
      `accept[${i}]`,
      `${quoted(id)} is what is wrong: it counts anyway`,
    ),
    ...when(faults.length === 0, `accept[${i}]`, 'nothing is wrong here: no cause can count'),
  ]);
}

/** The tests that look at what somebody tests with. */
const LOOKED_AT_BY: Readonly<Partial<Record<Component, string>>> = {
  tester: 'instruments',
  detector: 'prove-dead',
};

/** A tester that fails falsifies every other test: where it is not looked at, the unit would be blamed. */
function testerProblems(faults: ScenarioFile['faults'], allowed: Readable['allowed']): readonly Problem[] {
  if (allowed === undefined || allowed === 'all') return [];
  return faults.flatMap(({ fault }, i) => {
    const component = entryNamed(fault)?.component;
    const test = component === undefined ? undefined : LOOKED_AT_BY[component];
    return test === undefined || allowed.includes(test)
      ? []
      : [
          {
            path: `faults[${i}]`,
            message: `the unit would be blamed for the ${component}: ${quoted(test)} is expected among the tests that are allowed`,
          },
        ];
  });
}

function actionProblems(wanted: readonly string[], path: string): readonly Problem[] {
  const ids = ACTIONS.map(({ id }) => id);
  return wanted.flatMap((id, i) => {
    const first = wanted.indexOf(id);
    return [
      ...when(
        !ids.includes(id),
        `${path}[${i}]`,
        `unknown test action ${quoted(id)}; ${meant(id, ids, WHERE_TESTS)}`,
      ),
      ...when(first < i, `${path}[${i}]`, `${quoted(id)} stands in ${path}[${first}] already`),
    ];
  });
}

const handoverProblems = (
  { done, left }: NonNullable<ScenarioFile['handover']>,
  site: ScenarioFile['site'] | undefined,
): readonly Problem[] => [
  ...(done === 'others' ? [] : actionProblems(done, 'handover.done')),
  ...(site === undefined
    ? []
    : left.flatMap((operation, i) => operationProblems(operation, `handover.left[${i}]`, site))),
];

const rounded = (value: number): number => Number(value.toPrecision(4));

/** What is legal but would teach something false. */
/** `right`: the papers that the file's are, its named wrong designs left out. */
export function warningsOf({ site, unit }: ScenarioFile, right: Papers): readonly Problem[] {
  const { breaker, residualDevice, faultProtection } = site.circuit;
  const set = unit.setCurrent ?? unit.ratedCurrent;
  const direct = unit.residual.direct !== null || unit.residual.type === 'B' || residualDevice?.type === 'B';
  const additional = unit.residual.type !== null || (residualDevice !== null && residualDevice.rated <= 0.03);
  const byResidual = faultProtection === 'residual' && residualDevice !== null;
  const limit = byResidual
    ? greatestResidualLoop(residualDevice.rated)
    : measuredLoopLimit(breaker.type, breaker.rating);
  const { serviceLimit } = unit;
  const loaded = LINES.map((line) =>
    site.otherLoads.reduce(
      (sum, load) => sum + (load.line === line ? load.power / 230 : 0),
      site.nextPoint?.draws ?? 0,
    ),
  );
  return [
    ...when(
      serviceLimit !== null && serviceLimit - Math.max(...loaded) < OFFER_RANGE.least,
      'unit.serviceLimit',
      site.nextPoint === undefined
        ? 'the site’s own loads leave less than 6 A of it: the unit never offers'
        : 'the site’s own loads and its next point leave less than 6 A of it: the unit does not offer until one is off',
    ),
    ...when(set > breaker.rating, 'unit.setCurrent', `${set} A is above the breaker’s ${breaker.rating} A`),
    ...when(
      site.voltage < SUPPLY_VOLTAGE.least || site.voltage > SUPPLY_VOLTAGE.greatest,
      'site.voltage',
      'outside 216.2 to 253 V: the supply itself is out of limits',
    ),
    ...when(
      site.earthing === 'TT' && residualDevice === null,
      'site.circuit.residualDevice',
      'TT without a residual device at the origin: an earth fault in the feed cable is never cleared (BS 7671 411.5.2)',
    ),
    ...when(
      site.earthing === 'TT' &&
        residualDevice !== null &&
        (site.electrodeResistance ?? 0) > greatestElectrode(residualDevice.rated),
      'site.electrodeResistance',
      'RA × IΔn is above 50 V (BS 7671 411.5.3)',
    ),
    ...when(
      site.earthing !== 'TT' && (site.loopImpedance ?? 0) > limit,
      'site.loopImpedance',
      `Ze alone is above the measured limit of ${Number(limit.toFixed(2))} Ω for ${byResidual ? 'the residual device' : `${breaker.type}${breaker.rating}`}`,
    ),
    ...designSums(right)
      .filter((sum) => !isRight(sum))
      .map(({ field, is, kind, limit: allowed, unit, source }) => ({
        path: field,
        message: `the design is wrong, and no fault of this file names it: ${rounded(is)} ${unit}, where at ${kind} ${rounded(allowed)} is right (${source.where})`,
      })),
    ...when(!additional, 'unit.residual', 'no 30 mA device in the unit or upstream (BS 7671 722.531.3.101)'),
    ...when(!direct, 'unit.residual.direct', 'no protection against d.c. faults (BS 7671 722.531.3.101)'),
    ...when(
      unit.residual.type === 'AC' || residualDevice?.type === 'AC',
      'unit.residual',
      'a type AC device is not for a charge point (BS 7671 531.3.3)',
    ),
    ...when(
      site.earthing === 'TN-C-S' && unit.openPen === 'none',
      'unit.openPen',
      'a PME earth with no open-PEN measure named (BS 7671 722.411.4.1)',
    ),
  ];
}
