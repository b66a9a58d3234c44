/** The command line as others call it: results on standard output, errors on standard error, exit codes. */
import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import * as v from 'valibot';
import { build } from 'vite';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { mark } from '../../src/attempt/marks/mark.ts';
import { makeAttemptText } from '../../src/attempt/record/fileText.ts';
import { playSchema } from '../../src/cli/playOutput.ts';
import { CATALOGUE } from '../../src/faults/catalogue.ts';
import { applicableActions } from '../../src/scenario/scenario.ts';
import { sumsInWords } from '../../src/words/sums.ts';
import { scenarioIds, scenarioNamed } from '../helpers/scenarios.ts';
import { attemptBy, faultlessAttempt } from '../helpers/trainee.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

function called(program: readonly string[], args: readonly string[], input: string) {
  const { stdout, stderr, status } = spawnSync(process.execPath, [...program, ...args], {
    cwd: root,
    input,
    encoding: 'utf8',
  });
  return { stdout, stderr, status };
}

const harbour = 'scenarios/harbour-mews.json';
let folder = '';
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'trainer-'));
  // Where the program looks for what comes with it.
  cpSync(join(root, 'scenarios'), join(folder, 'scenarios'), { recursive: true });
  await build({
    configFile: false,
    publicDir: false,
    root,
    logLevel: 'warn',
    ssr: { noExternal: true },
    build: {
      ssr: 'src/cli/main.ts',
      outDir: join(folder, 'src/cli'),
      emptyOutDir: false,
      rolldownOptions: { output: { entryFileNames: 'main.mjs' } },
    },
  });
});
/** One file of it all, made once: to load hundreds of modules takes ten times as long as most of what is asked for. */
const cli = (args: readonly string[], input = '') => called([join(folder, 'src/cli/main.mjs')], args, input);
/** As `npm run cli` does. */
const fromSources = (args: readonly string[], input = '') =>
  called(['node_modules/tsx/dist/cli.mjs', 'src/cli/main.ts'], args, input);

afterAll(() => rmSync(folder, { recursive: true }));
const written = (name: string, text: string): string => {
  const file = join(folder, name);
  writeFileSync(file, text);
  return file;
};

const changed = (change: (file: Record<string, unknown>) => unknown): string =>
  JSON.stringify(change(JSON.parse(scenarioNamed('harbour-mews').text)));

describe('check', () => {
  test('says ok of every scenario here', () => {
    const files = scenarioIds.map((id) => `scenarios/${id}.json`);
    const { stdout, stderr, status } = cli(['check', ...files]);
    const lines = stdout.trimEnd().split('\n');
    expect(lines.filter((line) => !line.includes(': warning: '))).toEqual(files.map((file) => `${file}: ok`));
    // One site has no residual device at its origin: that is what it is there to teach.
    expect(lines.filter((line) => line.includes(': warning: '))).toEqual([
      expect.stringMatching(
        /^scenarios\/turnpike-cottage\.json: warning: site\.circuit\.residualDevice: TT /,
      ),
    ]);
    expect(stderr).toBe('');
    expect(status).toBe(0);
  });

  test('names every problem with its place, warns apart, and exits 1', () => {
    const bad = written(
      'bad.json',
      changed((file) => ({
        ...file,
        site: { ...(file.site as object), phases: 2 },
        unit: { ...(file.unit as object), ratedCurrent: -32 },
        suport: 'practice',
      })),
    );
    const second = written('second.json', scenarioNamed('harbour-mews').text);
    const faulty = written(
      'faulty.json',
      changed((file) => ({ ...file, id: 'faulty', faults: [{ fault: 'pe-joynt' }] })),
    );
    const poor = written(
      'poor.json',
      changed((file) => ({ ...file, id: 'poor', unit: { ...(file.unit as object), openPen: 'none' } })),
    );
    const files = [harbour, second, bad, faulty, poor, join(folder, 'none.json')];
    const { stdout, stderr, status } = cli(['check', ...files]);
    expect(fromSources(['check', ...files])).toEqual({ stdout, stderr, status });
    const lines = stdout.trim().split('\n');
    expect(lines).toEqual([
      `${harbour}: ok`,
      `${second}: id: "harbour-mews" is taken by ${harbour}`,
      `${bad}: site.phases: 2 does not fit: 1 or 3 is expected`,
      `${bad}: unit.ratedCurrent: -32 is too small: at least 6`,
      `${bad}: suport: unknown field "suport"; did you mean "support"?`,
      `${faulty}: faults[0].fault: unknown fault "pe-joynt"; did you mean "pe-joint"?`,
      `${poor}: warning: unit.openPen: a PME earth with no open-PEN measure named (BS 7671 722.411.4.1)`,
      `${poor}: ok`,
      `${join(folder, 'none.json')}: no such file`,
    ]);
    expect(status).toBe(1);
  });
});

