/** Draws the unit's statechart anew: `npm run chart`. */
import { writeFileSync } from 'node:fs';
import { chartPicture } from './chartPicture.ts';

writeFileSync(new URL('../unit/unitChart.md', import.meta.url), chartPicture());
