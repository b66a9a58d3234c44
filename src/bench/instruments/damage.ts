/**
 * What an insulation tester's voltage destroys inside a connected unit: the pilot's electronics, which are made for
 * extra-low voltage, and anything beyond the voltage that the unit's sheet allows.
 */

import type { Volts } from '../../laws/quantities.ts';
import { linesOf } from '../../site/site.ts';
import type { Damage } from '../damages.ts';
import type { Leads } from '../port.ts';
import type { World } from '../world.ts';
import { drivenBy } from './directTester.ts';

/** The pilot's circuits are SELV or PELV (IEC 61851-1:2017 8.6): 60 V d.c. is the limit of that (BS 7671 414.4.5, from memory). */
const PILOT_WITHSTANDS: Volts = 60;
/** An instrument's open voltage may be up to a quarter above nominal (IEC 61557-2, from memory): no harm within that. */
const OVER_NOMINAL = 1.25;

/** What breaks under this test, whatever the reading. */
export function damageBy(world: World, leads: Leads, nominal: Volts): readonly Damage[] {
  const { installation, plant } = world;
  const { high } = drivenBy(leads, nominal, installation.tester);
  const across = (a: string, b: string) =>
    Math.abs((high[leads.nodeAt(a)] ?? 0) - (high[leads.nodeAt(b)] ?? 0));
  const { sheet } = installation.design;
  const stress = Math.max(...linesOf(installation.site).map((line) => across(`inner.${line}`, 'bar')));
  return [
    ...(across('pilot', 'bar') > PILOT_WITHSTANDS ? (['pilot'] as const) : []),
    ...(stress > OVER_NOMINAL * sheet.insulationTestVoltageMax && !plant.removed.includes('unit')
      ? (['electronics'] as const)
      : []),
  ];
}
