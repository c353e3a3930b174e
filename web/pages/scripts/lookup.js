// The look-up page. All computing and every sentence about the figures is in the wasm; this moves text.
// The form goes in as lines "name=value"; lines of fields between tabs come back, each of which says what
// to do in which slot of the page. The tool puts the bindings and startWasm before this.

const form = document.getElementById("lookup");
const slots = {};
for (const element of document.querySelectorAll("[data-slot]")) slots[element.dataset.slot] = element;

// --- The kept set: storage may be switched off, full, or hold what somebody else wrote -------------

const KEY = "before-the-bench:set";
const LONGEST_KEPT = 2000;
const WHAT_IS_GIVEN = ["dial", "oscillator", "if", "side", "region"];

// What was kept, as pairs for the program; null where nothing was. Damaged content throws. The set may say
// more than this page asks (version 2, web/myset/src/kept.rs): that stays as it is.
let rest = {};
function readKept() {
  rest = {};
  const text = localStorage.getItem(KEY);
  if (text === null) return null;
  if (text.length > LONGEST_KEPT) throw new Error("too long");
  const kept = JSON.parse(text);
  const words = typeof kept.if === "string" && ["string", "undefined"].includes(typeof kept.dial);
  const choices = ["above", "below"].includes(kept.side) && [1, 2, 3].includes(kept.region);
  if (![1, 2].includes(kept.version) || !words || !choices) throw new Error("not a set");
  rest = kept;
  return ["dial", "if", "side", "region"].filter((name) => kept[name]).map((name) => [name, kept[name]]);
}

function setAside() {
  try {
    localStorage.setItem(KEY + ":set-aside", localStorage.getItem(KEY).slice(0, LONGEST_KEPT));
    localStorage.removeItem(KEY);
  } catch { /* then it stays, and is found damaged again */ }
  slots.storage.textContent = "What this browser had kept of your set could not be read. It was set aside; please choose your IF again.";
}

function keep([dial, intermediate, side, region]) {
  try {
    // Another page may have changed the rest since.
    try { readKept(); } catch { rest = {}; }
    const set = { ...rest, version: 2, dial, if: intermediate, side, region: Number(region) };
    localStorage.setItem(KEY, JSON.stringify(set));
    slots.storage.textContent = "";
  } catch {
    slots.storage.textContent = "This browser keeps nothing for this page: your set will be asked for again next time.";
  }
}

// --- What the lines of an answer do -----------------------------------------------------------------

// A float comes as its 64 bits in hexadecimal digits.
const number = (bits) => new Float64Array(BigUint64Array.of(BigInt("0x" + bits)).buffer)[0];

let told = 0;
let rows = null;
const moves = {
  text(name, text) { slots[name].textContent = text; },
  hide(name, yes) { slots[name].hidden = yes === "yes"; },
  set(name, attribute, value) { slots[name].setAttribute(attribute, value); },
  drop(name, attribute) { slots[name].removeAttribute(attribute); },
  value(name, bits) { slots[name].dataset.value = number(bits); },
  field(name, value) { form.elements.namedItem(name).value = value; },
  empty(name) { slots[name].replaceChildren(); },
  item(name, quantity, bits, text) {
    const item = document.createElement("li");
    Object.assign(item.dataset, { quantity, value: number(bits) });
    item.textContent = text;
    slots[name].append(item);
  },
  table(name) {
    const table = document.getElementById("card-table").content.cloneNode(true);
    rows = table.querySelector("tbody");
    slots[name].append(table);
  },
  row(name, ...texts) {
    const row = rows.insertRow();
    texts.forEach((text, index) => {
      const cell = document.createElement(index ? "td" : "th");
      if (!index) cell.scope = "row";
      if (index === 4) cell.className = "heard";
      cell.textContent = text;
      row.append(cell);
    });
  },
  link(name, query) {
    slots["link-section"].hidden = !query;
    if (query) slots[name].href = "?" + query;
  },
  // Screen readers hear the answer once typing has paused, not at each keystroke.
  speak(name, text) {
    clearTimeout(told);
    told = setTimeout(() => { slots[name].textContent = text; }, 1200);
  },
};

function apply(lines) {
  for (const line of lines.split("\n")) {
    const [what, ...fields] = line.split("\t");
    moves[what]?.(...fields);
  }
}

// --- Asking ------------------------------------------------------------------------------------------

