/* What stands in a field while somebody types in it is no answer: it becomes one when the hand leaves the field. */

const inHand = new Set(); // prompts

function promptAround({ target }) {
  return target.closest?.("[data-prompt]");
}

function left(event) {
  const container = promptAround(event);
  if (inHand.delete(container)) document.dispatchEvent(new CustomEvent("hand:rests"));
}

export function isTyping(container) {
  return inHand.has(container);
}

export function isAnyTyping() {
  return [...inHand].some((container) => container.isConnected);
}

/* A form that is sent as a whole says all that stands in it. */
export function endTyping(form) {
  for (const container of inHand) if (form.contains(container) || !container.isConnected) inHand.delete(container);
}

document.addEventListener("input", (event) => {
  const container = promptAround(event);
  if (container) inHand.add(container);
}, true);
document.addEventListener("change", left, true);
document.addEventListener("focusout", left, true);
