// Every page: the offline copy and the words about it, the theme, and the home-screen hint.
// It never reads what the reader's notebook or set says, only whether they are there: study and look-up
// own those. That a lesson is ticked, study says by an attribute on the body.
"use strict";

(() => {
  const root = new URL("../", document.currentScript.src);
  const body = document.body;

  // Storage may be switched off or full; then nothing is remembered and nothing breaks.
  const remember = {
    read(name) {
      try { return localStorage.getItem("before-the-bench:" + name); } catch { return null; }
    },
    write(name, text) {
      try {
        if (text === null) localStorage.removeItem("before-the-bench:" + name);
        else localStorage.setItem("before-the-bench:" + name, text);
      } catch { /* said by the pages that keep something worth keeping */ }
    },
  };

  // --- The offline copy -------------------------------------------------------------------------

  const line = document.getElementById("kept");
  const fill = document.getElementById("kept-fill");
  const narrow = matchMedia("(max-width: 40rem)").matches;
  const device = narrow ? "phone" : "computer";
  const saving = Boolean(navigator.connection && navigator.connection.saveData);

  function say(kept, words) {
    if (!line) return;
    line.dataset.kept = kept;
    line.textContent = words;
  }

  function size(bytes) {
    return bytes < 999500 ? Math.ceil(bytes / 1000) + " kB" : (bytes / 1e6).toFixed(1) + " MB";
  }

  // `when` is YYYY-MM-DD; noon keeps it on its own day in every time zone.
  function day(when) {
    return new Date(when + "T12:00").toLocaleDateString("en-GB", { day: "numeric", month: "long", year: "numeric" });
  }

  // What the worker answers: how much of the site it holds, and when it last compared that with the site.
  function report(kept) {
    const whole = kept.files >= kept.of;
    const some = `Needs signal for some pages: ${kept.files} of ${kept.of} files are kept on this ${device}`;
    if (whole) {
      const checked = kept.checked ? `, checked ${day(kept.checked)}` : "";
      say("yes", `Kept on this ${device}${checked}. It opens without signal (${size(kept.bytes)}).`);
    } else if (kept.failed) {
      say("part", `${some}. The rest (${size(kept.left)}) could not be fetched now; the next page tries again.`);
    } else if (saving) {
      say("part", `${some}. Data saving is on, so the rest (${size(kept.left)}) waits for you.`);
    } else {
      say("part", `${some} so far; ${size(kept.left)} to come.`);
    }
    if (fill) fill.hidden = whole || !(saving || kept.failed);
  }

  function ask(kind) {
    navigator.serviceWorker.ready.then((registration) => {
      if (registration.active) registration.active.postMessage({ kind });
    });
  }

  function whenIdle(task) {
    if ("requestIdleCallback" in window) requestIdleCallback(task, { timeout: 4000 });
    else setTimeout(task, 1500);
  }

  // A browser that may clear its storage is asked once to leave ours alone, when there is something in it.
  let held = false;
  function holdOn() {
    const something = remember.read("notebook") || remember.read("set");
    if (!something || held) return;
    held = true;
    if (navigator.storage && navigator.storage.persist) navigator.storage.persist().catch(() => {});
  }

  // Where a link leads within this site and away from this page, if a plain click follows it; else null.
  function leadsTo(event) {
    const link = event.target instanceof Element && event.target.closest("a[href]");
    const plain = event.button === 0 && !(event.ctrlKey || event.metaKey || event.shiftKey || event.altKey);
    if (!link || !plain || event.defaultPrevented || link.target || link.hasAttribute("download")) return null;
    const to = new URL(link.href);
    const samePage = to.pathname === location.pathname && to.search === location.search;
    const stays = samePage && to.href.includes("#");
    return to.href.startsWith(root.href) && !stays ? to.href : null;
  }

  // While a newer version of the site waits, a page tells the worker before it is left by a link. If it is
  // the only page open, the newer version takes over in between; no open page ever changes its version.
  function letNewerIn(registration) {
    document.addEventListener("click", (event) => {
      const to = registration.waiting && registration.active ? leadsTo(event) : null;
      if (!to) return;
      event.preventDefault();
      let left = false;
      const go = () => {
        if (!left) location.assign(to);
        left = true;
      };
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = go;
      setTimeout(go, 2000);
      registration.active.postMessage({ kind: "leave", by: Date.now() + 1500 }, [port2]);
    });
  }

  function keep() {
    navigator.serviceWorker.addEventListener("message", (event) => {
      if (event.data && event.data.kind === "kept") report(event.data);
    });
    navigator.serviceWorker.register(new URL("sw.js", root), { scope: root.pathname }).then(
      (registration) => {
        whenIdle(() => ask(saving ? "ask" : "fill"));
        letNewerIn(registration);
      },
      () => say("no", "Needs signal: this browser would not keep a copy."),
    );
    if (fill) {
      fill.addEventListener("click", () => {
        fill.hidden = true;
        say("part", "Fetching the rest of the site…");
        ask("fill");
      });
    }
    holdOn();
  }

  if (location.protocol === "file:") {
    say("yes", "Portable edition: everything is in this folder, no signal needed.");
  } else if (!isSecureContext) {
    say("no", "Needs signal: no offline copy here, because this address begins with http. Browsers keep copies only from an https address.");
  } else if (!("serviceWorker" in navigator)) {
    say("no", "Needs signal: this browser, or this private window, keeps no offline copies.");
  } else {
    if (document.readyState === "complete") keep();
    else addEventListener("load", keep);
  }

  // --- The theme --------------------------------------------------------------------------------

  const chosen = document.getElementById("theme");

  function paint(theme) {
    if (theme === "light" || theme === "dark") document.documentElement.dataset.theme = theme;
    else delete document.documentElement.dataset.theme;
    for (const meta of document.querySelectorAll('meta[name="theme-color"]')) {
      const own = meta.media.includes("dark") ? "dark" : "light";
      const shown = theme === "light" || theme === "dark" ? theme : own;
      meta.content = meta.dataset[shown];
    }
  }

  if (chosen) {
    chosen.value = document.documentElement.dataset.theme || "device";
    paint(chosen.value);
    chosen.closest("[hidden]")?.removeAttribute("hidden");
    chosen.addEventListener("change", () => {
      remember.write("theme", chosen.value === "device" ? null : chosen.value);
      paint(chosen.value);
    });
    document.addEventListener("before-the-bench:wiped", () => {
      chosen.value = "device";
      paint("device");
    });
  }

  // --- The home-screen hint, after the first lesson ---------------------------------------------

  const hint = document.getElementById("home-screen");
  let install = null;

  function showHint() {
    const installed = matchMedia("(display-mode: standalone)").matches || navigator.standalone === true;
    const worthIt = "ticked" in body.dataset;
    if (!hint || installed || !worthIt || remember.read("home-screen") === "no") return;
    if (location.protocol === "file:" || !isSecureContext) return;
    // On a lesson it belongs to the tick that was just made.
    if (hint.hidden) document.querySelector(".tick")?.after(hint);
    hint.hidden = false;
    const button = hint.querySelector("[data-do=install]");
    if (button) button.hidden = install === null;
  }

  if (hint) {
    addEventListener("beforeinstallprompt", (event) => {
      event.preventDefault();
      install = event;
      showHint();
    });
    document.addEventListener("before-the-bench:recorded", () => { holdOn(); showHint(); });
    document.addEventListener("before-the-bench:wiped", () => { hint.hidden = true; });
    hint.addEventListener("click", (event) => {
      const what = event.target.closest("button")?.dataset.do;
      if (what === "install" && install) install.prompt();
      if (what) { remember.write("home-screen", "no"); hint.hidden = true; }
    });
    showHint();
  }

  if (!body.dataset.program) body.dataset.ready = "";
})();
