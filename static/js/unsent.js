/* Says at the top of the page when an answer did not reach the server, and when it has. What was typed stays in its
   field, and goes with the next answer or when the form is sent. */

let unsent = false;

function show(state, words) {
  const sync = document.getElementById("sync");
  if (!sync) return;
  sync.dataset.sync = state;
  sync.querySelector("span").textContent = words;
}

function lost({ detail }) {
  unsent ||= detail.requestConfig?.verb === "post";
  show("kept", unsent ? "not sent yet: no network" : "no network");
}

document.addEventListener("htmx:sendError", lost);
document.addEventListener("htmx:timeout", lost);

document.addEventListener("htmx:afterRequest", ({ detail }) => {
  const status = detail.xhr?.status;
  if (!status) return;
  const post = detail.requestConfig?.verb === "post";
  if (post && (status >= 500 || status === 401)) {
    unsent = true;
    show("kept", "not kept: see the page");
    return;
  }
  if (post) unsent = false;
  if (!unsent) show("confirmed", "all confirmed");
});
