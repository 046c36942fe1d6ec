import "./page.css";
import { whenReady } from "../src/hosts/excel/start";
import { currentTheme } from "../src/hosts/excel/theme";
import { mountPanel } from "./panel";

const root = document.getElementById("panel")!;

/** Says in the place of the panel why it is not there. */
function elsewhere(sentence: string): void {
  const said = document.createElement("p");
  said.className = "elsewhere";
  said.textContent = sentence;
  root.replaceChildren(said);
}

whenReady((host) => {
  document.documentElement.style.colorScheme = currentTheme();
  mountPanel(root, host);
}, elsewhere);
