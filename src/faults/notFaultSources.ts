/** By which clause what looks like a fault is none, for whoever asks about it. */
export const NOT_FAULT_SOURCES: Readonly<Record<string, { readonly source: string }>> = {
  'start-delay': { source: 'SI 2021/1467 reg. 11' },
  'keeps-default-hours': { source: 'SI 2021/1467 reg. 10' },
  'waits-for-authorisation': { source: 'IEC 61851-1:2017 A.3' },
  'held-by-load-sharing': { source: 'IEC 61851-1:2017 Table A.7; BS 7671:2018+A2:2022 722.311' },
  'offer-cut-by-load-sharing': { source: 'IEC 61851-1:2017 Table A.7; BS 7671:2018+A2:2022 722.311' },
  'next-point-charges': { source: 'IEC 61851-1:2017 Table A.7; BS 7671:2018+A2:2022 722.311' },
  'customers-small-cable': { source: 'IEC 61851-1:2017 6.3.1.6, Table B.2' },
  'set-by-installer': { source: 'BS 7671:2018+A2:2022 433.1.1' },
  'ventilation-refused': { source: 'IEC 61851-1:2017 6.3.1.4' },
  'bleed-across-poles': { source: 'IEC 61851-1:2017 12.6: under a touch current of 3.5 mA' },
  'arrester-clamps': { source: 'BS 7671:2018+A2:2022 643.3.3' },
  'device-at-the-board': { source: 'BS 7671:2018+A2:2022 722.531.3.101; IEC 62955:2018' },
  'goes-on-without-a-line': { source: 'common practice, no source' },
  'plug-free-until-supplied': { source: 'IEC 61851-1:2017 Table A.6: locked before the supply closes' },
  'earth-pole-open-unpowered': { source: 'BS 7671:2018+A2:2022 722.411.4.1; common practice, no source' },
  'open-pen-acts-at-once': {
    source: 'BS 7671:2018+A2:2022 722.411.4.1: riding out is permitted, and never required',
  },
  'steel-beside-earth': { source: 'BS 7671:2018+A2:2022 543.2.1, 643.2.1' },
  'delayed-device-ahead': { source: 'BS 7671:2018+A2:2022 536.4.1.4 (from memory); IEC 61008-1, S type' },
  'trip-clears-with-supply': {
    source:
      'the unit’s sheet; IEC 61851-1:2017 clause 14, UK note: off and on by hand is no reclosing by itself',
  },
  'slow-to-start': { source: 'common practice, no source' },
};
