/* A page that was made on this phone holds no form token. When it is sent after all, it takes the one that the server
   gives this browser. */

import { contact } from "./contact.js";

let token = document.querySelector('meta[name="form-token"]')?.content ?? "";

async function fetched() {
  const answer = await fetch("/device", { redirect: "manual", cache: "no-store" }).catch(() => null);
  if (answer?.ok) token = (await answer.json()).form_token ?? token;
}

function fillIn() {
  for (const field of document.querySelectorAll('input[name="form_token"]')) if (!field.value) field.value = token;
}

/* Back from a time without the server: the sign-in may be another one by now. */
let wasAway = false;
document.addEventListener("phone:changed", async () => {
  if (wasAway && !contact.away) {
    wasAway = false;
    await fetched();
  }
  wasAway ||= contact.away;
  if (!token && !contact.away) await fetched();
  fillIn();
});
document.addEventListener("htmx:configRequest", ({ detail }) => {
  if (detail.verb === "post" && token) detail.headers["X-Form-Token"] = token;
});
document.addEventListener("htmx:afterSettle", fillIn);
fillIn();
