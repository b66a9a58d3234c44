/** Resistance of the installation's own electrode to true earth. */
import { ohmsShown } from './display.ts';
import { quantityOf } from './quantity.ts';
import { OHMS, onOneScale } from './scale.ts';

export const electrode = quantityOf({
  quantity: 'electrode',
  unit: 'Ω',
  ...onOneScale('electrode', { gain: 0.05, digits: 0.5, spans: OHMS }),
  display: ohmsShown,
  typedIn: ['Ω', 'kΩ'],
});
