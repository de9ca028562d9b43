// Opens a page from its file in a headless browser, asks it what a reader asks it, and says what it
// found. Arguments: the folder with playwright-core and axe-core, the browser, the page, a page of a
// study with hostile names. Ends with 1 if a rule is broken.
import {createRequire} from "node:module";
import {readFileSync} from "node:fs";
import {pathToFileURL} from "node:url";

const [tools, browserAt, demo, hostile] = process.argv.slice(2);
const require = createRequire(pathToFileURL(tools + "/"));
const {chromium} = require("playwright-core");
const axe = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");

let broken = 0;
const says = words => console.log("page: " + words);
const holds = (what, is, found = "") => {
  if (!is) broken += 1;
  says(what + (is ? ": fine" : ": BROKEN") + (found === "" ? "" : " (" + found + ")"));
};

const browser = await chromium.launch({
  executablePath: browserAt,
  args: ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
    "--disable-background-networking", "--disable-component-update", "--disable-sync",
    "--disable-dev-shm-usage"],
});

/** A page from its file without a connection, and all that it says or asks for. */
const opened = async (file, width = 1280) => {
  const context = await browser.newContext({viewport: {width, height: 900}});
  await context.setOffline(true);
  const page = await context.newPage();
  page.setDefaultTimeout(60_000);
  const address = pathToFileURL(file).href;
  const said = [];
  page.on("console", message => said.push("console " + message.type() + ": " + message.text()));
  page.on("pageerror", error => said.push("error: " + error.message));
  page.on("dialog", dialog => { said.push("dialog: " + dialog.message()); dialog.dismiss(); });
  page.on("request", request => {
    if (request.url().split("#")[0] !== address) said.push("request: " + request.url());
  });
  await page.goto(address, {waitUntil: "load"});
  return {page, said, close: () => context.close()};
};

const firstPicture = page => page.evaluate(() => new Promise(resolve => {
  const seen = () => performance.getEntriesByName("first-contentful-paint")[0];
  const again = () => seen() ? resolve(Math.round(seen().startTime)) : setTimeout(again, 50);
  again();
}));

const rules = async (page, where) => {
  await page.evaluate(axe);
  const found = await page.evaluate(() =>
    window.axe.run(document, {resultTypes: ["violations"]}).then(result =>
      result.violations.map(v => ({
        rule: v.id, help: v.help, count: v.nodes.length,
        at: v.nodes.slice(0, 3).map(n => n.target.join(" ") + "  " + n.html.slice(0, 120)),
      }))));
  holds("accessibility rules, " + where, found.length === 0, found.length === 0 ? "" : found.length + " broken");
  for (const rule of found) {
    says("  " + rule.rule + ": " + rule.count + " times; " + rule.help);
    rule.at.forEach(at => says("    " + at));
  }
};

const text = (page, id) => page.locator("#" + id).innerText();
const options = (page, id) => page.locator("#" + id + " option").allInnerTexts();
const firstColumn = page => page.locator("#all-table tbody th[scope=row]").allInnerTexts();

/** By keys alone where a reader may have no mouse. */
const asked = async page => {
  await page.locator("#ask-words").focus();
  await page.keyboard.type("main bus");
  const list = await options(page, "ask-list");
  holds("\"main bus\" finds failures", list.length > 0 && list.every(words => /main bus/i.test(words)),
    list.length + " of this candidate");
  await page.locator("#ask-list").selectOption({index: Math.max(0, list.findIndex(words => /short/i.test(words)))});
  await scrubbed(page);
  const first = await text(page, "ask-title");
  await page.locator("#ask-candidate").selectOption({index: 1});
  const other = await text(page, "ask-title");
  holds("another candidate is picked", first !== "" && other !== "" && first !== other, other);
};

const scrubbed = async page => {
  const drawing = () => page.locator("#ask-drawing svg").evaluate(svg => svg.outerHTML);
  const moments = 1 + Number(await page.locator("#ask-moment").getAttribute("max"));
  const drawings = new Set();
  const sentences = new Set();
  await page.locator("#ask-moment").focus();
  await page.keyboard.press("Home");
  for (let i = 0; i < moments; i++) {
    drawings.add(await drawing());
    sentences.add(await text(page, "ask-now"));
    await page.keyboard.press("ArrowRight");
  }
  const end = await page.locator("#ask-moment").inputValue();
  holds("moments are gone through by keys", sentences.size === moments && end === String(moments - 1),
    moments + " in " + await text(page, "ask-title"));
  holds("the drawing follows", drawings.size > 2, drawings.size + " states");
  holds("the plot is drawn", await page.locator("#ask-plot svg").count() === 1);
  const pilots = page.locator("#ask-pilot input");
  for (let i = 0; i < await pilots.count(); i++) await pilots.nth(i).check();
  holds("the pilot acts as planned, late or never", await pilots.count() === 3);
};

