/** Writes the licences that go out with the page into public/: `npm run notices`. */
import { writeFileSync } from 'node:fs';
import { noticesText } from './notices.ts';

writeFileSync(new URL('../../public/licences.txt', import.meta.url), await noticesText());
