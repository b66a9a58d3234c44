/** What each cause of this kind is, where it sits, how it comes about and who is at risk. */
import type { CauseWords } from '../causeWords.ts';

export const insulationFaults: Readonly<Record<string, CauseWords>> = {
  'line-pe-insulation-low': {
    title: 'Low insulation from line to PE in the circuit’s cable',
    where: 'the cable between origin and unit, L1 to PE',
    cause: 'A nail or a staple, or a crushed cable.',
    hazard: 'Shock and fire; it gets worse with damp and time.',
  },
  'neutral-pe-insulation-low': {
    title: 'Low insulation from neutral to PE in the circuit’s cable',
    where: 'the cable between origin and unit, N to PE',
    cause: 'A nail or a staple, or a crushed cable.',
    hazard: 'Current strays into the protective conductor; residual devices are disturbed.',
  },
  'line-neutral-insulation-low': {
    title: 'Low insulation from line to neutral in the circuit’s cable',
    where: 'the cable between origin and unit, L1 to N',
    cause: 'A crushed cable, or a damp box on the way.',
    hazard: 'Fire: no residual device sees it.',
  },
  'outlet-insulation-low': {
    title: 'Low insulation from line to PE at the outlet',
    where: 'the outlet or its cable, behind the contactor',
    cause: 'It was driven over, or water stands in it.',
    hazard: 'Shock, as soon as it is supplied.',
  },
  'tether-insulation-moves': {
    title: 'Tether’s insulation gives way when it is bent',
    where: 'the tether, L1 to PE, where it enters the connector',
    cause: 'The core’s insulation has cracked.',
    hazard: 'Shock, as soon as it is supplied and moved.',
  },
  'arrester-aged': {
    title: 'Surge arrester has aged',
    where: 'the arrester on L1 in the unit: the voltage from which it conducts',
    cause: 'Surges have worn it.',
    hazard: 'It heats, and may burn.',
  },
};
