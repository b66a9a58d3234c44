/**
 * Trade words that a first-year apprentice may lack, each with what it means here and where it is fixed. A word is found
 * in a text by its pattern; explaining one never says what this unit does.
 */

export interface Entry {
  readonly word: string;
  readonly pattern: RegExp;
  readonly meaning: string;
  /** Where the term is defined, or that it is the trade's own. */
  readonly source: string;
}

const TRADE = 'common practice, no source';
const PILOT = 'IEC 61851-1:2017 Annex A';

export const GLOSSARY: readonly Entry[] = [
  {
    word: 'arrester',
    pattern: /arrester/,
    meaning:
      'A surge arrester clamps a voltage peak to PE. At 500 V d.c. it may clamp an insulation test too, and the reading is then its own.',
    source: 'BS 7671:2018+A2:2022 643.3.2',
  },
  {
    word: 'coding',
    pattern: /\bcod(?:ing|es|ed)\b|proximity/,
    meaning:
      'A resistor between the proximity contact (PP) and PE in the plug. It says what current the cable may carry: 1.5 kΩ 13 A, 680 Ω 20 A, 220 Ω 32 A, 100 Ω 63 A.',
    source: 'IEC 61851-1:2017 Table B.2',
  },
  {
    word: 'contactor',
    pattern: /contactor|\bpoles?\b/,
    meaning:
      'The unit’s switch for the live conductors, one pole for each, worked by a coil. It is no means of isolation: a pole may weld.',
    source: 'IEC 61851-1:2017 6.2.1, UK note',
  },
  {
    word: 'diode',
    pattern: /diode/,
    meaning:
      'Every vehicle has one in its pilot circuit, so that only the upper half of the pilot is loaded. A low half that rises shows the unit that it faces something that is no vehicle.',
    source: 'IEC 61851-1:2017 Table A.4',
  },
  {
    word: 'duty',
    pattern: /\bduty\b|offer/,
    meaning:
      'The share of a period for which the pilot is high. From 10 to 85 % it offers 0.6 A for each point: 26.7 % is 16 A, 53.3 % is 32 A. Half as high for twice as long is not the same offer.',
    source: 'IEC 61851-1:2017 Tables A.7 and A.8',
  },
  {
    word: 'electrode',
    pattern: /electrode/,
    meaning:
      'A rod or plate in the ground, the installation’s own earth on a TT site. Every earth fault current passes it.',
    source: 'BS 7671:2018+A2:2022 Part 2',
  },
  {
    word: 'half-wave',
    pattern: /half-wave|r\.m\.s\./,
    meaning:
      'Alternating current with one half cut off, as a rectifier’s fault gives. Its mean is not zero, so a d.c. detector answers it as well.',
    source: 'IEC 61008-1',
  },
  {
    word: 'insulation resistance',
    pattern: /insulation|MΩ/,
    meaning:
      'What is left between conductors that should be parted, measured with d.c. on a dead circuit, in megohms.',
    source: 'BS 7671:2018+A2:2022 643.3',
  },
  {
    word: 'IP44',
    pattern: /\bIP\d/,
    meaning: 'A degree of protection: no wire of 1 mm gets in, and splashing water does no harm.',
    source: 'IEC 60529',
  },
  {
    word: 'latched',
    pattern: /latch/,
    meaning:
      'Held until something else is done: a fault that is latched stays shown after its cause has gone.',
    source: TRADE,
  },
  {
    word: 'live conductor',
    pattern: /live conductor/,
    meaning: 'A conductor that carries current in service. The neutral is one.',
    source: 'BS 7671:2018+A2:2022 Part 2',
  },
  {
    word: 'loop impedance',
    pattern: /\bloop\b|\bZe\b|test current/,
    meaning:
      'The impedance of the whole way that a fault current takes: source, line, and back. Ze is the part outside the installation. A low figure lets the device see a great current and act.',
    source: 'BS 7671:2018+A2:2022 411.4.4',
  },
  {
    word: 'low-current method',
    pattern: /low-current/,
    meaning:
      'A loop test with a current too small to trip a residual device. It may read some tenths of an ohm high through the coils of one.',
    source: TRADE,
  },
  {
    word: 'main earthing terminal (MET)',
    pattern: /earthing terminal|\bMET\b/,
    meaning: 'Where the installation’s protective conductors meet the earthing conductor.',
    source: 'BS 7671:2018+A2:2022 Part 2',
  },
  {
    word: 'open-PEN measure',
    pattern: /\bPEN\b/,
    meaning:
      'A PEN conductor is neutral and earth in one. If it parts in the street, everything earthed to it may become live through the loads. A charge point on such a supply needs something that notices and parts the vehicle.',
    source: 'BS 7671:2018+A2:2022 722.411.4.1',
  },
  {
    word: 'origin',
    pattern: /origin|upstream/,
    meaning:
      'Here: where this circuit leaves the consumer unit. What stands between there and the source is upstream.',
    source: TRADE,
  },
  {
    word: 'PE',
    pattern: /\bPE\b|protective conductor/,
    meaning:
      'The protective conductor: it joins exposed metal, and through the plug the vehicle, to the main earthing terminal.',
    source: 'BS 7671:2018+A2:2022 Part 2',
  },
  {
    word: 'pilot (CP)',
    pattern: /\bpilot\b/,
    meaning:
      'One wire from unit to vehicle, with PE as its return. The unit sends ±12 V through 1 kΩ; the vehicle loads it, and the voltage that is left says what the vehicle wants.',
    source: PILOT,
  },
  {
    word: 'polarity',
    pattern: /polarity|right way round|crossed/,
    meaning: 'Line where the line belongs, neutral where the neutral belongs, and switches in the line.',
    source: 'BS 7671:2018+A2:2022 643.6',
  },
  {
    word: 'prospective fault current',
    pattern: /fault current|could drive|prospective/,
    meaning:
      'The current that would flow at this place in a dead short. The device there must be able to break it.',
    source: 'BS 7671:2018+A2:2022 434.5.1',
  },
  {
    word: 'R1 + R2',
    pattern: /R1 \+ R2/,
    meaning:
      'Resistance of the circuit’s line conductor and of its protective conductor together, measured through a link at the origin.',
    source: 'BS 7671:2018+A2:2022 643.2',
  },
  {
    word: 'residual device',
    pattern: /residual|\b(?:15|30|150) mA/,
    meaning:
      'It adds up what flows in the live conductors. What does not come back has gone to earth, and above its rating it opens. Type AC answers alternating current alone, A pulsating direct current as well, F mixed frequencies too, B smooth direct current too.',
    source: 'IEC 61008-1, IEC 62423',
  },
  {
    word: 'rotation',
    pattern: /rotat/,
    meaning: 'The order in which the three lines reach their peaks. Reversed, a motor turns the other way.',
    source: 'BS 7671:2018+A2:2022 643.9',
  },
  {
    word: 'set current',
    pattern: /\bsetting\b|is set to/,
    meaning: 'The most that the installer lets the unit offer; at most its rating.',
    source: TRADE,
  },
  {
    word: 'smooth d.c.',
    pattern: /smooth d\.c\.|d\.c\. detector|\b(?:3|6) mA/,
    meaning:
      'Direct current to earth without ripple. A few milliamperes blind a type A device, so the unit has a detector that acts by 6 mA.',
    source: 'IEC 62955:2018',
  },
  {
    word: 'state A, B, C, D',
    pattern: /\b(?:in|state) [ABCD]\b|connected|asks|asked/,
    meaning:
      'What the vehicle’s resistors make of the pilot’s high half: A 12 V, nobody there; B 9 V, connected; C 6 V, asks for supply; D 3 V, asks and wants ventilation.',
    source: 'IEC 61851-1:2017 Table A.4',
  },
  {
    word: 'steady pilot',
    pattern: /steady|oscillat/,
    meaning:
      'A pilot that does not oscillate offers nothing: the unit waits for permission, for time or for current to be free.',
    source: 'IEC 61851-1:2017 A.3',
  },
  {
    word: 'tether',
    pattern: /tether/,
    meaning: 'A charging cable that is fixed to the unit. At a socket-outlet the customer brings the cable.',
    source: TRADE,
  },
  {
    word: 'true earth',
    pattern: /true earth|remote rod/,
    meaning: 'The ground, far enough from any earthed metal that nothing here lifts its voltage.',
    source: TRADE,
  },
];

/** The entries whose words occur in these texts, in the order of the list. */
export const wordsIn = (texts: readonly string[]): readonly Entry[] =>
  GLOSSARY.filter(({ pattern }) => texts.some((text) => pattern.test(text)));
