/** `npm run golden -- "the reason"`: writes what the old attempts are marked at by an engine whose number was raised. */
import { writeFileSync } from 'node:fs';
import { ENGINE } from '../../src/attempt/record/attempt.ts';
import { EXPECTED, expected, GOLDEN, toldToday } from './golden.ts';

const [reason = ''] = process.argv.slice(2);
const attempts = Object.fromEntries(GOLDEN.map((name) => [name, toldToday(name)]));
const before = expected();
const isSame = JSON.stringify(before.attempts) === JSON.stringify(attempts);

if (isSame && before.engine === ENGINE) console.log('Nothing has changed.');
else if (before.engine === ENGINE)
  refuse(`Readings or marks differ and the engine is still ${ENGINE}: raise it first.`);
else if (reason.length <= 10) refuse('Say why: npm run golden -- "the reason"');
else writeFileSync(EXPECTED, `${JSON.stringify({ engine: ENGINE, reason, attempts }, null, 1)}\n`);

function refuse(why: string): void {
  console.error(why);
  process.exitCode = 1;
}
