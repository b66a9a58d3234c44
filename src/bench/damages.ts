/** What a wrong test can destroy inside a unit. */
export const DAMAGES = ['pilot', 'electronics'] as const;
export type Damage = (typeof DAMAGES)[number];
