export type Hand = 'main-switch' | 'circuit' | 'conductors' | 'cover' | 'plug' | 'request';
