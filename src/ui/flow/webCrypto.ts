/** What a browser has to encrypt by. It is not there where the page came by plain http from another computer. */
import type { Crypto } from '../../desk/seal.ts';

/** Bytes by chance; these every page has. */
export const drawnBytes = (length: number): Uint8Array<ArrayBuffer> =>
  crypto.getRandomValues(new Uint8Array(length));

export const webCrypto = (): Crypto | null => {
  const { subtle } = crypto as { readonly subtle?: SubtleCrypto };
  return subtle === undefined ? null : { subtle, drawn: drawnBytes };
};
