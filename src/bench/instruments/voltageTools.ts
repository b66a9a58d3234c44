/**
 * The two voltage tools: a two-pole detector, whose own load takes a ghost voltage away, and a meter of 10 MΩ,
 * which shows it.
 */
import type { Duty, Ohms, Volts } from '../../laws/quantities.ts';
import { OPEN } from '../../site/part.ts';
import type { Leads } from '../port.ts';
import { LIVE, leadsOn, loadedVolts, openVolts, seenBy } from '../port.ts';
import type { Truth } from '../reading.ts';
import type { VoltageTool } from '../readings/choices.ts';
import type { FieldsOf } from '../readings/quantity.ts';
import type { World } from '../world.ts';

/**
 * Input resistance, Ω. The detector draws 6 mA at 236 V, so that coupling through filters and insulation does not
 * hold against it: a design choice. 10 MΩ is common practice for a meter, no source.
 */
export const INPUT: Readonly<Record<VoltageTool, Ohms>> = { 'two-pole': 40_000, meter: 10e6 };

/**
 * Whether something supplies these two terminals: more than 50 V holds against the detector's load. A declared bleed
 * across an open pole (200 kΩ and more) does not, though a touch through 2 kΩ would feel it.
 */
export function supplied(world: World, a: string, b: string): boolean {
  const leads = leadsOn(world, a, b);
  // A load only ever takes voltage away.
  return openVolts(leads) > LIVE.volts && loadedVolts(seenBy(leads), INPUT['two-pole']) > LIVE.volts;
}

/** R.m.s. volts, and the mean d.c. over a pilot period of this duty; `lead`: what is in the tool's leads beyond a sound pair. */
export function voltage(
  leads: Leads,
  tool: VoltageTool,
  duty: Duty,
  details: FieldsOf<'voltage'>,
  lead: Ohms = 0,
): Truth {
  const seen = seenBy(leads);
  const load = INPUT[tool];
  const direct = duty * seen.open.high + (1 - duty) * seen.open.low;
  return {
    quantity: 'voltage',
    // The lead and the tool divide what is across both.
    value: (loadedVolts(seen, lead + load) * load) / (lead + load),
    details: { ...details, tool, dc: (direct * load) / (seen.resistance + lead + load) },
  };
}

/** What is in the leads of this tool now, Ω. */
export const leadOf = ({ installation, plant }: World, tool: VoltageTool): Ohms =>
  tool === 'two-pole' && installation.detector.leadParts && plant.detectorLead === 'parted' ? OPEN : 0;

/** Putting the detector on terminals strains its leads: one that is about to part does. */
export function strain(world: World, tool: VoltageTool): void {
  if (tool !== 'two-pole' || !world.installation.detector.leadParts) return;
  world.plant = { ...world.plant, detectorLead: 'parted' };
}

/** What a proving unit gives, V: enough for every step of a detector. A design choice. */
const PROVING: Volts = 230;

/** Whether the detector shows the proving unit's voltage through its leads. */
export const showsProvingUnit = (world: World): boolean =>
  (PROVING * INPUT['two-pole']) / (leadOf(world, 'two-pole') + INPUT['two-pole']) >= LIVE.volts;
