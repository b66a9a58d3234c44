/** What a table of words holds for a cause of the catalogue, by its id in src/faults. */
export interface CauseWords {
  readonly where: string;
  /** What brings it about. */
  readonly cause: string;
  /** Who is at risk, and how; left out of what is no fault. */
  readonly hazard?: string;
  /** How it shows in a reading, and which test tells it from what looks alike. */
  readonly tells: string;
}
