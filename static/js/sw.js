/* Opens pages, goes from one to the next and takes plain forms with no network. It never works anything out: it asks
   an open page, or hands out the shell, which does. The server puts EDITION, FILES and ENGINE before this. */

const SHELL = `shell-${EDITION}`;
const FOR_ENGINE = "engine";
const NETWORK_MS = 4_000;
const PAGE_MS = 2_500;
const FORM_MS = 60_000; // what was sent must not be lost because the checks are still starting
const ALONE = ["/outbox", "/shell"];

self.addEventListener("install", (event) => event.waitUntil(install()));
self.addEventListener("activate", (event) => event.waitUntil(activate()));
self.addEventListener("message", (event) => {
  if (event.data.take) self.skipWaiting();
  if (event.data.claim) event.waitUntil(self.clients.claim());
  if (event.data.complete) event.waitUntil(told(event.data.fill, event.ports[0]));
});
self.addEventListener("fetch", (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (url.origin !== location.origin) return;
  if (url.pathname.startsWith("/static/engine/")) event.respondWith(kept(request, FOR_ENGINE));
  else if (url.pathname.startsWith("/static/")) event.respondWith(kept(request, SHELL));
  else if (request.mode === "navigate") event.respondWith(navigated(request, url));
});

/* A first visit keeps the shell only, so that the first page is not slowed. A new version brings its engine along
   before it is offered: who takes it must not be left without checks. */
async function install() {
  await filled(SHELL, FILES);
  if ((await names(FOR_ENGINE)).size > 0) await filled(FOR_ENGINE, ENGINE);
}

async function told(fill, port) {
  if (fill) await filled(FOR_ENGINE, ENGINE).catch(() => {}); // the page asks again
  const here = await names(FOR_ENGINE);
  port.postMessage({ complete: ENGINE.every((path) => here.has(path)) });
}

async function names(cache) {
  return new Set((await (await caches.open(cache)).keys()).map(({ url }) => new URL(url).pathname));
}

/* What is missing, file by file: when the network breaks in the middle, the next try goes on from there. Addresses
   that hold a digest may come from the browser's own store, where the page's own files lie already. */
async function filled(name, paths) {
  const cache = await caches.open(name);
  const here = await names(name);
  const add = (path) => cache.add(path.startsWith("/static/") ? path : new Request(path, { cache: "reload" }));
  const missing = paths.filter((path) => !path.startsWith("/static/") || !here.has(path));
  const tried = await Promise.allSettled(missing.map(add));
  const failed = tried.find(({ status }) => status === "rejected");
  if (failed) throw failed.reason;
}

async function activate() {
  for (const name of await caches.keys()) if (![SHELL, FOR_ENGINE, "who"].includes(name)) await caches.delete(name);
  const engine = await caches.open(FOR_ENGINE);
  for (const request of await engine.keys()) {
    if (!ENGINE.includes(new URL(request.url).pathname.replace(/\.memory$/, ""))) await engine.delete(request);
  }
  await self.clients.claim();
}

function within(promise, ms) {
  return Promise.race([promise, new Promise((_, late) => { setTimeout(() => late(new Error("too slow")), ms); })]);
}

/* Addresses of files change with their content: what is kept is right for ever. */
async function kept(request, name) {
  const found = await caches.match(request, { ignoreVary: true });
  if (found) return found;
  const answer = await fetch(request);
  if (answer.ok) {
    const copy = answer.clone();
    caches.open(name).then((cache) => cache.put(request, copy)).catch(() => {}); // a full phone still gets its page
  }
  return answer;
}

async function navigated(request, url) {
  const form = request.method === "POST" ? await request.clone().formData() : null;
  const asked = fetch(request);
  const mustWait = form || !(await caches.match("/who")); // where nobody is signed in, this phone has nothing to show
  try {
    return await (mustWait ? asked : within(asked, NETWORK_MS));
  } catch {
    asked.catch(() => {});
    const pairs = form ? [...form] : [];
    return await fromPage({ method: request.method, address: url.pathname + url.search, pairs }) ?? fromShell(url, form);
  }
}

/* The page that is being left is still there while the next one is fetched, and its checks are warm. */
async function fromPage(ask) {
  if (ask.method === "GET" && ALONE.includes(new URL(ask.address, location.origin).pathname)) return null;
  for (const client of await self.clients.matchAll({ type: "window" })) {
    const { port1, port2 } = new MessageChannel();
    const answer = new Promise((done) => { port1.onmessage = ({ data }) => done(data); });
    client.postMessage({ ask }, [port2]);
    const said = await within(answer, ask.method === "POST" ? FORM_MS : PAGE_MS).catch(() => null);
    if (!said || said.fault) continue;
    if (ask.method === "POST" && said.status < 400) return Response.redirect(said.address, 303);
    return page(said.html, said.status);
  }
  return null;
}

function page(html, status) {
  return new Response(html, { status, headers: { "Content-Type": "text/html; charset=utf-8", "X-From": "phone" } });
}

/* A form that nobody could take is not sent on to a page that looks as if it had been. */
async function fromShell(url, form) {
  const kept = await caches.open(SHELL);
  if (!form && url.pathname === "/outbox") return kept.match("/shell/outbox");
  const shell = await kept.match("/shell");
  if (!form) return shell;
  return page((await shell.text()).replace('<main ', '<main data-unsent="yes" '), 503);
}
