/**
 * This copy of the page among others: a host may keep several at one origin, `/` and `/tools/charge/`, and what a
 * browser keeps belongs to the origin. Databases and locks are named by the folder, so that each copy has its own.
 */

/** What every copy's names began with, and the whole name of the database that all of them shared once. */
export const SHARED = 'charge-point-trainer';

/** What that one had; whatever came later is each copy's own. */
export const SHARED_STORES = ['attempts', 'about', 'drafts', 'other'] as const;
export const OF_AN_ATTEMPT = ['attempts', 'about', 'drafts'] as const;
/** By what this copy knows that it has been looked through. */
export const BROUGHT_OVER = 'brought over';

/** Begins the names of this copy's database and locks. */
export const THIS_COPY = `${SHARED} ${new URL('.', location.href).pathname}`;
