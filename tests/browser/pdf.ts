// The lettering of a printed page, as somebody reads it off the paper: for PDF files as Chromium writes them, whose
// fonts carry the way from their signs back to characters.

import { inflateSync } from 'node:zlib';

/** The text of each page in turn, without what stands between words. */
export function textOfPages(pdf: Uint8Array): readonly string[] {
  const objects = new Map(
    [
      ...Buffer.from(pdf)
        .toString('latin1')
        .matchAll(/(\d+) 0 obj\s([\s\S]*?)\sendobj/g),
    ].map(([, number, body = '']) => [Number(number), body] as const),
  );
  const streamOf = (number: number): string => {
    const body = objects.get(number) ?? '';
    const [begin = '', length] = /\/Length (\d+)[\s\S]*?stream\r?\n/.exec(body) ?? [];
    const start = body.indexOf(begin) + begin.length;
    const bytes = body.slice(start, start + Number(length));
    return /FlateDecode/.test(body) ? inflateSync(Buffer.from(bytes, 'latin1')).toString('latin1') : bytes;
  };
  const fonts = new Map<string, ReadonlyMap<number, string>>();
  for (const [number, body] of objects) {
    const [, way] = /\/ToUnicode (\d+) 0 R/.exec(body) ?? [];
    if (way !== undefined) fonts.set(`F${number}`, signsIn(streamOf(Number(way))));
  }
  return [...objects.values()]
    .filter((body) => /\/Type \/Page\b/.test(body))
    .map((body) => textIn(streamOf(Number(/\/Contents (\d+) 0 R/.exec(body)?.[1])), fonts));
}

const fromHex = (hex: string): string =>
  String.fromCharCode(...(hex.match(/.{4}/g) ?? []).map((unit) => Number.parseInt(unit, 16)));

/** Sign to characters, from a font's table: signs one by one and in ranges. */
function signsIn(table: string): ReadonlyMap<number, string> {
  const signs = new Map<number, string>();
  for (const [, rows = ''] of table.matchAll(/beginbfchar([\s\S]*?)endbfchar/g))
    for (const [, sign = '', characters = ''] of rows.matchAll(/<(\w+)> <(\w+)>/g))
      signs.set(Number.parseInt(sign, 16), fromHex(characters));
  for (const [, rows = ''] of table.matchAll(/beginbfrange([\s\S]*?)endbfrange/g))
    for (const [, first = '', last = '', start = ''] of rows.matchAll(/<(\w+)> <(\w+)> <(\w+)>/g))
      for (let sign = Number.parseInt(first, 16), i = 0; sign <= Number.parseInt(last, 16); sign++, i++)
        signs.set(sign, String.fromCharCode(Number.parseInt(start, 16) + i));
  return signs;
}

function textIn(content: string, fonts: ReadonlyMap<string, ReadonlyMap<number, string>>): string {
  let font: ReadonlyMap<number, string> | undefined;
  let text = '';
  for (const [, name, hex] of content.matchAll(/\/(F\d+) [\d.]+ Tf|<(\w+)> Tj/g)) {
    if (name !== undefined) font = fonts.get(name);
    else for (const sign of hex?.match(/.{4}/g) ?? []) text += font?.get(Number.parseInt(sign, 16)) ?? '';
  }
  // Joined letters are read as the letters they are.
  return text.normalize('NFKC').replace(/\s+/g, ' ');
}
