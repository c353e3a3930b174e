// Renders the PNG sizes from icon.svg and maskable.svg in the folder above:
//   npm install --no-save @resvg/resvg-js@2.6.2 && node render.mjs
// The PNGs are committed, so building the site does not need this.
import { readFileSync, writeFileSync } from "node:fs";
import { Resvg } from "@resvg/resvg-js";

const sizes = [
  ["icon.svg", "icon-32.png", 32],
  ["icon.svg", "icon-192.png", 192],
  ["icon.svg", "icon-512.png", 512],
  ["maskable.svg", "icon-180.png", 180], // Apple rounds the corners itself and wants no transparency
  ["maskable.svg", "maskable-512.png", 512],
];
const here = (name) => new URL("../" + name, import.meta.url);
for (const [from, to, width] of sizes) {
  const drawn = new Resvg(readFileSync(here(from), "utf8"), { fitTo: { mode: "width", value: width } });
  writeFileSync(here(to), drawn.render().asPng());
  console.log(to);
}
