// The QR code of a link is read back by another library, from the picture alone.

import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import { QrCode } from '../../src/ui/screens/give/QrCode.tsx';
import { seenIn } from '../helpers/qr.ts';

test.each([80, 200, 400, 600])('a link of %i characters', (length) => {
  const link = `https://trainer.example/#/given/${'aB-3_9zQ'.repeat(80)}`.slice(0, length);
  expect(seenIn(renderToStaticMarkup(<QrCode text={link} name="QR code" />))).toBe(link);
});
