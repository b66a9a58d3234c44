// The QR code of a link is read back by another library, from the picture alone.

import jsQR from 'jsqr';
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import { QrCode } from '../../src/ui/screens/give/QrCode.tsx';

/** Pixels to a module, as a camera would have several. */
const SCALE = 4;

function seenIn(markup: string): string | undefined {
  const size = Number(/viewBox="0 0 (\d+)/.exec(markup)?.[1]);
  const side = SCALE * size;
  const pixels = new Uint8ClampedArray(4 * side * side).fill(255);
  for (const [, x, y] of markup.matchAll(/M(\d+) (\d+)h1v1h-1z/g))
    for (let dy = 0; dy < SCALE; dy += 1)
      for (let dx = 0; dx < SCALE; dx += 1) {
        const at = 4 * ((Number(y) * SCALE + dy) * side + Number(x) * SCALE + dx);
        pixels.fill(0, at, at + 3);
      }
  return jsQR(pixels, side, side)?.data;
}

test.each([80, 200, 400, 600])('a link of %i characters', (length) => {
  const link = `https://trainer.example/#/given/${'aB-3_9zQ'.repeat(80)}`.slice(0, length);
  expect(seenIn(renderToStaticMarkup(<QrCode text={link} name="QR code" />))).toBe(link);
});
