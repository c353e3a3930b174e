// Only in `cargo site serve`: reloads the page when the site has changed. The server sends
// the name of its version; the page knows the one it was made for. The offline copy would
// answer with the old version, so it is put away first.
"use strict";

(() => {
  const loaded = document.currentScript.dataset.version;

  async function putOfflineCopyAway() {
    if (!("serviceWorker" in navigator)) return;
    for (const worker of await navigator.serviceWorker.getRegistrations()) await worker.unregister();
    for (const name of await caches.keys()) await caches.delete(name);
  }

  new EventSource("/reload-events").onmessage = async (event) => {
    if (event.data === loaded) return;
    await putOfflineCopyAway();
    location.reload();
  };
})();
