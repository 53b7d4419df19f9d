/* The buttons beside a number: a step less, a step more, a usual value. They type into the field, nothing more. */

function decimals(text) {
  return (text.split(/[.,]/)[1] ?? "").length;
}

function write(field, text) {
  field.value = text;
  field.dispatchEvent(new Event("input", { bubbles: true }));
  field.dispatchEvent(new Event("change", { bubbles: true }));
}

function field(button) {
  return button.closest(".prompt").querySelector(".number-value input");
}

function firstUsual(button) {
  return button.closest(".prompt").querySelector('[data-behaviour="use"]')?.dataset.value ?? "0";
}

function step(button) {
  const number = field(button);
  const typed = number.value.trim();
  if (typed === "") {
    write(number, firstUsual(button));
    return;
  }
  const value = Number(typed.replace(",", "."));
  if (!Number.isFinite(value)) return;
  const by = button.dataset.by;
  write(number, (value + Number(by)).toFixed(Math.max(decimals(by), decimals(typed))));
}

function showPressed(number) {
  for (const button of number.closest(".prompt").querySelectorAll('[data-behaviour="use"]')) {
    button.setAttribute("aria-pressed", String(button.dataset.value === number.value.trim()));
  }
}

/* A keypad for figures may have no minus. */
function turn(number) {
  const typed = number.value.trim().replace("\u2212", "-");
  write(number, typed.startsWith("-") ? typed.slice(1) : `-${typed}`);
  number.focus();
}

document.addEventListener("click", (event) => {
  const button = event.target.closest?.('[data-behaviour="step"], [data-behaviour="use"], [data-behaviour="turn"]');
  if (!button) return;
  if (button.dataset.behaviour === "step") step(button);
  else if (button.dataset.behaviour === "turn") turn(button.closest(".prompt").querySelector("input[inputmode]"));
  else write(field(button), button.dataset.value);
});

document.addEventListener("input", (event) => {
  if (event.target.matches?.(".number-value input")) showPressed(event.target);
});
