/** What is wrong with a file: every problem in one pass, with its path and what would be right; never a throw. */
import { describe, expect, test } from 'vitest';
import { parseScenario } from '../../src/scenario/scenarioText.ts';
import { problemText } from '../../src/words/problems.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';

/** A file as it is read, loosely enough to put anything in. */
// biome-ignore lint/suspicious/noExplicitAny: a file that is to be spoilt has no type
type Loose = any;

const spoilt = (spoil: (file: Loose) => void, id = 'harbour-mews'): string => {
  const file = JSON.parse(scenarioNamed(id).text);
  spoil(file);
  return JSON.stringify(file);
};

function problemsIn(text: string): readonly string[] {
  const read = parseScenario(text);
  return read.ok ? [] : read.problems.map((one) => `${one.path}: ${problemText(one)}`);
}

const ONE_FIELD: readonly (readonly [string, (file: Loose) => void, string])[] = [
  ['missing section', (f) => delete f.site, 'site: missing: an object is expected'],
  [
    'missing field',
    (f) => delete f.site.circuit.length,
    'site.circuit.length: missing: a number from 0.5 to 500 is expected',
  ],
  ['missing list', (f) => delete f.faults, 'faults: missing: a list is expected'],
  [
    'wrong type',
    (f) => {
      f.site.circuit.length = '18';
    },
    'site.circuit.length: "18" is text: 18, without quotes or unit, is expected (a number from 0.5 to 500)',
  ],
  [
    'null',
    (f) => {
      f.site = null;
    },
    'site: null does not fit: an object is expected',
  ],
  [
    'negative length',
    (f) => {
      f.site.circuit.length = -3;
    },
    'site.circuit.length: -3 is too small: at least 0.5',
  ],
  [
    'no length',
    (f) => {
      f.unit.cable.length = 0;
    },
    'unit.cable.length: 0 is too small: at least 0.5',
  ],
  [
    'endless length',
    (f) => {
      f.site.circuit.length = 501;
    },
    'site.circuit.length: 501 is too large: at most 500',
  ],
  [
    'no such area',
    (f) => {
      f.site.circuit.lineArea = 7;
    },
    'site.circuit.lineArea: 7 does not fit: 1 or 1.5 or 2.5 or 4 or 6 or 10 or 16 or 25 or 35 or 50 or 70 or 95 is expected',
  ],
  [
    'unknown field',
    (f) => {
      f.site.circuit.lenght = 3;
    },
    'site.circuit.lenght: unknown field "lenght"; did you mean "length"?',
  ],
  [
    'unknown field of the unit',
    (f) => {
      f.unit.startupp = 3;
    },
    'unit.startupp: unknown field "startupp"; did you mean "startUp"?',
  ],
  [
    'unknown word',
    (f) => {
      f.unit.outlet = 'tetherd';
    },
    'unit.outlet: "tetherd" is not known here; did you mean "tethered"?',
  ],
  [
    'unknown word, nothing near',
    (f) => {
      f.site.circuit.breaker.type = 'E';
    },
    'site.circuit.breaker.type: "E" is not known here; one of: B, C, D',
  ],
  [
    'a house with another earth, and a circuit that is not TT',
    (f) => {
      f.site.house = {};
    },
    'site.house: a house with another earth than the circuit: the circuit is TT, not TN-C-S',
  ],
  [
    'pipes at the circuit’s own earth, where the house has another',
    (f) => {
      f.site.earthing = 'TT';
      delete f.site.loopImpedance;
      f.site.electrodeResistance = 60;
      f.site.metEarthResistance = 20;
      f.site.house = {};
    },
    'site.metEarthResistance: pipes and bonding are the house’s: give them in site.house.metEarthResistance',
  ],
  [
    'no such coding',
    (f) => {
      f.unit.cable.coding = 16;
    },
    'unit.cable.coding: 16 does not fit: 13 or 20 or 32 or 63 is expected',
  ],
  [
    'half a seed',
    (f) => {
      f.seed = 1.5;
    },
    'seed: a whole number is expected',
  ],
  [
    'untidy id',
    (f) => {
      f.id = 'Harbour Mews';
    },
    'id: small letters, digits and single hyphens are expected',
  ],
  [
    'no clock',
    (f) => {
      f.clock = 'noon';
    },
    'clock: a date and time such as 2026-03-10T10:00 is expected',
  ],
  [
    'a day that February lacks',
    (f) => {
      f.clock = '2026-02-30T10:00';
    },
    'clock: 2026-02-30T10:00 does not exist: a day of the calendar and 00:00 to 23:59 are expected',
  ],
  [
    'the hour 25',
    (f) => {
      f.clock = '2026-03-10T25:00';
    },
    'clock: 2026-03-10T25:00 does not exist: a day of the calendar and 00:00 to 23:59 are expected',
  ],
  [
    'the hour 24',
    (f) => {
      f.clock = '2026-03-10T24:00';
    },
    'clock: 2026-03-10T24:00 does not exist: a day of the calendar and 00:00 to 23:59 are expected',
  ],
  [
    'nothing to test',
    (f) => {
      f.allowed = [];
    },
    'allowed: at least one test action is expected',
  ],
  [
    'an action allowed twice',
    (f) => {
      f.allowed = ['isolate', 'ze', 'isolate'];
    },
    'allowed[2]: "isolate" stands in allowed[0] already',
  ],
  [
    'an action handed over twice',
    (f) => {
      f.handover = { by: 'A. Fitter', done: ['isolate', 'isolate'] };
    },
    'handover.done[1]: "isolate" stands in handover.done[0] already',
  ],
  [
    'weights beyond 100',
    (f) => {
      f.marking = { weights: { prediction: 30 } };
    },
    'marking.weights: a sum of 115, with the usual points for parts that are left out: 100 is expected',
  ],
  [
    'no weights at all',
    (f) => {
      const nothing = { prediction: 0, observation: 0, judgement: 0, record: 0, diagnosis: 0, reasons: 0 };
      f.marking = { weights: nothing };
    },
    'marking.weights: a sum of 0, with the usual points for parts that are left out: 100 is expected',
  ],
  [
    'a field that every object has',
    (f) => {
      f.faults = [{ fault: 'pe-joint', ohms: 2, toString: [] }];
    },
    'faults[0].toString: Array does not fit: a number or text is expected',
  ],
  ['no format', (f) => delete f.format, 'format: missing: 1 is expected'],
  [
    'older format',
    (f) => {
      f.format = 0;
    },
    'format: 0 does not fit: 1 is expected',
  ],
  [
    'long title',
    (f) => {
      f.title = 'x'.repeat(121);
    },
    'title: too long: at most 120 is expected',
  ],
  [
    'unknown fault',
    (f) => {
      f.faults = [{ fault: 'pe-joynt' }];
    },
    'faults[0].fault: unknown fault "pe-joynt"; did you mean "pe-joint"?',
  ],
  [
    'unknown parameter',
    (f) => {
      f.faults = [{ fault: 'pe-joint', ohm: 2 }];
    },
    'faults[0].ohm: unknown parameter "ohm"; one of: ohms',
  ],
  [
    'a parameter too many',
    (f) => {
      f.faults = [{ fault: 'pe-not-landed', ohms: 2 }];
    },
    'faults[0].ohms: unknown parameter "ohms"; this fault has none',
  ],
  [
    'parameter out of range',
    (f) => {
      f.faults = [{ fault: 'pe-joint', ohms: 300 }];
    },
    'faults[0].ohms: 0.3 to 20 Ω is expected',
  ],
  [
    'a fault that cannot be here',
    (f) => {
      f.faults = [{ fault: 'line-pole-welded', line: 2 }];
    },
    'faults[0]: this site has one line: line is 1',
  ],
  [
    'a detector that is not there',
    (f) => {
      f.unit.residual.direct = null;
      f.faults = [{ fault: 'direct-detector-dead' }];
    },
    'faults[0]: this unit has no d.c. detector',
  ],
  [
    'unknown action',
    (f) => {
      f.allowed = ['isolate', 'pe-circut'];
    },
    'allowed[1]: unknown test action "pe-circut"; did you mean "pe-circuit"?',
  ],
  [
    'a line that is not there',
    (f) => {
      f.site.otherLoads = [{ line: 'L2', power: 3 }];
    },
    'site.otherLoads[0].line: this site has no L2: L1 is expected',
  ],
  [
    'a next point that draws more than it can',
    (f) => {
      f.site.nextPoint = { ratedCurrent: 16, draws: 20 };
    },
    'site.nextPoint.draws: above the 16 A that it takes at most',
  ],
  [
    'poles that are not there',
    (f) => {
      f.site.circuit.breaker.poles = 4;
    },
    'site.circuit.breaker.poles: 1 or 2 is expected on one phase',
  ],
  [
    'set above rated',
    (f) => {
      f.unit.setCurrent = 40;
    },
    'unit.setCurrent: above ratedCurrent, 32 A: at most that is expected',
  ],
  [
    'going on without the only line',
    (f) => {
      f.unit.lostLine = 'goes-on';
    },
    'unit.lostLine: on one phase there is no other line to go on with: stops is expected',
  ],
  [
    'a device without its rating',
    (f) => {
      f.unit.residual = { type: 'A', direct: null };
    },
    'unit.residual: rated and by are expected beside a type; without a device in the unit, type is null',
  ],
  [
    'a rating without its device',
    (f) => {
      f.unit.residual = { type: null, rated: 0.03, direct: null };
    },
    'unit.residual: rated and by are left out where type is null',
  ],
  [
    'closing by itself after a trip',
    (f) => {
      f.unit.clearsBy = { residual: 'self' };
    },
    'unit.clearsBy.residual: no unit may close by itself after a trip (IEC 61851-1 clause 14, UK note): reset or supply is expected',
  ],
  [
    'the same under its other name',
    (f) => {
      f.unit.clearsBy = { direct: 'restored' };
    },
    'unit.clearsBy.direct: no unit may close by itself after a trip (IEC 61851-1 clause 14, UK note): reset or supply is expected',
  ],
  [
    'no loop on TN',
    (f) => delete f.site.loopImpedance,
    'site.loopImpedance: missing: a number in ohms is expected on TN-C-S',
  ],
  [
    'an electrode on TN',
    (f) => {
      f.site.electrodeResistance = 50;
    },
    'site.electrodeResistance: only a TT site has its own electrode: leave it out on TN-C-S',
  ],
  [
    'a neutral shorter than its line',
    (f) => {
      f.site.neutralImpedance = 0.1;
    },
    'site.neutralImpedance: below half of loopImpedance: the line’s half is in both loops',
  ],
  [
    'neighbours without a PEN',
    (f) => {
      f.site.earthing = 'TN-S';
      f.site.neighbours = [{ line: 'L1', power: 900 }];
    },
    'site.neighbours: neighbours share a PEN conductor: only on TN-C-S',
  ],
];

