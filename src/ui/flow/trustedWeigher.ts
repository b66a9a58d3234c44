/**
 * The address of what weighs a job for its tutor (weigher.ts). The page's policy (vite.config.ts) lets no text become a
 * script; this lets that one address through, as newVersion.ts does with the worker's that serves the page.
 */
import address from './weigher.ts?worker&url';

/** A browser's Trusted Types, of which TypeScript does not know; what they make of an address stands for a string. */
interface TrustedTypes {
  createPolicy(
    name: string,
    rules: { createScriptURL: (address: string) => string },
  ): { createScriptURL: (address: string) => string };
}

const own = (): string => new URL(address, location.href).href;

let policy: { createScriptURL: (address: string) => string } | null = null;

/** The address as the browser takes it. */
export function trustedWeigher(): string {
  const { trustedTypes } = globalThis as { trustedTypes?: TrustedTypes };
  if (trustedTypes === undefined) return own();
  // A name is given once.
  policy ??= trustedTypes.createPolicy('own-weigher', {
    createScriptURL: (asked) => {
      if (asked !== own()) throw new TypeError(`${asked} is not what weighs jobs`);
      return asked;
    },
  });
  return policy.createScriptURL(own());
}
