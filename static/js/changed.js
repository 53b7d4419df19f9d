/* Which prompts of a form say something else than they did when their last entry was made, or when the page came. */

import { promptOf, said, same } from "./said.js";
import { isTyping } from "./typing.js";

const answered = new WeakMap(); // container → what it said when its last entry was made, or is being made
const entered = new WeakMap(); // container → what its last entry says, once that entry is there

/* A disagreement shows no answer. */
function before(container) {
  return answered.has(container) ? answered.get(container) : said(container, null, true);
}

/* The changed prompts, and whether all could be read here; the server reads the others. */
export function changedPrompts(form) {
  const found = { changed: [], complete: true };
  for (const container of form.querySelectorAll("[data-prompt]")) {
    if (isTyping(container)) continue;
    try {
      const was = before(container);
      const now = said(container, was);
      const prompt = promptOf(container);
      const untouched = now === null && prompt.type === "photo";
      if (!same(now, was) && !untouched) found.changed.push({ container, prompt, now });
    } catch {
      found.complete = false;
    }
  }
  return found;
}

/* At once, so that the same answer is not taken twice while the first is being kept. */
export function noteAnswered(changed) {
  for (const { container, now } of changed) answered.set(container, now);
}

/* From here on this entry is what the page has seen at the prompt. */
export function noteMade(container, digest, now) {
  entered.set(container, now);
  const prompt = promptOf(container);
  container.dataset.prompt = JSON.stringify({ ...prompt, replaces: [digest] });
  const seen = container.querySelector(`[name="${CSS.escape(`${prompt.path.join("/")}.seen`)}"]`);
  if (seen) seen.value = container.dataset.prompt;
}

/* Prompts whose answer came after the entries that a form brings: their own entry is on its way, so the plain field
   must not be read as another. */
export function notYetEntered(form) {
  return [...form.querySelectorAll("[data-prompt]")].filter((container) => {
    try {
      const was = entered.has(container) ? entered.get(container) : said(container, null, true);
      return !same(said(container, was), was) && promptOf(container).type !== "photo";
    } catch {
      return false;
    }
  }).map(promptOf);
}
