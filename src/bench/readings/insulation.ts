/** Insulation resistance at a nominal d.c. voltage. */
import { quantityOf } from './quantity.ts';
import { onOneScale } from './scale.ts';

export const insulation = quantityOf({
  quantity: 'insulation',
  unit: 'Ω',
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
