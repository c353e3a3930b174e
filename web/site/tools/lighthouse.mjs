// Lighthouse over some pages with one browser: node lighthouse.mjs URL… prints one JSON
// object a page, {url, scores: {performance, accessibility, "best-practices", seo}, missed}.
// Where a page does not reach 100, `missed` names the audits that cost it.
import lighthouse from "lighthouse";
import {launch} from "chrome-launcher";

const flags = ["--headless=new", "--no-sandbox", "--disable-gpu", "--disable-quic",
  "--disable-dev-shm-usage", "--no-first-run", "--disable-background-networking",
  "--disable-component-update", "--disable-sync"];
const chrome = await launch({chromePath: process.env.CHROMIUM, chromeFlags: flags});

function missed(report) {
  const names = [];
  for (const category of Object.values(report.categories)) {
    for (const {id, weight} of category.auditRefs) {
      const {score} = report.audits[id];
      if (weight > 0 && score !== null && score < 1) names.push(`${id} ${score}`);
    }
  }
  return names;
}

try {
  for (const url of process.argv.slice(2)) {
    const {lhr} = await lighthouse(url, {port: chrome.port, output: "json", logLevel: "error"});
    const scores = Object.fromEntries(Object.values(lhr.categories)
      .map(({id, score}) => [id, Math.round(score * 100)]));
    console.log(JSON.stringify({url, scores, missed: missed(lhr)}));
  }
} finally {
  chrome.kill();
}