describe('one problem, with its path and what would be right', () => {
  test.each(ONE_FIELD)('%s', (_, spoil, problem) => {
    expect(problemsIn(spoilt(spoil))).toEqual([problem]);
  });
});

test.each([
  ['2028-02-29', true],
  ['2026-02-29', false],
  ['2000-02-29', true],
  ['2100-02-29', false],
  ['2026-04-31', false],
  ['2026-12-31', true],
  ['2026-00-10', false],
  ['2026-13-01', false],
  ['2026-01-00', false],
])('whether %s is a day: %s', (day, exists) => {
  const text = spoilt((f) => {
    f.clock = `${day}T10:00`;
  });
  expect(problemsIn(text).length).toBe(exists ? 0 : 1);
});

test('weights that sum to 100 are taken, and a leap day', () => {
  const text = spoilt((f) => {
    f.marking = { weights: { prediction: 30.1, judgement: 14.9 } };
    f.clock = '2028-02-29T23:59';
  });
  expect(problemsIn(text)).toEqual([]);
});

describe('what is quoted and how much is listed', () => {
  const long = 'a'.repeat(20_000);
  test('a name or a value is cut at sixty characters, in its path too', () => {
    const problems = problemsIn(
      spoilt((f) => {
        f[long] = 1;
        f.unit.outlet = long;
        f.allowed = [long];
        f.rules = long;
        f.lines = { [long]: ['x'] };
        f.faults = [{ fault: long }, { fault: 'pe-joint', [long]: 2 }];
        f.site[long] = { [long]: long };
      }),
    );
    expect(problems.length).toBeGreaterThan(4);
    for (const problem of problems) expect(problem.split('a'.repeat(61))).toHaveLength(1);
  });

  test('control characters and turned text are written out', () => {
    const [problem] = problemsIn(
      spoilt((f) => {
        f.unit.outlet = 'a\u001b[2J\u009b\u007f\u202eb\u2066Ω';
      }),
    );
    expect(problem).toContain('"a\\u001b[2J\\u009b\\u007f\\u202eb\\u2066Ω" is not known here');
  });

  test('of a list far too long nothing else is said', () => {
    const text = spoilt((f) => {
      f.handover = { by: 'A. Fitter', done: ['isolate'], left: Array(100_000).fill({ op: 1 }) };
      f.site.otherLoads = Array(101).fill({});
    });
    expect(problemsIn(text)).toEqual([
      'site.otherLoads: too long: at most 100 is expected',
      'handover.left: too long: at most 100 is expected',
    ]);
  });

  test('fifty problems, then their count', () => {
    const problems = problemsIn(
      spoilt((f) => {
        f.allowed = Array.from({ length: 80 }, (_, i) => `test-${i}`);
      }),
    );
    expect(problems).toHaveLength(51);
    expect(problems.at(-1)).toBe(': and 30 more problems');
  });
});

