/* The field in hand is drawn in chalk; a fault is tied to its field; after sending the first fault gets the focus. */

function inHand() {
  return document.activeElement?.closest?.("[data-entry]")?.dataset.entry ?? "";
}

function draw() {
  const entry = inHand();
  for (const shape of document.querySelectorAll("#drawing [data-about]")) {
    shape.classList.toggle("d-in-hand", shape.dataset.about.split(" ").includes(entry));
  }
}

/* The answer fills the place below the field and leaves the field alone, so the field is told here. */
function tieFaults() {
  for (const place of document.querySelectorAll(".fault-place")) {
    const field = document.querySelector(`[aria-describedby~="${CSS.escape(place.id)}"]`);
    if (place.childElementCount > 0) field?.setAttribute("aria-invalid", "true");
    else field?.removeAttribute("aria-invalid");
  }
}

/* What was sent is what stands: an old text must not come back when the browser walks through its history. */
function settle(form) {
  for (const input of form.elements) {
    if (input.type === "checkbox" || input.type === "radio") input.defaultChecked = input.checked;
    else if (input.type !== "file" && "defaultValue" in input) input.defaultValue = input.value;
  }
}

document.addEventListener("focusin", draw);

document.addEventListener("htmx:afterRequest", (event) => {
  const form = event.detail.elt.closest?.("form");
  if (form && event.detail.successful) settle(form);
});

document.addEventListener("htmx:afterSettle", (event) => {
  tieFaults();
  draw();
  if (event.detail.requestConfig?.boosted) event.detail.elt.querySelector('[aria-invalid="true"]')?.focus();
});