describe('play', () => {
  const script = JSON.stringify([
    { op: 'vehicle', plugged: true, state: 'B' },
    { op: 'wait', seconds: 2 },
    { op: 'measure', quantity: 'pilot' },
    { op: 'action', id: 'loop' },
    { op: 'stop', why: 'enough' },
  ]);

  test('prints what its schema says, the same twice', () => {
    const once = cli(['play', harbour, '-'], script);
    expect(once.status).toBe(0);
    expect(fromSources(['play', harbour, '-'], script)).toEqual(once);
    const output = JSON.parse(once.stdout);
    expect(v.safeParse(playSchema, output).issues).toBeUndefined();
    expect(output.readings[0]).toMatchObject({ op: 2, action: null, quantity: 'pilot', unit: 'V' });
    expect(output.readings.some((r: { action: string }) => r.action === 'loop')).toBe(true);
    expect(output.stopped).toBe('enough');
  });

  test('shows the inside only when asked', () => {
    const { stdout } = cli(['play', harbour, '-', '--inside'], '[]');
    expect(JSON.parse(stdout).inside.states).toMatchObject({ powered: { running: { contactor: 'open' } } });
  });

  test('refuses a bad script whole, with every problem, and exits 2', () => {
    const bad = JSON.stringify([
      { op: 'mesure' },
      { op: 'measure', quantity: 'voltage', between: ['outlet.L1', 'outlet.N'], tool: 'stick' },
      { op: 'wait', seconds: -4 },
    ]);
    const { stdout, stderr, status } = cli(['play', harbour, '-'], bad);
    expect(status).toBe(2);
    expect(stdout).toBe('');
    expect(stderr.trim().split('\n')).toEqual([
      '-: [0].op: "mesure" is not known here; did you mean "measure"?',
      '-: [1].tool: "stick" is not known here; one of: two-pole, meter',
      '-: [2].seconds: -4 is too small: at least 0',
    ]);
  });

  test('names a terminal that this site lacks, and an unknown action', () => {
    const bad = JSON.stringify([
      { op: 'measure', quantity: 'voltage', between: ['outlet.L2', 'outlet.N'] },
      { op: 'action', id: 'state-x' },
    ]);
    const { stderr, status } = cli(['play', harbour, '-'], bad);
    expect(status).toBe(2);
    expect(stderr).toContain('[0].between[0]: this site has no terminal "outlet.L2"');
    expect(stderr).toContain('[1].id: unknown test action "state-x"; near it are state-a, ');
  });
});

