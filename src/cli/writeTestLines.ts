/** Writes down what there is to read in each test, by which its minutes are stated: `npm run test-lines`. */
import { writeFileSync } from 'node:fs';
import { papersForTestLines, testLinesOf } from './testLines.ts';

writeFileSync(
  new URL('../fairness/testLines.json', import.meta.url),
  `${JSON.stringify(testLinesOf(papersForTestLines()), null, 2)}\n`,
);
