/** An address as a QR code (ISO/IEC 18004), drawn as one path: black on white in every light, as a camera wants it. */
import qrcode from 'qrcode-generator';
import { memo, useMemo } from 'react';

/** Clear modules round it, as the standard asks. */
const QUIET = 4;

export const QrCode = memo(function QrCode({ text, name }: { readonly text: string; readonly name: string }) {
  const { path, size } = useMemo(() => drawn(text), [text]);
  return (
    <svg
      className="qr"
      viewBox={`0 0 ${size} ${size}`}
      role="img"
      aria-label={name}
      shapeRendering="crispEdges"
    >
      <rect width={size} height={size} fill="#fff" />
      <path d={path} fill="#000" />
    </svg>
  );
});

/** The smallest that holds the text, with 15 % of it repairable; on a screen more would only make it finer. */
function drawn(text: string): { readonly path: string; readonly size: number } {
  const code = qrcode(0, 'M');
  code.addData(text, 'Byte');
  code.make();
  const count = code.getModuleCount();
  let path = '';
  for (let row = 0; row < count; row += 1)
    for (let column = 0; column < count; column += 1)
      if (code.isDark(row, column)) path += `M${column + QUIET} ${row + QUIET}h1v1h-1z`;
  return { path, size: count + 2 * QUIET };
}
