/** What this room can say to a user. */
export const messages = {
  title: "Plan of the pen",
  panel: (place: number, of: number, length: string) => `Panel ${place} of ${of}, ${length}`,
  gate: (place: number, of: number, length: string) =>
    of === 1 ? `Gate, ${length}` : `Gate ${place} of ${of}, ${length}`,
  gateLabel: (length: string) => `gate ${length}`,
  acrossPins: (size: string) => `${size} across the pins`,
  clearInside: "clear inside",
  centerStake: "center stake",
};