describe('actions, faults, verify, mark', () => {
  test('actions lists those that apply, in order, each with something that should not be', () => {
    const actions = JSON.parse(cli(['actions', harbour]).stdout);
    const applicable = applicableActions(scenarioNamed('harbour-mews').scenario).map(({ id }) => id);
    expect(applicable.length).toBeGreaterThan(40);
    expect(actions.map(({ id }: { id: string }) => id)).toEqual(applicable);
    for (const { expectations } of actions)
      expect(expectations.some(({ should }: { should: boolean }) => !should)).toBe(true);
  });

  test('faults lists the catalogue: causes, and what is none', () => {
    const faults: { id: string; kind: string }[] = JSON.parse(cli(['faults']).stdout);
    expect(faults.map(({ id, kind }) => [id, kind])).toEqual(CATALOGUE.map(({ id, kind }) => [id, kind]));
    expect(faults.filter(({ kind }) => kind === 'fault').length).toBeGreaterThanOrEqual(25);
    expect(faults.filter(({ kind }) => kind === 'not-fault').length).toBeGreaterThanOrEqual(8);
  });

  test('verify exits 0 for a unit that is not sound, in words and in JSON', () => {
    const words = cli(['verify', 'scenarios/mill-race.json']);
    expect(words.status).toBe(0);
    expect(words.stdout).toContain('Mill Race, unit 2: not sound');
    const output = JSON.parse(cli(['verify', 'scenarios/mill-race.json', '--json']).stdout);
    expect(output.conclusion).toBe('not sound');
    expect(output.unsafe).toEqual([]);
  });

  test('mark prints the same bytes twice, and what the program itself marks', () => {
    const { scenario, file } = scenarioNamed('mill-race');
    const attempt = attemptBy(scenario, file, { answer: () => 'should' });
    const path = written('attempt.json', makeAttemptText(attempt));
    const once = cli(['mark', path]);
    expect(once.stdout).toBe(cli(['mark', path]).stdout);
    const { untimely: _, gates, sums: __, ...figures } = mark(scenario, attempt);
    const sums = sumsInWords(mark(scenario, attempt));
    expect(JSON.parse(once.stdout)).toMatchObject({ ...figures, gates, sums, untimely: [] });
    expect(sums.prediction).toMatch(/^prediction [\d.]+ of 15: should (\d+) of \1, should not 0 of /);
    expect(figures.hurdles).toEqual(['prediction']);
  });

  test('two scenarios beside the program with one id are refused: which of them is meant nobody could say', () => {
    const { scenario, file } = scenarioNamed('mill-race');
    const path = written('attempt.json', makeAttemptText(faultlessAttempt(scenario, file)));
    const twin = written('scenarios/twin.json', JSON.stringify({ ...(file as object), seed: 1 }));
    try {
      const { stderr, status } = cli(['mark', path]);
      expect(status).not.toBe(0);
      expect(stderr).toMatch(/twin\.json: id: "mill-race" is that of .*mill-race\.json too/);
    } finally {
      rmSync(twin);
    }
  });

  test('a bad attempt file is refused with the place of each problem', () => {
    const { scenario, file } = scenarioNamed('mill-race');
    const attempt = faultlessAttempt(scenario, file);
    const broken = {
      ...attempt,
      scenario: { ...(file as object), seed: 'seven' },
      entries: [{ kind: 'guess' }],
    };
    const { stderr, status } = cli(['mark', written('broken.json', JSON.stringify(broken))]);
    expect(status).toBe(2);
    expect(stderr).toContain('entries[0].kind: "guess" is not known here');
    expect(stderr).toContain('scenario.seed:');
  });

  test('an attempt of a newer format is refused by name', () => {
    const { stderr, status } = cli(['mark', written('newer.json', '{"format": 3}')]);
    expect(status).toBe(2);
    expect(stderr).toContain('from a newer version (format 3)');
  });

  test('a byte-order mark is taken, in a file and on standard input', () => {
    const marked = written('marked.json', `\ufeff${scenarioNamed('harbour-mews').text}`);
    expect(cli(['check', marked])).toMatchObject({ stdout: `${marked}: ok\n`, status: 0 });
    expect(cli(['play', marked, '-'], '\ufeff[]').status).toBe(0);
  });

  test('nothing of a file or of its name steers a terminal, and JSON stays what it is', () => {
    const hostile = 'x\u001b[2J\u0007\u007f\u009b31m\u202e\u2066y Ω ü';
    // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is sought
    const steering = /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/;
    const file = written(
      'hostile.json',
      changed((f) => ({ ...f, id: 'hostile', title: `${hostile}\nsecond line`, brief: hostile })),
    );
    const refused = written(
      'refused.json',
      changed((f) => ({ ...f, [hostile]: 1, rules: hostile })),
    );
    const { scenario, file: known } = scenarioNamed('mill-race');
    const attempt = { ...attemptBy(scenario, known), word: hostile };
    const stop = JSON.stringify([{ op: 'stop', why: hostile }]);
    const calls = [
      cli(['check', file, refused, `no\nsuch ${hostile}.json`]),
      cli(['verify', file]),
      cli(['verify', file, '--json']),
      cli(['play', file, '-'], stop),
      cli(['mark', written('attempt-hostile.json', JSON.stringify(attempt))]),
      cli(['mark', refused]),
      cli([hostile]),
      cli(['verify', file, `--${hostile}`]),
      cli(['toString']),
    ];
    for (const { stdout, stderr } of calls) {
      expect(stdout).not.toMatch(steering);
      expect(stderr).not.toMatch(steering);
      expect(stderr).not.toContain('    at ');
    }
    const [checked, verified, , played] = calls;
    expect(JSON.parse(played?.stdout ?? '').stopped).toBe(hostile);
    expect(checked?.stdout).toContain('no\\u000asuch x\\u001b[2J');
    expect(checked?.stdout).toContain('y Ω ü');
    expect(verified?.stdout.split('\n')[0]).toContain('\\u000asecond line');
  });

  test('an unknown verb or option is answered with the usage', () => {
    expect(cli(['verfy', harbour])).toMatchObject({ status: 2, stdout: '' });
    expect(fromSources(['verfy', harbour])).toEqual(cli(['verfy', harbour]));
    expect(cli(['verfy']).stderr).toContain('did you mean "verify"?');
    expect(cli(['verify', harbour, '--jason']).stderr).toContain('unknown option --jason');
    expect(cli(['play', harbour]).stderr).toContain('usage: play SCENARIO SCRIPT');
  });
});
