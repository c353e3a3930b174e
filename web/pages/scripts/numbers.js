// The switch at the head of a lesson: its numbers and figures for the reader's own set. All computing and every
// reason is in the wasm, which is given the recipes of the lesson and the set as it is kept
// (web/numbers/src/page.rs); this moves text. The tool puts the bindings and startWasm before this.

const SET = "before-the-bench:set";
const MINE = "before-the-bench:numbers";
let place = document.getElementById("numbers");
const article = document.querySelector("article.lesson");
const numbers = [...article.querySelectorAll("data.number[data-kind]")];
const figures = [...article.querySelectorAll("figure[data-figure]")];
const lessons = numbers.map((number) => [number.textContent, number.value]);

const read = (name) => { try { return localStorage.getItem(name); } catch { return null; } };

function remember(mine) {
  try {
    if (mine) localStorage.setItem(MINE, "mine");
    else localStorage.removeItem(MINE);
  } catch { /* then the choice lasts as long as the page */ }
}

let said = null;
let ownNumbers = null;

// --- What the lines of an answer do -----------------------------------------------------------------

function write(index, text, value) {
  const number = numbers[index];
  number.textContent = text;
  number.value = value;
  number.dataset.value = value;
}

function note(text, put) {
  const line = document.createElement("p");
  line.className = "stays";
  line.textContent = text;
  put(line);
}

// Where the sentence of a unit that stays is put: behind its heading, so that it is read before the numbers.
function head(unit) {
  const [, kind, count] = unit.match(/^(figure|worked)-(\d+)$/) ?? [];
  if (kind === "figure") return figures[count - 1].querySelector("figcaption");
  if (kind === "worked") return article.querySelectorAll("section.worked")[count - 1].querySelector("h3");
  if (unit === "opening") return article.querySelector(".caution") ?? article.querySelector(".lesson-head");
  return document.querySelector(`#misconception-${unit} .slip-name`) ?? document.getElementById(unit);
}

const moves = {
  number(index, text, value) {
    write(index, text, value);
    numbers[index].dataset.own = "";
  },
  figure(index, input) { figures[index].dataset.own = input; },
  stays(unit, why) { note("Here the lesson’s numbers stay. " + why, (line) => head(unit).after(line)); },
  summary(text) { said.textContent = text; },
};

// --- The switch -------------------------------------------------------------------------------------

function restore() {
  lessons.forEach(([text, value], index) => {
    if (!("own" in numbers[index].dataset)) return;
    write(index, text, value);
    delete numbers[index].dataset.own;
  });
  for (const figure of figures) delete figure.dataset.own;
  for (const line of article.querySelectorAll(".stays")) line.remove();
  said.textContent = "";
}

function show(mine) {
  const moved = figures.some((figure) => "own" in figure.dataset);
  restore();
  const set = read(SET);
  const recipes = globalThis.beforeTheBenchRecipes;
  if (mine && !set) {
    said.textContent = "This browser holds no set of yours any more, so the numbers are the lesson’s.";
  } else if (mine && JSON.parse(recipes).numbers.length !== numbers.length) {
    said.textContent = "The numbers of this lesson could not be matched, so none has changed. Load the page again.";
  } else if (mine) {
    for (const line of ownNumbers(recipes, set).split("\n")) {
      const [what, ...fields] = line.split("\t");
      moves[what]?.(...fields);
    }
    for (const question of article.querySelectorAll("section.predict")) {
      note("This question keeps the lesson’s set.", (line) => question.querySelector(".slip-name").after(line));
    }
  }
  place.dataset.shown = mine ? "mine" : "lesson";
  if (moved || figures.some((figure) => "own" in figure.dataset)) tellFigures();
}

// The lesson's own program draws its figures, and need not know why.
function tellFigures() {
  document.dispatchEvent(new Event("before-the-bench:figures"));
}

function made(name, properties, parent) {
  const element = Object.assign(document.createElement(name), properties);
  parent.append(element);
  return element;
}

function choice(fields, value, words, checked) {
  const label = made("label", {}, fields);
  const input = made("input", { type: "radio", name: "numbers", value, checked }, label);
  made("span", { textContent: words }, label);
  input.addEventListener("change", () => {
    const mine = value === "mine";
    remember(mine);
    guarded(() => show(mine));
  });
}

function build(mine) {
  made("link", { rel: "stylesheet", href: place.dataset.styles }, document.head);
  const fields = document.createElement("fieldset");
  made("legend", { textContent: "Numbers for " }, fields);
  choice(fields, "lesson", "the lesson’s set", !mine);
  choice(fields, "mine", "my set", mine);
  made("a", { href: place.dataset.mySet, textContent: "My set" }, fields);
  // A fieldset may not stand in a paragraph.
  const box = Object.assign(document.createElement("div"), { id: "numbers", className: "numbers" });
  Object.assign(box.dataset, place.dataset);
  box.append(fields);
  said = made("span", {}, box);
  said.setAttribute("role", "status");
  place.replaceWith(box);
  place = box;
}

// What goes wrong here leaves the lesson as it was written.
function guarded(act) {
  try {
    act();
  } catch (error) {
    restore();
    said.textContent = "The numbers could not be worked out for your set, so they are the lesson’s.";
    tellFigures();
    console.warn("The lesson’s numbers stay:", error);
  }
}

startWasm("numbers").then((program) => {
  ownNumbers = program.own_numbers;
  const mine = read(MINE) === "mine";
  build(mine);
  guarded(() => show(mine));
  // Another window may have changed or wiped the set.
  addEventListener("storage", ({ key }) => {
    if (key === SET && place.dataset.shown === "mine") guarded(() => show(true));
  });
}).catch((error) => {
  // A page that is being left loses its program: told a moment later, by a page that is still there.
  setTimeout(() => console.warn("The lesson’s numbers stay:", error), 200);
});
