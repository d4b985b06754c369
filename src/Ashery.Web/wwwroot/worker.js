// The service worker, behind /sw.js, which names the version and the files and loads queue.js first. docs/offline.md tells how it works.
"use strict";
const { version, files } = self.Ashery;
const FILES = `ashery-files-${version}`;
const PAGES = `ashery-pages-${version}`;
const KEPT_DAY = "Ashery-Kept";

const isOurs = name => name.startsWith("ashery-");
const keyOf = url => new URL(url, location.origin).pathname;

// A page asks to be kept by its header; one that came from elsewhere (a way to sign in) is not it.
const isKept = answer => answer.ok && !answer.redirected && answer.headers.get("Ashery-Offline") === "keep";

const keep = async (path, answer) => {
  const headers = new Headers(answer.headers);
  headers.set(KEPT_DAY, new Date().toISOString());
  headers.delete("Content-Encoding");
  await (await caches.open(PAGES)).put(path, new Response(await answer.blob(), { status: 200, headers }));
};

const forget = async path => {
  for (const name of (await caches.keys()).filter(isOurs)) await (await caches.open(name)).delete(path);
};

// What was kept says so, and since when, so that the page can tell the grower.
const kept = async path => {
  const answer = await (await caches.open(PAGES)).match(path);
  if (!answer) return null;
  const html = (await answer.text()).replace("<html ", `<html data-kept="${answer.headers.get(KEPT_DAY)}" `);
  return new Response(html, { status: 200, headers: answer.headers });
};

// A new version brings its own files, and takes the kept pages anew: old pages name old files.
const install = async () => {
  await (await caches.open(FILES)).addAll(files.map(file => new Request(file, { cache: "reload" })));
  const paths = new Set(["/"]);
  for (const name of (await caches.keys()).filter(n => n.startsWith("ashery-pages-"))) {
    for (const request of await (await caches.open(name)).keys()) paths.add(keyOf(request.url));
  }
  for (const path of paths) {
    try {
      const answer = await fetch(path, { headers: { Accept: "text/html" } });
      if (isKept(answer)) await keep(path, answer);
    } catch {
      // It is kept when it is next looked at.
    }
  }
  await self.skipWaiting();
};

const activate = async () => {
  for (const name of await caches.keys()) {
    if (isOurs(name) && name !== FILES && name !== PAGES) await caches.delete(name);
  }
  await self.clients.claim();
};

const page = async request => {
  const path = keyOf(request.url);
  try {
    const answer = await fetch(request);
    if (isKept(answer)) await keep(path, answer.clone());
    else if (answer.redirected || answer.status === 401 || answer.status === 403) await forget(path);
    return answer;
  } catch (error) {
    const found = await kept(path);
    if (found) return found;
    const today = request.mode === "navigate" ? await kept("/") : null;
    if (today) return Response.redirect("/", 302);
    throw error;
  }
};

const file = async request => (await (await caches.open(FILES)).match(request)) ?? fetch(request);

self.addEventListener("install", event => event.waitUntil(install()));
self.addEventListener("activate", event => event.waitUntil(activate()));
self.addEventListener("fetch", event => {
  const { request } = event;
  const url = new URL(request.url);
  if (request.method !== "GET" || url.origin !== location.origin) return;
  if (request.mode === "navigate" || (request.headers.get("Accept") ?? "").includes("text/html")) event.respondWith(page(request));
  else if (files.includes(url.pathname + url.search)) event.respondWith(file(request));
});

// Private pages go with the person; taps that wait stay, under their name, until that person is back.
self.addEventListener("message", event => {
  if (event.data?.type === "signed-out") {
    event.waitUntil((async () => {
      for (const name of await caches.keys()) if (name.startsWith("ashery-pages-")) await caches.delete(name);
      event.ports[0]?.postMessage("forgotten");
    })());
  }
});

self.addEventListener("sync", event => {
  if (event.tag !== "ashery-taps") return;
  event.waitUntil((async () => {
    const owner = await self.AsheryQueue.noted("owner");
    const sent = await self.AsheryQueue.send(owner);
    for (const client of await self.clients.matchAll()) client.postMessage({ type: "sent", ...sent });
    if (!sent.reached) throw new Error("No network yet.");
  })());
});
