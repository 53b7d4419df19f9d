/* Who is signed in on which device, as the page that is shown says. */

function said(name) {
  return document.querySelector(`meta[name="${name}"]`)?.content ?? "";
}

export function device() {
  return said("device");
}

export function person() {
  return said("person");
}
