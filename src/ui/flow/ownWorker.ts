/**
 * Addresses of the page's own workers. Its policy (vite.config.ts) lets no text become a script; these go through by
 * name: the one that serves the page without a network, and those that work beside it, which the build puts among its
 * files as `…Worker-….js`.
 */

/** A browser's Trusted Types, of which TypeScript does not know; what they make of an address stands for a string. */
interface Policy {
  createScriptURL: (address: string) => string;
}
interface TrustedTypes {
  createPolicy(name: string, rules: Policy): Policy;
}

/** A name may be taken once in a page. */
let policy: Policy | null = null;

const OWN = /^(sw|assets\/\w+Worker-.+)\.js$/;

/** Beside this page, under one of their names; a page in development serves its sources. */
const isOwn = (address: string): boolean =>
  import.meta.env.DEV || OWN.test(address.replace(new URL('.', location.href).href, ''));

/** The address as the browser takes it for a worker. Throws for one that is no worker of this page. */
export function ownWorker(address: string): string {
  const { trustedTypes } = globalThis as { trustedTypes?: TrustedTypes };
  if (trustedTypes === undefined) return address;
  policy ??= trustedTypes.createPolicy('own-worker', {
    createScriptURL: (asked) => {
      if (!isOwn(asked)) throw new TypeError(asked);
      return asked;
    },
  });
  return policy.createScriptURL(address);
}
