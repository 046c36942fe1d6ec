/** The room that a horse needs to turn, ft (common practice, no source). */
export const TURNING_ROOM = 10;
