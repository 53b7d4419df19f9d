/* What the fields of one prompt say, read by the same rules as the server reads a form without script.
   Whatever is unclear or too long is left to the server, which says so at the field. */

const WAYS = ["dont_know", "not_used"];
const LONGEST_TEXT = 2000;
const LONGEST_ANSWER = 200;
const READABLE = new Set(["number", "choice", "tick", "date", "text", "photo"]);

export class LeftToServer extends Error {}

export function promptOf(container) {
  return JSON.parse(container.dataset.prompt);
}

/* What a field says now, or what the page showed in it at first. */
function valueOf(field, first) {
  if (field.type === "checkbox" || field.type === "radio") {
    return (first ? field.defaultChecked : field.checked) ? field.value : "";
  }
  if (field.tagName === "SELECT") {
    const shown = first ? [...field.options].find((option) => option.defaultSelected) : field.selectedOptions[0];
    return shown?.value ?? "";
  }
  return first ? field.defaultValue : field.value;
}

function reader(container, name, first) {
  return (companion, most = LONGEST_ANSWER) => {
    const fields = [...container.querySelectorAll("[name]")].filter((field) => field.name === name + companion);
    const text = (fields.map((field) => valueOf(field, first)).find(Boolean) ?? "").trim();
    if ([...text].length > most) throw new LeftToServer("too long");
    return text.normalize("NFC");
  };
}

/* The answer in the fields: an object of texts, or null for none. `before` is the answer that was there. */
export function said(container, before, first = false) {
  const { path, type } = promptOf(container);
  if (!READABLE.has(type)) throw new LeftToServer(type);
  const text = reader(container, path.join("/"), first);
  if (type === "photo") {
    const { part, mime } = container.dataset;
    if (!first && container.querySelector("[type=file]")?.files.length) throw new LeftToServer("a file to send");
    return part && !first ? { type, part, mime } : null;
  }
  const value = valueSaid(type, text);
  const ways = WAYS.filter((way) => text(`.${way}`));
  if (ways.length > 1) throw new LeftToServer("two other answers");
  if (ways.length === 0) return value;
  const way = { type: ways[0], reason: text(".reason") };
  if (first || value === null || same(value, before)) return way;
  if (before?.type === way.type) return value;
  throw new LeftToServer("a value and another answer");
}

function valueSaid(type, text) {
  if (type === "tick") {
    const tick = text(".cannot_see") ? "cannot_see" : text("");
    return tick ? { type, text: tick } : null;
  }
  const typed = text("", type === "text" ? LONGEST_TEXT : LONGEST_ANSWER);
  if (!typed) return null;
  if (type !== "number") return { type, text: typed };
  return { type, text: typed, how: text(".how"), plus_minus: text(".plus_minus") };
}

export function same(one, other) {
  return JSON.stringify(one) === JSON.stringify(other);
}
