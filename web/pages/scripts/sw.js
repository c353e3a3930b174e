// The offline copy of the site. The tool fills in LIST when it builds: every file with its
// SHA-256 and size, and which of them the look-up needs.
//
// The look-up is kept when this worker is installed; the rest when a page asks for it, which
// it does when it is idle and the reader is not saving data. A file enters the cache of this
// version only if its SHA-256 is the one in LIST. What is not kept yet is answered from the
// network as it comes: if it is not the listed file, the site has a newer version, it is not
// kept, and that version is looked for. A page of a newer version brings its own files, since
// they carry their hash in their names.
//
// A newer version is installed beside this one. It takes over when no page is open, which
// the browser sees to, or when the only open page says that it is about to be left by a link;
// from then on this version answers with the files of the newer one. What its list shares
// with the old cache is carried over, and where the old cache held the whole site the new one
// is filled before it takes over: an update never takes away what was kept.
//
// Messages. A page posts
//   {kind: "ask"}   to be told what is kept,
//   {kind: "fill"}  to have everything kept and be told on the way and at the end,
//   {kind: "leave", by} with a port, before it follows a link while a newer version waits; it
//                   goes on when the port answers, or unanswered after `by`.
// The worker answers the page that asked:
//   {kind: "kept", files, of, bytes, left, checked: "YYYY-MM-DD" or "", failed}
// files kept of how many, their size, the size of those still missing (both as stored, the
// transfer is smaller), the day on which the site last said that this version is its newest,
// and whether something could not be fetched or kept. Between workers: {kind: "take-over"}.
"use strict";

const LIST = {version: "", files: []}; // {version, files: [[path, head of its sha256, bytes, first], …]}

const SCOPE = new URL(self.registration.scope);
const PREFIX = `before-the-bench ${SCOPE.pathname} `;
const CACHE = PREFIX + LIST.version;
const STATE = new URL("kept-state", SCOPE).href;
const AT_ONCE = 4;

const FILES = new Map(LIST.files.map(([path, sha256, bytes, first]) =>
  [path, {url: new URL(path || "./", SCOPE).href, sha256, bytes, first: Boolean(first)}]));

// --- Keeping ------------------------------------------------------------------------------

async function install() {
  const cache = await caches.open(CACHE);
  const old = await otherCaches();
  await carryOver(old, cache);
  const states = await Promise.all(old.map(async (name) => readState(await caches.open(name))));
  const whole = states.some((state) => state.whole);
  await keep([...FILES.values()].filter((file) => whole || file.first), cache);
  await writeState(cache, {whole, checked: today()});
}

async function activate() {
  await Promise.all((await otherCaches()).map((name) => caches.delete(name)));
  await self.clients.claim();
}

async function otherCaches() {
  const names = await caches.keys();
  return names.filter((name) => name.startsWith(PREFIX) && name !== CACHE);
}

// Takes what has not changed from the caches of earlier versions.
async function carryOver(names, cache) {
  for (const name of names) {
    const from = await caches.open(name);
    for (const file of FILES.values()) {
      const kept = await from.match(file.url);
      if (kept && kept.headers.get("x-sha256")?.startsWith(file.sha256)) await cache.put(file.url, kept);
    }
  }
}

// Keeps some files, a few at a time; fails when one of them cannot be had as listed.
async function keep(files, cache, tell = async () => {}) {
  const queue = [...files];
  const work = async () => {
    for (let file = queue.shift(); file; file = queue.shift()) {
      await keepOne(file, cache);
      await tell();
    }
  };
  await Promise.all(Array.from({length: AT_ONCE}, work));
}

async function keepOne(file, cache) {
  if (await cache.match(file.url)) return;
  for (const mode of ["no-cache", "reload"]) {
    const response = await fetch(file.url, {cache: mode, credentials: "same-origin"});
    if (response.ok && await keepIfListed(file, response, cache)) return;
  }
  throw new Error(`${file.url} is not the file of version ${LIST.version}`);
}

// Puts a response into the cache if its bytes are the listed ones. It is built anew: a
// response that came by a redirect may not answer a navigation.
async function keepIfListed(file, response, cache) {
  const bytes = await response.arrayBuffer();
  if (!(await sha256(bytes)).startsWith(file.sha256)) return false;
  const headers = {"x-sha256": file.sha256};
  const type = response.headers.get("content-type");
  if (type) headers["content-type"] = type;
  await cache.put(file.url, new Response(bytes, {headers}));
  return true;
}

async function sha256(bytes) {
  const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  return Array.from(digest, (byte) => byte.toString(16).padStart(2, "0")).join("");
}

async function readState(cache) {
  const kept = await cache.match(STATE);
  return kept ? kept.json() : {whole: false, checked: ""};
}

async function writeState(cache, state) {
  await cache.put(STATE, new Response(JSON.stringify(state)));
}

