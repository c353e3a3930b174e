// Brings lessons, course and first page alive. On failure the page stays what it is: text.
startWasm("study").then((study) => {
  study.start();
  document.body.dataset.ready = "";
}).catch((error) => {
  document.body.dataset.stopped = "";
  console.warn("The page stays as text:", error);
});
