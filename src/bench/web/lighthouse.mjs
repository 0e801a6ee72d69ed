/* Lighthouse on every client page of the running demo, from a client's link to what can be done after signing; a table for docs/benchmarks.md.
   node lighthouse.mjs BASE LINK DAY/MONTH/YEAR NAME [RUNS]      with Chromium, and the npm packages lighthouse and playwright-core found from here.
   Lighthouse's own preset for phones: slow 4G and a slow processor, simulated. Each look begins with an empty cache; the median of RUNS counts. */
import fs from "node:fs";
import os from "node:os";
import path from "node:path";
import lighthouse from "lighthouse";
import { chromium } from "playwright-core";

const [base, link, born, name, runs = "3"] = process.argv.slice(2);
const PORT = 9333;
const KINDS = ["performance", "accessibility", "best-practices"];
const AFTERWARDS = ["reaction", "photos", "complaint", "take-back", "notice", "read-back"].map((at) => `${base}/answers/${at}`);

const context = await chromium.launchPersistentContext(fs.mkdtempSync(path.join(os.tmpdir(), "lighthouse-")), {
  executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium", viewport: { width: 390, height: 844 },
  args: ["--no-sandbox", "--disable-gpu", "--no-first-run", "--disable-sync", "--disable-background-networking",
    "--disable-component-update", `--remote-debugging-port=${PORT}`] });
const page = await context.newPage();
const cache = await context.newCDPSession(page);
const looked = new Set();

const median = (values) => {
  const sorted = values.filter(Number.isFinite).sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? NaN;
};

const look = async () => {
  const at = page.url().replace(base, "").replace(/^\/i\/[^/]+/, "/i/…").split("#")[0];
  if (looked.has(at)) return;
  looked.add(at);
  const results = [];
  for (let i = 0; i < Number(runs); i++) {
    await cache.send("Network.clearBrowserCache");
    const { lhr } = await lighthouse(page.url(), { port: PORT, disableStorageReset: true, onlyCategories: KINDS, logLevel: "error" });
    results.push(lhr);
  }
  const score = (kind) => Math.round(100 * median(results.map((r) => r.categories[kind].score)));
  const audit = (id) => median(results.map((r) => r.audits[id]?.numericValue ?? NaN));
  console.log(`| ${at} | ${KINDS.map(score).join(" | ")} | ${(audit("largest-contentful-paint") / 1000).toFixed(2)} | `
    + `${audit("cumulative-layout-shift").toFixed(3)} | ${Math.round(audit("total-blocking-time"))} | ${(audit("total-byte-weight") / 1024).toFixed(1)} |`);
};

/* No to everything, runs in the page. */
const answer = () => {
  const boxes = [...document.querySelectorAll("main input[type=radio], main input[type=checkbox]")];
  const list = document.querySelector("main select[name$='.what'], main input[name$='.name']");
  for (const name of new Set(boxes.map((box) => box.name))) {
    const group = boxes.filter((box) => box.name === name);
    const one = (...codes) => codes.map((code) => group.find((box) => box.value === code)).find(Boolean);
    if (name.endsWith(".precision") && one("dont-know")) one("dont-know").click();
    else if (!group.some((box) => box.checked) && (!list || one("none")) && (group.length > 1 || !one("dont-know"))) (one("none", "no", "never", "yes", "typed") ?? group[0]).click();
  }
  for (const box of boxes.filter((each) => each.name === "agree" && !each.checked)) box.click();
  document.querySelector("main input[type=radio][value=typed]")?.click();
  for (const field of document.querySelectorAll("main input[inputmode=decimal]")) field.value = "40";
};

const press = async () => {
  await Promise.all([page.waitForNavigation({ timeout: 90000 }), page.locator("main .button.main").last().click()]);
};

await page.goto(link);
await look();
const [day, month, year] = born.split("/");
await page.fill("#day", day);
await page.selectOption("#month", month);
await page.fill("#year", year);
await press();
for (let i = 0; i < 40 && !page.url().endsWith("/answers/done"); i++) {
  await look();
  await page.evaluate(answer);
  if (await page.locator("main input[name=typed]").count()) await page.fill("main input[name=typed]", name);
  await press();
}
await look();
for (const address of AFTERWARDS) {
  await page.goto(address);
  await look();
}
await context.close();