describe('every problem in one pass', () => {
  test('slips in the shape and contradictions between fields', () => {
    const text = spoilt((f) => {
      f.seed = 'x';
      f.unit.clearsBy = { residual: 'self' };
      f.site.otherLoads = [{ line: 'L3', power: 10 }];
      f.faults = [{ fault: 'nothing-at-all' }];
      f.allowed = ['xx'];
    });
    expect(problemsIn(text).map((line) => line.split(':')[0])).toEqual([
      'seed',
      'site.otherLoads[0].line',
      'unit.clearsBy.residual',
      'faults[0].fault',
      'allowed[0]',
    ]);
  });

  test('a voltage window on three phases, with a breaker of two poles', () => {
    expect(
      problemsIn(
        spoilt((f) => {
          f.site.phases = 3;
        }),
      ),
    ).toEqual([
      'site.circuit.breaker.poles: 3 or 4 is expected on three phases',
      'unit.openPen: a voltage window cannot see an open PEN on three phases (BS 7671 722.411.4.1): another kind is expected',
    ]);
  });

  test('TT: the loop follows from the electrodes', () => {
    expect(
      problemsIn(
        spoilt((f) => {
          f.site.earthing = 'TT';
        }),
      ),
    ).toEqual([
      'site.loopImpedance: on TT it follows from the electrodes: leave it out',
      'site.electrodeResistance: missing: a number in ohms is expected on TT',
    ]);
  });

  test('the other outlet’s cable', () => {
    const paths = problemsIn(
      spoilt((f) => {
        f.unit.outlet = 'socket';
      }),
    ).map((line) => line.split(':')[0]);
    expect(paths).toEqual(['unit.customerCable', 'unit.cable']);
  });
});

