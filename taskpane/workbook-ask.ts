const dialog = () => document.querySelector<HTMLDialogElement>("#ask")!;

/**
 * Asks in the page's dialog and gives the number, from 0, of the answer chosen; -1 where it was closed without one.
 * Everything said in it stands as text only.
 */
export function ask(question: string, answers: string[], details: string[] = []): Promise<number> {
  const box = dialog();
  box.querySelector("#question")!.textContent = question;
  box.querySelector("#details")!.replaceChildren(...details.map((detail) => made("li", detail)));
  const buttons = answers.map((answer, k) => {
    const button = made("button", answer);
    button.addEventListener("click", () => box.close(String(k)));
    return button;
  });
  box.querySelector("#choices")!.replaceChildren(...buttons);
  box.returnValue = "-1";
  box.showModal();
  return new Promise((chosen) =>
    box.addEventListener("close", () => chosen(Number(box.returnValue)), { once: true }),
  );
}

function made<Name extends "li" | "button">(name: Name, text: string): HTMLElementTagNameMap[Name] {
  const element = document.createElement(name);
  element.textContent = text;
  return element;
}

/** Hands a file of the page's making to the user, under a name that the browser may number. */
export function download(name: string, content: Blob): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(content);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
