// Brings lessons, course and first page alive. On failure the page stays what it is: text.

const later = (act) => new Promise(act);
const pause = (milliseconds) => later((resolve) => setTimeout(resolve, milliseconds));

// Words and figures come first: the program is asked for once they are painted. A page in
// the background is not painted, and need not wait for it.
const loaded = later((resolve) => {
  if (document.readyState === "complete") resolve();
  else addEventListener("load", resolve, { once: true });
});
const frame = () => later((resolve) => requestAnimationFrame(resolve));
const painted = async () => { await frame(); await frame(); };

// --- Problem families, each a file of its own --------------------------------------------------

// Those on the way, by their addresses.
const coming = new Map();

// The program asks for a family; it comes back by `familyCame`. One that is on the way is not
// asked for twice.
function fetchFamily(address) {
  if (coming.has(address)) return;
  const text = address.endsWith(".js") ? textOfScript(address) : textOfFile(address);
  const handedOver = text.then(
    (text) => handOver(address, text, ""),
    (error) => handOver(address, undefined, error.message),
  );
  coming.set(address, handedOver.finally(() => coming.delete(address)));
}

async function textOfFile(address) {
  const answer = await fetch(address).catch(() => { throw new Error("there is no signal"); });
  if (!answer.ok) throw new Error(`the site answers ${answer.status}`);
  return answer.text();
}

// A page opened from a file may fetch nothing, but may load a script.
const textOfScript = (address) => later((resolve, reject) => {
  const script = document.createElement("script");
  script.src = address;
  script.onload = () => resolve(script.familyText);
  script.onerror = () => reject(new Error("its file is not in this folder"));
  document.head.append(script);
});

// What the reader looks at stays where it is, whatever becomes of a problem above it.
function handOver(address, text, reason) {
  const problem = document.querySelector(`[data-family="${address}"]`);
  const place = () => problem?.getBoundingClientRect() ?? new DOMRect();
  const { top, bottom } = place();
  wasm_bindgen.familyCame(address, text, reason, top < innerHeight && bottom > 0);
  if (bottom < 0) scrollBy({ top: place().bottom - bottom, behavior: "instant" });
}

// What came just now is brought into view, from the head of one element to the foot of another: the
// head if not all of it fits. A keyboard on the screen hides the page beneath it.
function bringIntoView(from, to) {
  const { offsetTop, height } = window.visualViewport ?? { offsetTop: 0, height: innerHeight };
  const above = from.getBoundingClientRect().top - offsetTop - 16;
  const below = to.getBoundingClientRect().bottom - offsetTop - height + 16;
  const still = matchMedia("(prefers-reduced-motion: reduce)").matches;
  scrollBy({ top: Math.min(above, Math.max(below, 0)), behavior: still ? "instant" : "smooth" });
}

// Each problem is told of when the reader is two screens away from it. Those that are as near
// from the start are waited for.
async function watchProblems() {
  const problems = document.querySelectorAll("[data-family]");
  if (problems.length === 0) return;
  const seen = later((resolve) => {
    const near = new IntersectionObserver((entries) => {
      for (const entry of entries) if (entry.isIntersecting) wasm_bindgen.near(entry.target);
      resolve();
    }, { rootMargin: "200% 0px" });
    for (const problem of problems) near.observe(problem);
  });
  await Promise.race([seen, pause(300)]);
  await Promise.all(coming.values());
}

// One part at a time, so that a press or a scroll in between is answered at once.
async function bringAlive() {
  await loaded;
  await Promise.race([painted(), pause(300)]);
  const study = await startWasm("study");
  study.start();
  while (study.next()) await pause(0);
  await watchProblems();
  document.body.dataset.ready = "";
  ownNumbers();
}

// Who has a set of their own can have a lesson's numbers for it: that program is fetched for them alone.
function ownNumbers() {
  const place = document.getElementById("numbers");
  let set = null;
  try { set = localStorage.getItem("before-the-bench:set"); } catch { /* then there is none */ }
  if (!place || !set) return;
  for (const src of place.dataset.parts.split(" ")) {
    const script = Object.assign(document.createElement("script"), { src, async: false });
    script.dataset.wasm = place.dataset.wasm ?? "";
    document.head.append(script);
  }
}

// A page that is left while its program is on the way may lose it, and may hear of that before it
// hears that it is left. So the fault is told a moment later, by a page that is still there; one
// that was left mends it when the reader comes back to it as it was.
let leaving = false;
let failed = false;
let lost = false;
addEventListener("pagehide", () => { leaving = true; lost = failed; });
addEventListener("pageshow", () => {
  leaving = false;
  if (lost) location.reload();
});

bringAlive().catch(async (error) => {
  failed = true;
  lost = leaving;
  await pause(200);
  if (lost) return;
  failed = false;
  document.body.dataset.stopped = "";
  console.warn("The page stays as text:", error);
});
