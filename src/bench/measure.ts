/**
 * Puts the instrument that an operation names on its leads and returns the true value. Refuses where the leads
 * cannot reach; a tester that meets voltage loses its fuse, which can be heard.
 */
import type { Line } from '../laws/conductors.ts';
import type { Amps, Seconds } from '../laws/quantities.ts';
import { damageBy } from './instruments/damage.ts';
import { coding, continuity, insulation } from './instruments/directTester.ts';
import { electrode } from './instruments/electrodeTester.ts';
import { loop } from './instruments/loopTester.ts';
import { openingTime } from './instruments/openingTimer.ts';
import { phaseSequence } from './instruments/phaseSequence.ts';
import { pilot } from './instruments/pilotMeter.ts';
import { residual } from './instruments/residualTester.ts';
import { leadOf, strain, voltage } from './instruments/voltageTools.ts';
import type { Measurement, MeasurementOf } from './operation.ts';
import type { TestedPlace } from './plant.ts';
import { leadsOn } from './port.ts';
import type { Truth } from './reading.ts';
import type { AnyFields } from './readings/quantity.ts';
import type { Refusal } from './refusal.ts';
import { move, settle } from './settle.ts';
import type { Probe } from './terminals.ts';
import { isAt, labelOf, terminalsIn } from './terminals.ts';
import type { World } from './world.ts';
import { happen } from './world.ts';

export function measure(world: World, measurement: Measurement): Truth {
  const probes = 'between' in measurement ? measurement.between : [];
  const atSupply =
    probes.some((probe) => terminalsIn(probe).some((t) => isAt(t, 'supply'))) ||
    (measurement.quantity === 'phase-sequence' && measurement.at === 'supply');
  if (atSupply && world.plant.cover === 'closed') return refusing(measurement, { id: 'cover-closed' });
  const fused = measurement.quantity === 'continuity' || measurement.quantity === 'insulation';
  if (fused && world.plant.testerFuse === 'opened') return refusing(measurement, { id: 'fuse-open' });
  if (measurement.quantity === 'insulation') harm(world, measurement);
  const truth = reach(world, measurement);
  if (fused && 'refused' in truth && truth.refused.id === 'voltage-on-leads') {
    happen(world, 'instrument fuse opened');
    world.plant = { ...world.plant, testerFuse: 'opened' };
  }
  return truth;
}

/** Before the instrument was as much as set: what is told is where its leads were. */
const refusing = (measurement: Measurement, refused: Refusal) =>
  ({
    quantity: measurement.quantity,
    refused,
    details: 'between' in measurement ? between(measurement.between) : {},
  }) as Truth;

/** The voltage is on the leads before any reading is: what it destroys is destroyed. */
function harm(world: World, { between: [a, b], volts }: MeasurementOf<'insulation'>): void {
  const damaged = damageBy(world, leadsOn(world, a, b), volts);
  if (damaged.length === 0) return;
  move(world, { damaged: [...new Set([...world.plant.damaged, ...damaged])] });
  settle(world);
}

const between = (probes: readonly [Probe, Probe]): Required<Pick<AnyFields, 'between'>> => ({
  between: [labelOf(probes[0]), labelOf(probes[1])],
});

function reach(world: World, m: Measurement): Truth {
  const { tester } = world.installation;
  switch (m.quantity) {
    case 'continuity':
      return continuity(leadsOn(world, ...m.between), world.plant.leadsNulled, tester, between(m.between));
    case 'insulation':
      return insulation(leadsOn(world, ...m.between), m.volts, tester, {
        ...between(m.between),
        volts: m.volts,
      });
    case 'voltage':
      strain(world, m.tool);
      return voltage(
        leadsOn(world, ...m.between),
        m.tool,
        world.plant.duty,
        between(m.between),
        leadOf(world, m.tool),
      );
    case 'pilot':
      return pilot(leadsOn(world, 'outlet.CP', 'outlet.PE'), {
        duty: world.plant.duty,
        frequency: world.installation.design.pilot.frequency,
      });
    case 'coding':
      return coding(leadsOn(world, 'outlet.PP', 'outlet.PE'), tester, between(['outlet.PP', 'outlet.PE']));
    case 'electrode':
      return electrode(world);
    case 'phase-sequence':
      return phaseSequence(world, m.at);
    case 'loop':
      return loop(
        world,
        leadsOn(world, ...m.between),
        m.current,
        { ...between(m.between), current: m.current },
        outletPair(m),
      );
    case 'residual':
      return residual(world, {
        at: m.at,
        line: m.line,
        waveform: m.waveform,
        mode: m.mode,
        amps: m.amps ?? ratedAt(world, m.at),
        seconds: m.seconds ?? usualHold(world, m),
      });
    case 'opening-time':
      return openingTime(world, m.of);
  }
}

/** The pair of outlet conductors that a loop test's current flows in, or null elsewhere. */
function outletPair(m: MeasurementOf<'loop'>): { line: Line; to: 'PE' | 'N' } | null {
  const [a, b] = m.between.map((probe) => (typeof probe === 'string' ? probe : ''));
  const match = /^outlet\.(L1|L2|L3) outlet\.(PE|N)$/.exec(`${a} ${b}`);
  return match === null ? null : { line: match[1] as Line, to: match[2] as 'PE' | 'N' };
}

/** The rating that residual tests refer to: the unit's own device, else the one upstream, else 30 mA. */
function ratedAt(world: World, at: TestedPlace): Amps {
  const { design, site } = world.installation;
  const own = at === 'outlet' ? design.sheet.residual.rated : null;
  return own ?? site.circuit.residualDevice?.rated ?? 0.03;
}

/** How long a fixed current is held at most, s (contract): smooth d.c. may take its 10 s (IEC 62955:2018 Table 2). */
const usualHold = (world: World, m: MeasurementOf<'residual'>): Seconds =>
  m.waveform.startsWith('smooth') || (m.amps ?? 0) >= 5 * ratedAt(world, m.at) ? 10 : 0.5;
