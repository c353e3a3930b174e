// Only in journeys: remembers what goes wrong in a page, for engines whose driver does not
// tell. Outlives the page, so that nothing said before a navigation is lost.
"use strict";

(() => {
  const key = "journey-heard";

  function hear(kind, words) {
    const heard = JSON.parse(sessionStorage.getItem(key) || "[]");
    heard.push(`${kind}: ${words} (${location.pathname})`);
    sessionStorage.setItem(key, JSON.stringify(heard));
  }

  // What is on the way to a page when it is left is lost to it: only a page that is still
  // there a moment later misses a file.
  addEventListener("error", (event) => {
    const file = event.target !== window && (event.target.src || event.target.href);
    if (file) setTimeout(hear, 100, "error", `cannot load ${file}`);
    else hear("error", event.message);
  }, true);
  addEventListener("unhandledrejection", (event) => hear("rejection", String(event.reason)));
  document.addEventListener("securitypolicyviolation", (event) =>
    hear("policy", `${event.violatedDirective} refuses ${event.blockedURI}`));
  for (const kind of ["error", "warn"]) {
    const say = console[kind];
    console[kind] = (...words) => {
      hear(kind, words.map(String).join(" "));
      say.apply(console, words);
    };
  }
})();
