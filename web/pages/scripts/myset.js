// The page of the reader's own set. All computing and every sentence about a set is in the wasm; this moves
// text. The boxes go in as lines "name=value"; lines of fields between tabs come back (web/myset/src/page.rs).
// The tool puts the bindings and startWasm before this.

const KEY = "before-the-bench:set";
const LONGEST_FILE = 8000;
const part = (id) => document.getElementById(id);
const form = part("set-form");

let mySet = null;
// Where the look-up's dial stood, handed through; what save, file and link take; what is kept.
let dial = "";
let own = null;
let kept = null;
// Whether the reader has asked to save: from then on missing answers are told too.
let asked = false;

// --- What the lines of an answer do -----------------------------------------------------------------

const body = part("results-body");
let sheet = null;
let line = null;
let rows = null;

function made(name, text, parent) {
  const element = document.createElement(name);
  if (text) element.textContent = text;
  parent.append(element);
  return element;
}

const moves = {
  box(key, text) { form.elements.namedItem(key).value = text; },
  press(name, value) {
    for (const input of form.querySelectorAll(`input[name="${name}"]`)) input.checked = input.value === value;
  },
  dial(text) { dial = text; },
  notice(text) { part("notice").textContent = text; },
  aside() {
    try {
      localStorage.setItem(KEY + ":set-aside", localStorage.getItem(KEY).slice(0, 2000));
      localStorage.removeItem(KEY);
    } catch { /* then it stays, and is found damaged again */ }
  },
  reading(key, text) { part("reading-" + key).textContent = text; },
  fault(key, text) {
    const box = form.elements.namedItem(key);
    const typed = box instanceof HTMLInputElement && box.value.trim();
    const shown = text && (asked || typed) ? text : "";
    const says = part("fault-" + key);
    says.textContent = shown;
    says.hidden = !shown;
    if (box instanceof HTMLInputElement) box.setAttribute("aria-invalid", String(Boolean(shown)));
  },
  set(text, link, told) { own = { text, link, told }; },
  heading(text) { made("h3", text, sheet); },
  says() { line = made("p", "", sheet); },
  needs(text) { made("p", text, sheet).className = "needs"; },
  table(caption) {
    const holder = made("div", "", sheet);
    holder.className = "table";
    holder.tabIndex = 0;
    holder.setAttribute("role", "group");
    holder.setAttribute("aria-label", caption);
    const table = made("table", "", holder);
    made("caption", caption, table);
    rows = { head: made("tr", "", made("thead", "", table)), body: made("tbody", "", table) };
  },
  heads(...texts) { for (const text of texts) made("th", text, rows.head).scope = "col"; },
  row() { line = made("tr", "", rows.body); },
  piece(text, quantity, value, expression) {
    let holder = line;
    if (line.tagName === "TR") {
      holder = made(line.firstChild ? "td" : "th", "", line);
      if (holder === line.firstChild) holder.scope = "row";
    }
    if (!quantity) return holder.append(text);
    const found = made("data", text, holder);
    found.value = value;
    Object.assign(found.dataset, { quantity, value, expression });
  },
};

// --- Asking -----------------------------------------------------------------------------------------

function ask(task, more = {}) {
  const boxes = Object.fromEntries(new FormData(form));
  const pairs = Object.entries({ do: task, ...boxes, dial, ...more });
  const lines = pairs.map(([name, value]) => name + "=" + String(value).replace(/\s+/g, " "));
  own = null;
  sheet = document.createDocumentFragment();
  for (const line of mySet(lines.join("\n")).split("\n")) {
    const [what, ...fields] = line.split("\t");
    moves[what]?.(...fields);
  }
  show();
}

// The example stays until there is something of the reader's to show.
function show() {
  const empty = !own && ![...new FormData(form)].some(([name, value]) => value && !name.endsWith("-unit"));
  if (!empty || body.dataset.own) {
    body.dataset.own = "yes";
    part("results-title").textContent = "What your set will do";
    part("results-note").className = "";
    part("results-note").textContent = own
      ? own.told + "."
      : "This comes when IF, side and Region are answered and no box is refused.";
    body.replaceChildren(sheet);
  }
  saying();
}

