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

/* What was sent is what stands: an old text must not come back when the browser walks through its history. What was
   answered while the request was under way was not sent with it, and stays a change. */
function settle(form, sent) {
  for (const input of form.elements) {
    const texts = input.name ? sent.getAll(input.name) : [];
    if (input.type === "checkbox" || input.type === "radio") input.defaultChecked = texts.includes(input.value);
    else if (!["file", "hidden"].includes(input.type) && "defaultValue" in input && texts.length) {
      input.defaultValue = texts[0];
    }
  }
}

/* In sight, too: after this event htmx goes back to the top of the page. */
function showFault(field) {
  if (!field) return;
  field.focus();
  setTimeout(() => field.scrollIntoView({ block: "center" }));
}

document.addEventListener("focusin", draw);

document.addEventListener("htmx:afterRequest", (event) => {
  const form = event.detail.elt.closest?.("form");
  const sent = event.detail.requestConfig?.formData;
  if (form && sent && event.detail.successful) settle(form, sent);
});

document.addEventListener("htmx:afterSettle", (event) => {
  tieFaults();
  draw();
  if (event.detail.requestConfig?.boosted) showFault(event.detail.elt.querySelector('[aria-invalid="true"]'));
});
