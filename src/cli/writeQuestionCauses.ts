/** Writes down what each cause breaks in each test, for questions: `npm run question-causes`. Takes some minutes. */
import { writeFileSync } from 'node:fs';
import { workOutCauses } from '../quiz/workOutCauses.ts';

writeFileSync(
  new URL('../quiz/causes.json', import.meta.url),
  `${JSON.stringify(workOutCauses(), null, 2)}\n`,
);
