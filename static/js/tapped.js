/* A phone lets a page ask for its screen lock only right after a tap. If the last one was too long ago, because the
   checks had to start first, the page asks for another one. */

const ASK = "Ready to sign";
const WHY = "This phone now asks for finger, face or its own code.";
const GO = "Confirm with the screen lock";
const NOT = "Do not sign";

function made(name, words, more = {}) {
  return Object.assign(document.createElement(name), { textContent: words, ...more });
}

/* Whether somebody tapped just now, or does so when asked. */
export function tapped() {
  if (navigator.userActivation?.isActive) return Promise.resolve(true);
  const box = made("dialog", "", { className: "stack stack-wide tapped" });
  const go = made("button", GO, { className: "button button-go button-wide", type: "button", autofocus: true });
  const not = made("button", NOT, { className: "button button-wide", type: "button" });
  box.setAttribute("aria-label", ASK);
  box.append(made("h2", ASK), made("p", WHY), go, not);
  document.body.append(box);
  return new Promise((done) => {
    go.addEventListener("click", () => { done(true); box.close(); });
    not.addEventListener("click", () => box.close());
    box.addEventListener("close", () => { done(false); box.remove(); });
    box.showModal();
  });
}
