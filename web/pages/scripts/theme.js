// Puts the reader's chosen theme on the page before it is painted. Runs in the head, so it stays tiny.
try {
  const theme = localStorage.getItem("before-the-bench:theme");
  if (theme === "light" || theme === "dark") document.documentElement.dataset.theme = theme;
} catch {
  // Storage is switched off: the device's own theme stands.
}
