/** What each cause of this kind is, where it sits, how it comes about, who is at risk and which test tells it. */
import type { CauseWords } from '../causeWords.ts';

export const tester: Readonly<Record<string, CauseWords>> = {
  'tester-lead-broken': {
    where: 'a lead of the tester for continuity and insulation',
    cause: 'The lead was bent at its plug until the core parted inside its insulation.',
    hazard:
      'Every conductor seems open, and every insulation seems perfect. Whoever believes the second passes a cable that is damaged.',
    tells:
      'With both leads on one terminal the tester reads over-range, on continuity and on insulation. Sound leads read 0 there whatever the circuit is like, so the fault is in the lead and no part of the installation.',
  },
  'tester-does-not-null': {
    where: 'the memory of the tester in which nulling keeps what the leads read',
    cause: 'The tester has lost its setting, or its key for nulling is worn out.',
    hazard:
      'None to people by itself: each continuity reading is some hundredths of an ohm too high, so sound conductors are rejected.',
    tells:
      'After nulling, both leads on one terminal still read 0.05 to 0.10 Ω, and insulation reads 0 there. A poor joint in a conductor would not show with both leads on one terminal.',
  },
  'tester-battery-flat': {
    where:
      'the battery of the tester for continuity and insulation; the setting is the share of its voltage that is left',
    cause: 'Nobody charged it after the last job.',
    hazard:
      'None to people by itself: the tester refuses, because it can no longer drive 200 mA or hold its test voltage. Somebody may be tempted to leave the tests out.',
    tells:
      'With both leads on one terminal the tester gives no reading and says that its battery is too low. A tester that has met a live part gives none either, but says that its fuse is open.',
  },
  'tester-out-of-calibration': {
    where:
      'the scale of the tester for continuity, insulation and coding; the setting is how many times what is there it shows',
    cause: 'It was dropped, or it has drifted since it was last calibrated.',
    hazard:
      'It makes damaged insulation look sound: 0.7 MΩ shows as more than 1 MΩ. Sound conductors read too high and are rejected.',
    tells:
      'On the known resistor of 1 Ω the tester shows well above 1 Ω. With both leads on one terminal it still shows 0, so only a known resistor tells it.',
  },
  'detector-lead-parts': {
    where: 'a lead of the two-pole voltage detector',
    cause:
      'The core was broken inside its insulation and held by a strand, until the probe was pressed on a terminal.',
    hazard:
      'From then on the detector shows every live part as dead. Whoever does not prove it again puts a hand on a live conductor.',
    tells:
      'The detector lights on its proving unit before the test and stays dark on it afterwards, in the test that proves it dead. A circuit that is truly dead leaves the detector lit on the proving unit both times.',
  },
};