function saying() {
  part("saved").textContent = own && own.text !== kept ? "Not saved yet." : own ? "This is the set that is kept." : "";
}

function readKept() {
  try { return localStorage.getItem(KEY); } catch { return null; }
}

function open() {
  kept = readKept();
  ask("open", { kept: kept ?? "", link: location.hash });
  // A set of the look-up's first version is the same set, written anew when it is saved.
  if (kept && own && !location.hash.startsWith("#set")) kept = own.text;
  saying();
}

function save() {
  asked = true;
  ask("show");
  if (!own) {
    const first = form.querySelector(".problem:not([hidden])");
    const holder = first.parentElement;
    const fold = first.closest("details");
    if (fold) fold.open = true;
    part("saved").textContent = "Not saved: the answer that is marked has to be mended first.";
    return (holder.querySelector("input[type=text]") ?? holder.querySelector("input")).focus();
  }
  try {
    localStorage.setItem(KEY, own.text);
  } catch {
    part("saved").textContent = "This browser keeps nothing for this page. A file or a link keeps your set.";
    return;
  }
  kept = own.text;
  part("notice").textContent = "";
  if (location.hash) letGo();
  part("saved").textContent = `Saved: ${own.told}. The look-up works with it, and lessons do where you choose it at their head.`;
}

function letGo() {
  try { history.replaceState(null, "", location.pathname + location.search); } catch { /* pages without a server may not */ }
}

// --- Carrying ---------------------------------------------------------------------------------------

const carried = (words) => { part("carried").textContent = words; };

function there() {
  if (!own) carried("There is no whole set yet: answer IF, side and Region first.");
  return own !== null;
}

function saveFile() {
  if (!there()) return;
  const link = document.createElement("a");
  link.download = "my-set.json";
  link.href = "data:application/json;charset=utf-8," + encodeURIComponent(own.text);
  link.click();
  carried("Saved as my-set.json, if your browser did not ask otherwise.");
}

async function openFile() {
  const [file] = part("file").files;
  if (!file) return;
  if (file.size > LONGEST_FILE) {
    carried("That file holds no set: it is too long to be one.");
  } else {
    const text = await file.text();
    ask("take", { text });
    carried(part("notice").textContent);
    part("notice").textContent = "";
  }
  // So that the same file can be chosen again.
  part("file").value = "";
}

function makeLink() {
  if (!there()) return;
  const box = part("link");
  part("link-line").hidden = false;
  box.value = location.href.split("#")[0] + own.link;
  box.select();
  const byHand = () => carried("Copy the link from the box.");
  if (!navigator.clipboard) return byHand();
  navigator.clipboard.writeText(box.value).then(() => carried("Copied; the link also stands in the box."), byHand);
}

function wipe() {
  try {
    localStorage.removeItem(KEY);
    localStorage.removeItem(KEY + ":set-aside");
  } catch { /* then nothing was kept either */ }
  kept = null;
  asked = false;
  dial = "";
  letGo();
  ask("open");
  part("link-line").hidden = true;
  carried("Wiped. This browser holds no set of yours now.");
}

// --- Events -----------------------------------------------------------------------------------------

function ended(error) {
  document.body.removeAttribute("data-ready");
  form.hidden = true;
  part("carry").hidden = true;
  part("notice").textContent = "This page could not go on in this browser. What is kept of your set stays.";
  setTimeout(() => { throw error; });
}

const guarded = (act) => (event) => { try { act(event); } catch (error) { ended(error); } };

function listen() {
  form.addEventListener("submit", guarded((event) => { event.preventDefault(); save(); }));
  form.addEventListener("input", guarded(() => ask("show")));
  part("file-save").addEventListener("click", guarded(saveFile));
  part("file-open").addEventListener("click", () => part("file").click());
  part("file").addEventListener("change", () => { openFile().catch(ended); });
  part("link-make").addEventListener("click", guarded(makeLink));
  part("wipe").addEventListener("click", guarded(wipe));
  addEventListener("hashchange", guarded(() => { if (location.hash.startsWith("#set")) open(); }));
}

startWasm("myset").then((program) => {
  mySet = program.my_set;
  open();
  listen();
  part("carry").hidden = false;
  document.body.dataset.ready = "";
}).catch(ended);
