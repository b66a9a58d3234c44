/** Writes the JSON Schemas into public/: `npm run schema`. */
import { writeFileSync } from 'node:fs';
import { schemaFiles } from './schemas.ts';

for (const [name, text] of Object.entries(schemaFiles))
  writeFileSync(new URL(`../../public/${name}`, import.meta.url), text);