let lookUp = null;
let card = "";

// Asks the program and shows its answer; gives the set to keep, where there is one.
function ask(task, pairs = new FormData(form)) {
  const lines = [["do", task], ...pairs].map(([name, value]) => name + "=" + String(value).replace(/\s+/g, " "));
  const [page, ownCard] = lookUp(lines.join("\n")).split("\ncard\n");
  const kept = page.split("\n").find((line) => line.startsWith("keep\t"));
  apply(page);
  if (card !== ownCard) apply(ownCard);
  card = ownCard;
  return kept?.split("\t").slice(1);
}

// A stop in the program ends the live page, never the text and the tables.
function ended(error) {
  document.body.removeAttribute("data-ready");
  for (const element of document.querySelectorAll(".bench, .card-section, .link")) element.hidden = true;
  slots.notice.textContent = "The look-up could not go on in this browser. The tables below still hold.";
  setTimeout(() => { throw error; });
}

// The reader did something: show it, keep it, and let go of the link the page was opened by. What is typed
// is kept once it has stood for a second, or the box or the page is left: half a number is nobody's set, but
// what stands when the phone is put away is the reader's.
const STOOD = 1000;
let toKeep = null;
let keeping = 0;
function changed(task, typing) {
  try {
    toKeep = ask(task);
  } catch (error) { return ended(error); }
  clearTimeout(keeping);
  if (typing) keeping = setTimeout(settle, STOOD);
  else settle();
  if (location.search) letGo();
}

function settle() {
  clearTimeout(keeping);
  if (toKeep) keep(toKeep);
  toKeep = null;
}

// What the link said amiss of a choice is settled once the reader makes that choice.
function chosen({ target }) {
  if (target.type !== "radio") return;
  const sentences = slots.notice.textContent.split(/(?=In the link, )/);
  slots.notice.textContent = sentences.filter((text) => !text.startsWith("In the link, " + target.name)).join("");
}

function letGo() {
  try { history.replaceState(null, "", location.pathname); } catch { /* pages without a server may not */ }
}

function open() {
  const query = new URLSearchParams(location.search);
  const given = WHAT_IS_GIVEN.filter((name) => query.has(name)).map((name) => [name, query.get(name)]);
  let kept = null;
  let damaged = false;
  try { kept = readKept(); } catch (error) { damaged = error.name !== "SecurityError"; }
  if (given.length) {
    const own = (kept ?? []).map(([name, value]) => ["set-" + name, value]);
    ask("open", [...given, ...own]);
  } else if (kept && !ask("open", kept)) {
    damaged = true;
    ask("open", []);
  }
  if (damaged) setAside();
}

// --- Events ------------------------------------------------------------------------------------------

// With the keypad open, answer and box move together to the top of what is left of the screen.
function fit() {
  const seen = visualViewport;
  const short = seen.height < 520 && seen.height < innerHeight - 100;
  form.classList.toggle("short", short);
  if (short && form.contains(document.activeElement)) form.scrollIntoView({ block: "start" });
}

function copy() {
  const address = slots.link.href;
  const say = (words) => { slots.copied.textContent = words; };
  if (!navigator.clipboard) return say("Press and hold the link above to copy it.");
  navigator.clipboard.writeText(address).then(() => say("Copied."), () => say("Press and hold the link above to copy it."));
}

function listen() {
  form.addEventListener("submit", (event) => event.preventDefault());
  form.addEventListener("focusin", ({ target }) => { if (target.inputMode) target.select(); });
  form.addEventListener("input", ({ target }) => changed("show", target.inputMode === "decimal"));
  form.addEventListener("change", settle);
  addEventListener("pagehide", settle);
  document.addEventListener("visibilitychange", () => { if (document.hidden) settle(); });
  form.addEventListener("click", chosen);
  document.querySelector(".card-section").addEventListener("input", () => changed("show"));
  form.addEventListener("click", (event) => {
    const button = event.target.closest("[data-do]");
    if (button) changed(button.dataset.do);
  });
  document.querySelector("[data-copy]").addEventListener("click", copy);
  document.querySelector("[data-print]").addEventListener("click", () => print());
  if (globalThis.visualViewport) visualViewport.addEventListener("resize", fit);
}

startWasm("lookup").then((program) => {
  lookUp = program.look_up;
  open();
  listen();
  document.body.dataset.ready = "";
}).catch(ended);
