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

// One part at a time, so that a press or a scroll in between is answered at once.
async function bringAlive() {
  await loaded;
  await Promise.race([painted(), pause(300)]);
  const study = await startWasm("study");
  study.start();
  while (study.next()) await pause(0);
  document.body.dataset.ready = "";
}

// A page that is left while its program is on the way may lose it: no fault to report, and
// one to mend when the reader comes back to the page as it was.
let leaving = false;
let lost = false;
addEventListener("pagehide", () => { leaving = true; });
addEventListener("pageshow", () => {
  leaving = false;
  if (lost) location.reload();
});

bringAlive().catch((error) => {
  lost = leaving;
  if (lost) return;
  document.body.dataset.stopped = "";
  console.warn("The page stays as text:", error);
});