const tabled = async page => {
  await page.locator("#explore-all > summary").focus();
  await page.keyboard.press("Enter");
  const all = await firstColumn(page);
  const shown = await options(page, "all-outcome");
  await page.locator("#all-outcome").selectOption({index: 1});
  const few = await firstColumn(page);
  holds("the table is filtered", few.length < all.length, few.length + " of " + all.length + " with " + shown[1]);
  await page.locator("#all-outcome").selectOption({index: 0});
  const orders = await options(page, "all-order");
  const sorted = new Set();
  for (let i = 0; i < orders.length; i++) {
    await page.locator("#all-order").selectOption({index: i});
    sorted.add((await firstColumn(page)).join("\n"));
  }
  holds("the table is sorted", sorted.size === orders.length, orders.join(", "));
  await page.locator("#explore-two > summary").click();
  holds("two candidates stand side by side", await page.locator("#two-table tbody tr").count() > 0,
    await text(page, "two-count"));
};

const weighed = async page => {
  await page.locator("#explore-weigh > summary").click();
  const before = await text(page, "weigh-table");
  const slider = page.locator("#weigh-sliders input[type=range]").first();
  await slider.focus();
  await page.keyboard.press("End");
  const moved = await text(page, "weigh-table");
  holds("weights move the points", before !== moved, await text(page, "weigh-whose"));
  await page.locator("#weigh-own").click();
  holds("the study's own weights come back", await text(page, "weigh-table") === before);
};

const quiet = (what, said) => {
  holds(what + ": no console message, no request", said.length === 0, said.length === 0 ? "" : said.length);
  said.slice(0, 10).forEach(words => says("  " + words));
};

/** Nothing but tables and drawings that say so may be wider than what shows them. */
const fits = async (file, width) => {
  const {page, close} = await opened(file, width);
  const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  holds((file === demo ? "the demo" : "a page of long names") + " fits a window of " + width + " pixels", wide <= 0, wide > 0 ? wide + " too wide" : "");
  await close();
};

const demonstrated = async () => {
  const {page, said, close} = await opened(demo);
  const millis = await firstPicture(page);
  says("first picture after " + millis + " ms" + (millis < 1000 ? "" : ", more than the goal of 1000 ms"));
  await asked(page);
  await tabled(page);
  await weighed(page);
  quiet("the demo", said);
  await close();
  const untouched = await opened(demo);
  await rules(untouched.page, "the demo as it opens");
  await untouched.close();
};

const attacked = async () => {
  const {page, said, close} = await opened(hostile);
  const state = await page.evaluate(() => ({
    harmed: window.harmed === undefined ? "" : String(window.harmed),
    pictures: document.querySelectorAll("img, iframe, object, embed, base, link").length,
    scripts: document.scripts.length,
    handlers: [...document.querySelectorAll("*")].filter(e => [...e.attributes].some(a => a.name.startsWith("on"))).length,
    links: [...document.querySelectorAll("a[href]")].filter(a => !a.getAttribute("href").startsWith("#")).length,
    turning: /[\u061C\u200E\u200F\u202A-\u202E\u2066-\u2069]/.test(document.documentElement.outerHTML),
    shown: document.body.innerText.includes("<img src=x onerror="),
  }));
  holds("hostile names are shown as they are", state.shown);
  holds("hostile names make nothing",
    state.harmed === "" && state.pictures === 0 && state.scripts === 2 && state.handlers === 0
      && state.links === 0 && !state.turning, JSON.stringify(state));
  await page.locator("#ask-words").fill("main bus");
  await page.locator("#ask-list").selectOption({index: 0});
  await page.evaluate(() => document.querySelectorAll("details").forEach(d => { d.open = true; }));
  quiet("hostile names", said);
  await rules(page, "a small page with everything open");
  await close();
};

try {
  await demonstrated();
  await fits(demo, 1000);
  await fits(demo, 400);
  await fits(hostile, 400);
  await attacked();
} catch (error) {
  holds("the page could be gone through", false, error.message.split("\n")[0]);
} finally {
  await browser.close();
}
process.exit(broken === 0 ? 0 : 1);