describe('a file as a whole', () => {
  test.each([
    ['empty', '', ': empty: a JSON object is expected'],
    ['no JSON', 'format: 1', ': not JSON'],
    [
      'cut off',
      '{ "format": 1',
      ': not JSON at line 1, column 14: the text ends here, a comma or } is expected',
    ],
    ['a number', '3', ': 3 does not fit: an object is expected'],
    ['a list', '[]', ': a list does not fit: an object is expected'],
    ['null', 'null', ': null does not fit: an object is expected'],
    ['too deep', `${'['.repeat(41)}`, ': nested deeper than 40 levels at line 1, column 41'],
    [
      'over 1 MB',
      `"${'x'.repeat(1_000_000)}"`,
      ': larger than 1 MB; scenario and attempt files are far smaller',
    ],
    ['a prototype at the top', '{ "__proto__": {} }', '__proto__: this name is not allowed'],
    [
      'a prototype inside',
      '{ "site": [ { "__proto__": {} } ] }',
      'site[0].__proto__: this name is not allowed',
    ],
  ])('%s', (_, text, problem) => {
    const [first, ...more] = problemsIn(text);
    expect(more).toEqual([]);
    expect(first?.startsWith(problem)).toBe(true);
  });

  test('a number beyond every number', () => {
    const text = scenarioNamed('harbour-mews').text.replace('"voltage": 236', '"voltage": 1e999');
    expect(problemsIn(text)).toEqual(['site.voltage: 1e999 is larger than any number here']);
  });

  test('a newer format is refused before anything else is complained of', () => {
    const text = spoilt((f) => {
      f.format = 2;
      f.whatever = 3;
    });
    expect(problemsIn(text)).toEqual([
      'format: this scenario is from a newer version (format 2); this version reads format 1. Update, or ask for format 1',
    ]);
  });

  test('nothing reached the prototype of all objects', () => {
    problemsIn('{ "__proto__": { "polluted": true }, "constructor": { "prototype": { "polluted": true } } }');
    expect('polluted' in {}).toBe(false);
  });
});
