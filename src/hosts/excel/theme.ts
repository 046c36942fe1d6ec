/** The look of the panel: what Excel's theme says, else what the system prefers, else light. */
export type Theme = "light" | "dark";

/** Reads the theme. Excel on the web gives none, so the system's preference is asked there. */
export function currentTheme(): Theme {
  const background = Office.context.officeTheme?.bodyBackgroundColor;
  const shade = background === undefined ? undefined : brightness(background);
  if (shade !== undefined) return shade < 0.5 ? "dark" : "light";
  return globalThis.matchMedia?.("(prefers-color-scheme: dark)").matches ? "dark" : "light";
}

/** How bright a color such as #1F1F1F is to the eye, 0 to 1, by the weights of ITU-R BT.601; undefined for no such color. */
function brightness(color: string): number | undefined {
  const parts = /^#?([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/i.exec(color);
  if (!parts) return undefined;
  const [red, green, blue] = parts.slice(1).map((part) => parseInt(part, 16) / 255);
  return 0.299 * red + 0.587 * green + 0.114 * blue;
}
