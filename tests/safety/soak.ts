/* A million sequences, or as many as are named: `npm run soak -- 1000000 SEED`. Stops at the first that goes wrong. */
import { runSequence } from './sequences.ts';

const [count = '1000000', seed = '1'] = process.argv.slice(2);
for (let i = 0; i < Number(count); i++) {
  const wrong = runSequence(Number(seed), i);
  if (wrong !== null) {
    process.stdout.write(`${wrong}\n`);
    process.exit(1);
  }
  if (i % 10_000 === 9999) process.stdout.write(`${i + 1} sequences, nothing wrong\n`);
}
