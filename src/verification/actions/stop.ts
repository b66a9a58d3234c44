/** Test action `stop`: a normal stop that the vehicle ignores, and an emergency stop. */
import { unplug, untilSupplied } from '../offer.ts';
import { rulesFor } from '../rules/rules.ts';
import { outletVoltages, pilot, waitFor } from '../steps.ts';
import type { Procedure } from '../testAction.ts';

export const stop: Procedure = {
  id: 'stop',
  stage: 'fault response',
  from: 'energised',
  leaves: 'energised',
  needsSupply: true,
  restsOn: ['contactor', 'pilot'],
  applies: () => true,
  steps: (papers) => [
    ...untilSupplied(papers),
    { op: 'press', button: 'emergency' },
    ...outletVoltages(papers),
    waitFor(5),
    // The vehicle still asks: a reset lets it be supplied again.
    { op: 'reset', what: 'unit' },
    waitFor(5),
    // Pressed and reset at once: only its own pause keeps it from offering again.
    { op: 'press', button: 'emergency' },
    { op: 'reset', what: 'unit' },
    waitFor(5),
    { op: 'press', button: 'stop' },
    pilot,
    waitFor(10),
    ...unplug,
  ],
  untold: (papers) => [
    {
      id: 'other-outlets',
      toldBy: [],
      source: rulesFor(papers).regulation('722.537.2.201'),
    },
  ],
};
