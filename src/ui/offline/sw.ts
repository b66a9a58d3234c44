/**
 * The worker that serves this copy of the page without a network. It answers for its own files and for nothing else:
 * a host may have another copy, or something different, below the folder of this one.
 */
import type { PrecacheEntry } from 'workbox-precaching';
import { PrecacheController } from 'workbox-precaching/PrecacheController.js';
import { NO_SUCH_PAGE, noSuchPage } from './noSuchPage.ts';

interface LastingEvent extends Event {
  waitUntil(done: Promise<unknown>): void;
}
interface FetchEvent extends LastingEvent {
  readonly request: Request;
  respondWith(response: Promise<Response>): void;
}

/** What is used here of a worker's surroundings: TypeScript's own description of them and that of a page exclude each other. */
declare const self: {
  readonly registration: { readonly scope: string };
  readonly clients: { claim(): Promise<void> };
  skipWaiting(): Promise<void>;
  addEventListener(type: 'activate', listener: (event: LastingEvent) => void): void;
  addEventListener(type: 'message', listener: (event: MessageEvent) => void): void;
  addEventListener(type: 'fetch', listener: (event: FetchEvent) => void): void;
  /** The build puts the list of the page's files here. */
  readonly __WB_MANIFEST: PrecacheEntry[];
};

const { scope } = self.registration;
const start = new URL(scope).pathname;

/** The name holds the whole scope, so no other copy has the same; what is left of older versions in it goes at `activate`. */
const files = new PrecacheController({ cacheName: `charge-point-trainer ${scope}` });
files.precache(self.__WB_MANIFEST);

/** Where versions before this one kept this copy's files. */
const FORMER_CACHE = `workbox-precache-v2-${scope}`;

self.addEventListener('activate', (event) => {
  event.waitUntil(Promise.all([self.clients.claim(), caches.delete(FORMER_CACHE)]));
});

// A newer version waits until somebody takes it (flow/newVersion.ts).
self.addEventListener('message', ({ data }) => {
  if (data?.type === 'SKIP_WAITING') self.skipWaiting();
});

self.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET') return;
  const file = fileFor(request);
  if (files.getCacheKeyForURL(file) !== undefined)
    event.respondWith(files.createHandlerBoundToURL(file)({ request, event, url: new URL(file) }));
  else if (request.mode === 'navigate')
    event.respondWith(fetch(request).catch(() => new Response(noSuchPage(start), NO_SUCH_PAGE)));
});

/** The address of the file that answers a request; the page itself is opened with any query. */
function fileFor({ url, mode }: Request): string {
  const { origin, pathname, search } = new URL(url);
  const address = pathname === start ? `${origin}${start}index.html` : origin + pathname;
  return mode === 'navigate' ? address : address + search;
}
