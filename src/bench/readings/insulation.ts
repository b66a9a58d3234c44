/** Insulation resistance at a nominal d.c. voltage. */
import * as v from 'valibot';
import { between, measuring, pair } from './fields.ts';
import { quantityOf } from './quantity.ts';
import { onOneScale } from './scale.ts';

/** BS 7671 Table 64 and lower ones that a maker may allow, V. */
const TEST_VOLTAGES = [50, 100, 250, 500, 1000] as const;

export const insulation = quantityOf({
  quantity: 'insulation',
  unit: 'Ω',
  measurement: measuring('insulation', { between, volts: v.picklist(TEST_VOLTAGES) }),
  fields: { between: pair, volts: v.picklist(TEST_VOLTAGES) },
  ...onOneScale('insulation', {
    gain: 0.05,
    digits: 2,
    inSteps: true,
    spans: [
      { to: 2e6, step: 1e4 },
      { to: 20e6, step: 1e5 },
      { to: 200e6, step: 1e6 },
    ],
  }),
  display: (ohms) => ({ unit: 'MΩ', decimals: ohms < 2e6 ? 2 : ohms < 20e6 ? 1 : 0 }),
  typedIn: ['kΩ', 'MΩ'],
});
