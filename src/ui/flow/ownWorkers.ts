/**
 * The addresses of this page's own workers. The page's policy (vite.config.ts) lets no text become a script; these
 * addresses alone it lets through, by the one policy of Trusted Types that it names.
 */

/** A browser's Trusted Types, of which TypeScript does not know; what they make of an address stands for a string. */
interface TrustedTypes {
  createPolicy(
    name: string,
    rules: { createScriptURL: (address: string) => string },
  ): { createScriptURL: (address: string) => string };
}

/** The worker that serves this copy of the page without a network (offline/sw.ts). */
export const servingWorker = (): string => new URL('sw.js', location.href).href;

/** How the address of what weighs a job for its tutor (weigher.ts) begins: the build names it by what is in it. */
const weigher = (): string => new URL('assets/weigher', location.href).href;

let policy: { createScriptURL: (address: string) => string } | null = null;

/** The address as the browser takes it; throws for any that is no worker of this page. */
export function trusted(address: string): string {
  const { trustedTypes } = globalThis as { trustedTypes?: TrustedTypes };
  if (trustedTypes === undefined) return address;
  // A name is given once.
  policy ??= trustedTypes.createPolicy('own-worker', {
    createScriptURL: (asked) => {
      if (asked !== servingWorker() && !new URL(asked).href.startsWith(weigher())) throw new TypeError();
      return asked;
    },
  });
  return policy.createScriptURL(address);
}
