/** The first of "Estimate", "Estimate 2", "Estimate 3", … that no sheet has; capitals do not count. */
export function freeName(wanted: string, taken: readonly string[]): string {
  const names = new Set(taken.map((name) => name.toLowerCase()));
  for (let place = 1; ; place++) {
    const name = place === 1 ? wanted : `${wanted} ${place}`;
    if (!names.has(name.toLowerCase())) return name;
  }
}
