// The page of `cargo site bench problems`: joined behind the bindings, which define
// wasm_bindgen. It does what core/examples/problems_bench does, with the same seeds and
// turns, and leaves its rows in globalThis.timed. The clock ticks in tenths of a
// millisecond; a turn is some milliseconds long.

globalThis.timed = [];

const SEEDS = 100;
const TURNS = 5;
const LEVELS = ["level 1", "level 2", "level 3", "transfer form"];

// Seconds to draw one problem and mark its answers: the least of some turns.
function aProblem(family, level) {
  let least = Infinity;
  for (let turn = 0; turn < TURNS; turn += 1) {
    const started = performance.now();
    family.drawAndMark(level, SEEDS);
    least = Math.min(least, (performance.now() - started) / 1e3 / SEEDS);
  }
  return least;
}

async function all() {
  await wasm_bindgen({ module_or_path: "study.wasm" });
  const texts = await (await fetch("families.json")).json();
  const families = texts.map((text) => ({
    id: JSON.parse(text).family.id,
    timed: new wasm_bindgen.TimedFamily(text),
  }));
  let slowest = { what: "", seconds: 0 };
  for (const [place, name] of LEVELS.entries()) {
    let sum = 0;
    for (const family of families) {
      const seconds = aProblem(family.timed, place + 1);
      sum += seconds;
      if (seconds > slowest.seconds) {
        slowest = { what: `slowest: ${family.id}, ${name}`, seconds };
      }
      await new Promise((resolve) => setTimeout(resolve));
    }
    const what = `${name}, mean of ${families.length} families`;
    timed.push({ what, seconds: sum / families.length });
  }
  timed.push(slowest);
}

all().catch((error) => {
  globalThis.failed = String(error);
});
