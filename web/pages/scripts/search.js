// The search: narrows the lists of its page to the lines that hold every word typed, best first.
"use strict";

(() => {
  const form = document.getElementById("search");
  const box = document.getElementById("wanted");
  const found = document.getElementById("found");

  // Letters without their accents, digits, small: "Café-80" is "cafe" and "80".
  const words = (text) => text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];

  const lists = [...document.querySelectorAll("section.index")].map((section) => ({
    section,
    list: section.querySelector("ul"),
    name: section.querySelector("h2").textContent.toLowerCase(),
    lines: [...section.querySelectorAll("li")].map((line) => ({
      line,
      title: words(line.querySelector("a").textContent),
      rest: words(`${line.querySelector("span")?.textContent ?? ""} ${line.dataset.words ?? ""}`),
    })),
  }));

  // How well a line answers one word: a word of its title before the beginning of one, and both
  // before what stands behind the title. 0 is not at all.
  function worth({ title, rest }, wanted) {
    if (title.includes(wanted)) return 8;
    if (title.some((word) => word.startsWith(wanted))) return 4;
    if (rest.includes(wanted)) return 2;
    return rest.some((word) => word.startsWith(wanted)) ? 1 : 0;
  }

  // Of two that answer alike, the one with the shorter title: it speaks of little else.
  function answers(lines, wanted) {
    const worths = lines.map((line) => ({ line, each: wanted.map((word) => worth(line, word)) }));
    const sum = (each) => each.reduce((all, one) => all + one, 0);
    return worths
      .filter(({ each }) => each.every((one) => one > 0))
      .map(({ line, each }) => ({ line, worth: sum(each) }))
      .sort((one, other) => other.worth - one.worth || one.line.title.length - other.line.title.length)
      .map(({ line }) => line);
  }

  // "7 found: 2 words, 5 formulas."
  function said(counts) {
    const all = counts.reduce((sum, [, count]) => sum + count, 0);
    if (all === 0) return "Nothing here holds all of that. Try fewer words, or the beginning of one.";
    const each = counts.filter(([, count]) => count > 0)
      .map(([name, count]) => `${count} ${count === 1 ? name.slice(0, -1) : name}`);
    return `${all} found: ${each.join(", ")}.`;
  }

  function search() {
    const wanted = [...new Set(words(box.value))];
    const counts = lists.map(({ section, list, name, lines }) => {
      const shown = wanted.length === 0 ? lines : answers(lines, wanted);
      for (const { line } of lines) line.hidden = true;
      for (const { line } of shown) {
        line.hidden = false;
        list.append(line);
      }
      section.hidden = shown.length === 0;
      return [name, shown.length];
    });
    document.body.classList.toggle("searching", wanted.length > 0);
    found.textContent = wanted.length === 0 ? "" : said(counts);
    // So that going back from a line, or handing the address on, shows the same lists.
    const query = box.value.trim() === "" ? location.pathname : `?q=${encodeURIComponent(box.value.trim())}`;
    try { history.replaceState(null, "", query); } catch { /* too often for this browser: not this once */ }
  }

  form.hidden = false;
  box.value ||= new URLSearchParams(location.search).get("q")?.slice(0, box.maxLength) ?? "";
  if (box.value) search();
  box.addEventListener("input", search);
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    search();
    document.querySelector("section.index:not([hidden]) li:not([hidden]) a")?.focus();
  });
})();
