/* Of a tick and the ways out below it only one holds: what was touched last takes the others away, before it is read. */

function question(box) {
  return box.name.split(".")[0];
}

document.addEventListener("input", (event) => {
  const box = event.target;
  if (box.type !== "checkbox" || !box.checked) return;
  for (const other of box.closest(".prompt")?.querySelectorAll('input[type="checkbox"]') ?? []) {
    if (other !== box && question(other) === question(box)) other.checked = false;
  }
}, true);
