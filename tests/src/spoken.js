// Only in journeys: notes what a screen reader is told by the live regions of the page in view,
// each time one of them gets words, by the rules of WAI-ARIA 1.2 (aria-live, aria-atomic); an
// output element is such a region by itself.
// A region that a class or a style shows, or that gets its role late, is missed: of attributes
// only `hidden` is watched.
"use strict";

if (!window.journeySpoken) {
  window.journeySpoken = [];
  const LIVE = "[role=status], [role=alert], [role=log], [aria-live], output";
  const near = (node) => (node instanceof Element ? node : node.parentElement);
  const words = (node) => (node instanceof Element ? node.innerText : node.data).trim();

  function manner(region) {
    const role = region.getAttribute("role") === "alert" ? "assertive" : "polite";
    return region.getAttribute("aria-live") ?? role;
  }

  // A status is read as a whole unless it says otherwise.
  function isWhole(region) {
    const said = region.getAttribute("aria-atomic");
    return said ? said === "true" : region.matches("[role=status], [role=alert]");
  }

  // What came or changed, by the region that it belongs to.
  function note(changed, region, node) {
    if (!changed.has(region)) changed.set(region, new Set());
    changed.get(region).add(node);
  }

  function changes(records) {
    const changed = new Map();
    for (const { type, target, addedNodes } of records) {
      const came = type === "childList" ? [...addedNodes] : [target];
      for (const node of came) {
        const region = near(type === "childList" ? target : node)?.closest(LIVE);
        if (region) note(changed, region, node);
        // A region that comes or is shown with words in it.
        for (const inner of node instanceof Element ? node.querySelectorAll(LIVE) : []) {
          note(changed, inner, inner);
        }
        if (node instanceof Element && node !== region && node.matches(LIVE)) note(changed, node, node);
      }
    }
    return changed;
  }

  function text(region, nodes) {
    if (isWhole(region)) return words(region);
    const outermost = [...nodes].filter((node) =>
      ![...nodes].some((other) => other !== node && other.contains(node) && other !== region));
    return outermost.map(words).filter(Boolean).join(" ");
  }

  new MutationObserver((records) => {
    for (const [region, nodes] of changes(records)) {
      if (!region.isConnected || !region.checkVisibility({ visibilityProperty: true })) continue;
      const said = text(region, nodes);
      if (said && manner(region) !== "off") window.journeySpoken.push([manner(region), said]);
    }
  }).observe(document.body, {
    subtree: true, childList: true, characterData: true, attributeFilter: ["hidden"],
  });
}