function today() {
  const now = new Date();
  const two = (number) => String(number).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

// --- Answering ----------------------------------------------------------------------------

// The listed path of an address; the query plays no part in it.
function pathOf(url) {
  const path = url.pathname.slice(SCOPE.pathname.length);
  return path.endsWith("index.html") ? path.slice(0, -"index.html".length) : path;
}

async function answer(request, url) {
  const navigates = request.mode === "navigate";
  if (navigates) await handOver();
  const path = pathOf(url);
  const file = FILES.get(path);
  if (file && !handedOver) return fromThisVersion(file, request);
  if (FILES.has(path + "/")) return Response.redirect(new URL(path + "/" + url.search, SCOPE), 302);
  return fromNewer(request, url).catch(async (error) => {
    if (navigates) return missing();
    throw error;
  });
}

async function fromThisVersion(file, request) {
  const cache = await caches.open(CACHE);
  const kept = await cache.match(file.url);
  if (kept) return kept;
  const response = await fetch(request);
  if (response.ok && !response.redirected) {
    // A full storage is no sign of a newer version.
    const listed = await keepIfListed(file, response.clone(), cache).catch(() => true);
    if (!listed) self.registration.update().catch(() => {});
  }
  return response;
}

// The page that is about to be left for another of this site, and until when that holds.
let leaving = {id: "", by: 0};
// Whether a newer version was told to take over; nothing is answered from this one then.
let handedOver = false;

// A newer version takes over with the very request by which the only open page is left.
async function handOver() {
  if (handedOver || !self.registration.waiting || Date.now() > leaving.by) return;
  const others = (await openPages()).filter((id) => id !== leaving.id);
  if (others.length > 0) return;
  handedOver = true;
  self.registration.waiting.postMessage({kind: "take-over"});
}

// Pages that no worker answers for count too: the newer version would claim them.
async function openPages() {
  const windows = await self.clients.matchAll({type: "window", includeUncontrolled: true});
  return windows.filter((one) => one.url.startsWith(SCOPE.href)).map((one) => one.id);
}

// What this version does not list: from the cache of a newer one, else from the network.
async function fromNewer(request, url) {
  const address = new URL(pathOf(url) || "./", SCOPE).href;
  for (const name of await otherCaches()) {
    const kept = await (await caches.open(name)).match(address);
    if (kept) return kept;
  }
  return fetch(request);
}

async function missing() {
  const file = FILES.get("404.html");
  const kept = file && await (await caches.open(CACHE)).match(file.url);
  const headers = {"content-type": "text/html; charset=utf-8"};
  if (kept) return new Response(kept.body, {status: 404, headers});
  return new Response("<!DOCTYPE html><title>No signal</title><p>This page is not kept here " +
    "and there is no signal.", {status: 503, headers});
}

// --- Talking to pages ---------------------------------------------------------------------

async function fill(page) {
  const cache = await caches.open(CACHE);
  const every = Math.max(1, Math.floor(FILES.size / 10));
  let since = 0;
  let failed = false;
  const tell = async () => {
    since += 1;
    if (since % every === 0) await say(page);
  };
  try {
    await keep(FILES.values(), cache, tell);
    await writeState(cache, {...await readState(cache), whole: true});
  } catch {
    // No signal, no room, or a newer version: the page says so, and the next one tries again.
    failed = true;
  }
  await report(page, failed);
}

// Asks the site whether this version is still its newest, then tells the page what is kept.
async function report(page, failed = false) {
  const cache = await caches.open(CACHE);
  const script = await newestScript().catch(() => "");
  if (script) {
    const newest = script.includes(LIST.version);
    if (newest) await writeState(cache, {...await readState(cache), checked: today()});
    else self.registration.update().catch(() => {});
  }
  await say(page, failed);
}

// The site's own text of this worker; empty where it cannot be had.
async function newestScript() {
  const response = await fetch(self.location.href, {cache: "no-store"});
  return response.ok ? response.text() : "";
}

async function say(page, failed = false) {
  const cache = await caches.open(CACHE);
  const here = new Set((await cache.keys()).map((request) => request.url));
  const kept = [...FILES.values()].filter((file) => here.has(file.url));
  const size = (files) => files.reduce((sum, file) => sum + file.bytes, 0);
  const bytes = size(kept);
  const {checked} = await readState(cache);
  page?.postMessage({
    kind: "kept", files: kept.length, of: FILES.size, bytes,
    left: size([...FILES.values()]) - bytes, checked, failed,
  });
}

self.addEventListener("install", (event) => event.waitUntil(install()));
self.addEventListener("activate", (event) => event.waitUntil(activate()));

self.addEventListener("fetch", (event) => {
  const url = new URL(event.request.url);
  const ours = url.origin === SCOPE.origin && url.pathname.startsWith(SCOPE.pathname);
  const streams = event.request.headers.get("accept") === "text/event-stream";
  if (event.request.method !== "GET" || !ours || streams) return;
  event.respondWith(answer(event.request, url));
});

self.addEventListener("message", (event) => {
  const kind = event.data?.kind;
  if (kind === "ask") event.waitUntil(report(event.source));
  else if (kind === "fill") event.waitUntil(fill(event.source));
  else if (kind === "leave") {
    leaving = {id: event.source.id, by: event.data.by};
    event.ports[0]?.postMessage({kind: "go"});
  } else if (kind === "take-over") self.skipWaiting();
});
