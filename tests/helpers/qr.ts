/** A QR code read back by another library, from its drawing alone. */
import jsQR from 'jsqr';

/** Pixels to a module, as a camera would have several. */
const SCALE = 4;

/** What the code in this markup says; undefined where none is seen. */
export function seenIn(markup: string): string | undefined {
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
