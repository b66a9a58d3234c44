/** What each cause of this kind is, where it sits, how it comes about and how it is told from a fault. */
import type { CauseWords } from '../causeWords.ts';

export const notFaults: Readonly<Record<string, CauseWords>> = {
  'start-delay': {
    where: 'the control logic, before an offer',
    cause:
      'A private unit waits a random time before it offers current, so that not all units start at once.',
    tells:
      'The pilot reads a steady 9 V and the outlet stays dead. The sheet’s line “start delay” gives the longest wait: override it, and the pilot oscillates. A unit whose pilot cannot oscillate stays steady.',
  },
  'keeps-default-hours': {
    where: 'the control logic, before an offer',
    cause: 'A private unit stays off in the peak hours unless somebody overrides them.',
    tells:
      'The pilot reads a steady 9 V and the outlet stays dead. The sheet’s line “charging hours” gives the hours: override them, and the pilot oscillates. A unit whose pilot cannot oscillate stays steady.',
  },
  'waits-for-authorisation': {
    where: 'the control logic, before an offer',
    cause: 'The pilot stays steady until somebody who is allowed to gives permission.',
    tells:
      'The pilot reads a steady 9 V and the outlet stays dead. The sheet’s line “permission” says so: authorise, and the pilot oscillates. A unit whose pilot cannot oscillate stays steady.',
  },
  'held-by-load-sharing': {
    where: 'the site’s load management: it leaves the unit less than 6 A',
    cause:
      'Other loads come first. The pilot stays steady until at least 6 A is left, because no duty stands for less.',
    tells:
      'The pilot reads a steady 9 V though permission is given. The sheet’s line “load limit” is under 6 A: raise the limit, and the pilot oscillates.',
  },
  'offer-cut-by-load-sharing': {
    where: 'the site’s load management: it leaves the unit less than its rating',
    cause: 'Other loads come first. The unit offers what is left, down to 6 A (10 %).',
    tells:
      'The duty is lower than the rating needs, and stands for the current in the sheet’s line “load limit”. Raise the limit: the duty follows. A duty that is too low by calibration matches no limit.',
  },
  'next-point-charges': {
    where: 'the next point: a vehicle was charging on it when you came',
    cause: 'Both points share one service, and this unit is the one that gives way. It offers what is left.',
    tells:
      'The duty is lower than the rating needs. The papers’ line “next point” says what a vehicle draws there: make that point idle, and the duty rises. A duty that is too low by calibration stays too low.',
  },
  'customers-small-cable': {
    where: 'the cable at hand',
    cause: 'The unit offers no more than the cable can carry.',
    tells:
      'The duty is low with this cable, and stands for its coding in the sheet’s line “outlet”. Plug in a stand-in coded 32 A: the duty rises. With a dirty contact or a drifted resistor it stays low.',
  },
  'set-by-installer': {
    where: 'the unit’s current setting',
    cause: 'The setting suits the supply or the circuit.',
    tells:
      'The duty is lower than the rating needs, and stands for the sheet’s line “set current”. A duty that is too low by calibration stands for less than the set current.',
  },
  'ventilation-refused': {
    where: 'the control logic, in state D',
    cause: 'No ventilation can be commanded, so such a vehicle must not be supplied.',
    tells:
      'The pilot reads 3 V (D) and the outlet stays dead. The sheet’s line “ventilation” says that state D is refused. Ask without ventilation (C): the outlet goes live, so the contactor is sound.',
  },
  'bleed-across-poles': {
    where: 'across each pole of the contactor',
    cause: 'The unit senses its poles through large resistors, which pass a trace of current.',
    tells:
      'A voltmeter draws so little that it shows the ghost voltage; a voltage detector loads it down and shows dead. The sheet’s line “open poles” gives the resistance. A welded pole would read about 0 Ω in the test of every pole.',
  },
  'arrester-clamps': {
    where: 'from each live conductor to PE in the unit',
    cause: 'The arrester begins to conduct at about 430 V, as it is made to.',
    tells:
      'At 500 V the insulation reads low, at 250 V it reads good. The sheet’s line “surge arrester” says fitted. An aged arrester or wet insulation reads low at 250 V as well.',
  },
  'device-at-the-board': {
    where: 'the circuit’s origin: the 30 mA device stands there, and the unit has only the d.c. detector',
    cause: 'The designer chose where the a.c. device goes, and the sheet says where.',
    tells:
      'At 30 mA a.c. the device at the origin opens and the unit goes dark. The sheet’s line “residual device” says none in the unit. With smooth d.c. the unit’s own detector opens the contactor, and the display stays lit.',
  },
  'goes-on-without-a-line': {
    where: 'the control logic, with L2 or L3 gone',
    cause: 'A vehicle takes the lines that it finds. No standard asks the unit to stop.',
    tells:
      'Take a line away: the outlet stays live on those that are left. The sheet’s line “a line lost” says that the unit goes on. It would be a fault in a unit whose sheet says that it stops.',
  },
  'plug-free-until-supplied': {
    where: 'the lock of the socket-outlet',
    cause: 'The lock need only hold the plug before the supply closes, and this unit waits until then.',
    tells:
      'In connected (B) the plug comes out at a pull. The sheet’s line on the plug says that it is free until the unit supplies: ask for supply (C), and it is held. With a lock that does not engage it comes out then too.',
  },
  'earth-pole-open-unpowered': {
    where: 'the pole in the protective conductor inside the unit',
    cause: 'The open-PEN measure’s spring opens its poles whenever the unit has no supply.',
    tells:
      'With the supply off, earthing terminal to outlet reads over-range, though the unit’s case reads right. The sheet’s line on the open-PEN measure says so. A loop test at the supplied outlet reads right; with a parted conductor it finds no return.',
  },
  'open-pen-acts-at-once': {
    where: 'the open-PEN measure inside the unit',
    cause: 'The measure may wait for up to 4 s, and need not. This one opens at once.',
    tells:
      'A disturbance of a second opens the contactor, and the reset button has to be pressed. The sheet’s line on the open-PEN measure says that it rides nothing out. A measure that acts without a disturbance would be a fault.',
  },
  'steel-beside-earth': {
    where: 'steel, tray or armour that lies in parallel with the circuit’s protective conductor',
    cause: 'The metal is fixed to the earth bar at the board and to the unit, and the papers say so.',
    tells:
      'Earthing terminal to unit reads less than length × mΩ/m, because two ways share the test current. The papers name the metal and its ohms. With an earth that is borrowed the papers name none.',
  },
  'delayed-device-ahead': {
    where: 'the circuit’s origin: a delayed device (S) of 100 mA stands ahead of the unit’s own',
    cause: 'It protects the cable and the house, and waits so that the unit’s device opens first.',
    tells:
      'Tested at the origin at 100 mA, the device takes 130 to 500 ms. The papers name it as type S, for which that is right. At the outlet the unit’s own 30 mA device opens alone, within 300 ms.',
  },
  'trip-clears-with-supply': {
    where: 'the control logic, after a residual trip',
    cause: 'The unit has no reset of its own for a trip: somebody switches its supply off and on.',
    tells:
      'After a trip the reset button does nothing. The sheet’s line on the trip says that it clears when the supply returns: switch off and on, and the unit is ready. It would be a fault in a unit whose sheet asks for the button.',
  },
  'slow-to-start': {
    where: 'the unit’s electronics, after supply returns',
    cause: 'The unit tests itself first. No standard sets a time for that.',
    tells:
      'After switching on the pilot reads 0 V, as if its conductor were open. Wait for the time in the sheet’s line “start-up”: the pilot then goes to 12 V and the display shows ready.',
  },
};
