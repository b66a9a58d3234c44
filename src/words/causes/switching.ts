/** What each cause of this kind is, where it sits, how it comes about and who is at risk. */
import type { CauseWords } from '../causeWords.ts';

export const switching: Readonly<Record<string, CauseWords>> = {
  'line-pole-welded': {
    title: 'Line pole of the contactor welded, not noticed by the unit',
    where: 'the contactor; the contact that should report it is not read',
    cause: 'Inrush has welded the pole, and the sensing wire is off.',
    hazard: 'The connector is live with nothing plugged in.',
  },
  'line-pole-welded-noticed': {
    title: 'Line pole of the contactor welded, and the unit says so',
    where: 'the contactor; the contact that reports it works',
    cause: 'Inrush has welded the pole.',
    hazard: 'The connector is live, though nobody can start a charge.',
  },
  'neutral-pole-welded': {
    title: 'Neutral pole of the contactor welded',
    where: 'the contactor; the contact that should report it is not read',
    cause: 'Inrush has welded the pole.',
    hazard: 'The neutral is always through: the vehicle is never isolated from it.',
  },
  'all-poles-welded': {
    title: 'Every pole of the contactor welded',
    where: 'the contactor; the contact that should report it is not read',
    cause: 'A short circuit in a vehicle.',
    hazard: 'The connector is live with nothing plugged in.',
  },
  'opens-slowly': {
    title: 'Contactor opens too slowly',
    where: 'the contactor’s coil and springs',
    cause: 'A weak spring, or a coil suppressed too much.',
    hazard: 'An arc as the connector is pulled.',
  },
  'closes-slowly': {
    title: 'Supply comes too late after it is asked for',
    where: 'the control logic, before the contactor closes',
    cause: 'A fault of its programme.',
    hazard: 'None to people: the vehicle gives up.',
  },
  'line-pole-stuck-open': {
    title: 'A line pole of the contactor never closes',
    where: 'the contactor',
    cause: 'The contact is burnt away.',
    hazard: 'None to people: a line is missing at the vehicle.',
  },
  'neutral-pole-stuck-open': {
    title: 'The neutral pole of the contactor never closes',
    where: 'the contactor',
    cause: 'The contact is burnt away.',
    hazard: 'An outlet that seems dead is live to earth; on three phases voltages run away.',
  },
  'contact-resistance': {
    title: 'A pole of the contactor has high resistance',
    where: 'one line pole of the contactor',
    cause: 'The contact is pitted.',
    hazard: 'Heat inside the unit.',
  },
  'bleed-too-strong': {
    title: 'What bleeds across an open pole lets too much through',
    where: 'the part across one line pole of the contactor',
    cause: 'A suppressor has failed low.',
    hazard: 'Current through whoever touches the connector, above 3.5 mA.',
  },
};
