/** The resistor that tells what a cable carries, PP to PE at the outlet. */
import { ohmsShown } from './display.ts';
import { quantityOf } from './quantity.ts';
import { OHMS, onOneScale } from './scale.ts';

export const coding = quantityOf({
  quantity: 'coding',
  unit: 'Ω',
  ...onOneScale('coding', { gain: 0.03, digits: 0.02, spans: [...OHMS, { to: 20_000, step: 10 }] }),
  display: (ohms) => (ohms < 2000 ? ohmsShown(ohms) : { unit: 'kΩ', decimals: 2 }),
  typedIn: ['Ω', 'kΩ'],
});
