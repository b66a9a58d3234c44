/** Words of the test action `earths-apart`. */
import type { ActionWords } from '../actionWords.ts';
import { num } from '../values.ts';

const ohms = (v: Parameters<typeof num>[0], key: string): string => `${Number(num(v, key).toPrecision(3))}`;

export const earthsApart: ActionWords = {
  purpose: 'Show that the unit’s own earth and the earth of the house touch nowhere but in the ground.',
  stops: {
    joined:
      'a broken PEN conductor would put mains voltage on the vehicle through the joint between the two earths: part them first (BS 7671 643.1)',
  },
  lines: {
    joined: {
      text: (v) =>
        `reads under ${ohms(v, 'least')} Ω from its earthing terminal to the house’s (papers: electrode of ${ohms(v, 'declared')} Ω)`,
      why: 'Between the two earths lies the soil round the electrode, tens of ohms. Far less means metal: armour earthed at both ends, a bracket, a bonding conductor. Then a broken PEN conductor in the street raises the vehicle’s body with the house.',
      otherwise: 'a reading near 0 Ω, as of a wire',
    },
    'own-ohms': {
      text: 'has an electrode of the ohms that the papers give',
      why: 'This reading goes through the electrode, the ground and whatever earths the house. Only the electrode taken off and measured alone gives its own ohms.',
    },
  },
};
