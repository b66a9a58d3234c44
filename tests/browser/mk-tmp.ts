import { mkdirSync, writeFileSync } from 'node:fs';
import { zipSync } from 'fflate';
import { makeAttemptText } from '../../src/attempt/record/fileText.ts';
import { givingText } from '../../src/desk/giving.ts';
import { handedIn, labelled, labelOf } from '../desk/handedIn.ts';
import { givingOf, readGiving } from '../desk/helpers.ts';
import { scenarioNamed } from '../helpers/scenarios.ts';

const D = '/tmp/drop';
mkdirSync(`${D}/class/ash/deep/er`, { recursive: true });
const read = readGiving(givingOf([scenarioNamed('find-dyers-row').file as object]));
const worked = handedIn(read, 30);
const all = Array.from({ length: 500 }, (_, i) =>
  i < 30 ? worked[i]! : labelled(worked[i % 30]!, labelOf(i)),
);
const enc = new TextEncoder();
writeFileSync(`${D}/own.json`, givingText(read.giving));
writeFileSync(
  `${D}/500.zip`,
  zipSync(Object.fromEntries(all.map((a, i) => [`s${i}/attempt.json`, enc.encode(makeAttemptText(a))]))),
);
writeFileSync(
  `${D}/30.zip`,
  zipSync(Object.fromEntries(worked.map((a, i) => [`s${i}/attempt.json`, enc.encode(makeAttemptText(a))]))),
);
worked
  .slice(0, 3)
  .forEach((a, i) =>
    writeFileSync(`${D}/class/${['ash', 'ash/deep', 'ash/deep/er'][i]}/a${i}.json`, makeAttemptText(a)),
  );
writeFileSync(`${D}/class/notes.txt`, 'hello');
for (let i = 0; i < 150; i++) {
  mkdirSync(`${D}/many`, { recursive: true });
  writeFileSync(`${D}/many/${i}.json`, makeAttemptText(all[i]!));
}
writeFileSync(`${D}/50.json`, '{"entries":[' + '"x",'.repeat(12_500_000) + '1]}');
writeFileSync(`${D}/50bad.json`, 'x'.repeat(50_000_000));
writeFileSync(`${D}/bomb.zip`, zipSync({ 'a.json': new Uint8Array(200_000_000) }, { level: 9 }));
writeFileSync(
  `${D}/climb.zip`,
  zipSync({
    '../../etc/a.json': enc.encode(makeAttemptText(worked[0]!)),
    'ok/a.json': enc.encode(makeAttemptText(worked[1]!)),
  }),
);
writeFileSync(`${D}/formula.json`, makeAttemptText(labelled(worked[0]!, '=HYPERLINK("x")<img src=x>')));
writeFileSync(`${D}/newer.json`, JSON.stringify({ ...worked[0]!, format: 3 }));
writeFileSync(`${D}/notzip.zip`, 'nothing');
writeFileSync(`${D}/empty.json`, '');
