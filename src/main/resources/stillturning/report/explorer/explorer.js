"use strict";
{
  const data = JSON.parse(document.getElementById("explore-data").textContent);
  const byId = id => document.getElementById(id);
  const said = number => data.texts[number];
  const SVG = "http://www.w3.org/2000/svg";
  const PLANNED = 0;

  const made = (tag, words, style) => {
    const one = document.createElement(tag);
    if (words !== undefined) one.textContent = words;
    if (style) one.className = style;
    return one;
  };
  const drawn = (tag, attributes, words) => {
    const one = document.createElementNS(SVG, tag);
    for (const [name, value] of Object.entries(attributes)) one.setAttribute(name, value);
    if (words !== undefined) one.textContent = words;
    return one;
  };
  const option = (value, words) => {
    const one = made("option", words);
    one.value = value;
    return one;
  };
  const fill = (select, words) => select.replaceChildren(...words.map((w, i) => option(i, w)));
  const plain = words => words.toLowerCase().replace(/[-_:.,]+/g, " ").replace(/\s+/g, " ").trim();

  const failures = data.failures.map(([kind, name, label, cells], number) => ({
    number, kind: said(kind), name, label, cells,
    hay: plain(label + " " + name + " " + said(kind))
  }));
  const outcomes = data.outcomes.map(([sign, word, style, meaning]) => ({sign, word, style, meaning}));
  const titles = data.candidates.map(candidate => candidate.title);
  const verdict = (failure, candidate) => failures[failure].cells[candidate];
  const outcome = (failure, candidate) => {
    const cell = verdict(failure, candidate);
    return cell ? cell[0] : outcomes.length;
  };
  const told = (cell, pilot) => cell[2 + pilot] || cell[2 + PLANNED];

  /* ---- two failures ---- */

  const pairSets = new Map();
  const setOf = text => {
    const all = new Set();
    for (const row of text === "" ? [] : text.split(";")) {
      const [one, runs] = row.split(":");
      for (const run of runs.split(",")) {
        const [from, to] = run.split("-").map(Number);
        for (let other = from; other <= (to === undefined ? from : to); other += 1) all.add(one + " " + other);
      }
    }
    return all;
  };
  const pairsOf = candidate => {
    const own = data.candidates[candidate].pairs;
    if (!own) return null;
    if (!pairSets.has(candidate)) {
      const events = [];
      for (let i = 0; i < own.events.length; i += 2) {
        const [name, label] = [said(own.events[i]), said(own.events[i + 1])];
        events.push({number: i / 2, name, label, hay: plain(label + " " + name)});
      }
      pairSets.set(candidate, {
        events, byName: new Map(events.map(event => [event.name, event])),
        alone: new Set(own.alone), aloneUntold: new Set(own.aloneUntold), told: own.told,
        ends: setOf(own.ends), healed: setOf(own.healed), untold: setOf(own.untold), never: setOf(own.never)
      });
    }
    return pairSets.get(candidate);
  };

  /* sign, words and, if it is on the page, the verdict with its story */
  const LANDED = "The engine runs on until the aircraft can land";
  const NO_STORY = "The story of these two is not on this page, which has those of the likeliest pairs that end the engine; "
    + "ask the program for it: break, with --failure once for each.";
  const together = (pairs, one, other) => {
    const key = Math.min(one.number, other.number) + " " + Math.max(one.number, other.number);
    const ends = outcomes[0];
    const means = (order, mark, words) => ({order, mark, words: words + " " + NO_STORY, cell: null});
    if (one === other) return {order: 9, mark: null, words: "That is the same failure twice.", cell: null};
    if (pairs.never.has(key)) return {order: 8, mark: null, words: "These two cannot be at once: they put one switch into two positions.", cell: null};
    if (pairs.told[key]) return {order: 0, mark: outcomes[pairs.told[key][0]], words: "Each of the two alone leaves the engine running until the aircraft can land; together they end it.", cell: pairs.told[key]};
    if (pairs.ends.has(key)) return means(1, ends, "Each of the two alone leaves the engine running until the aircraft can land; together they end it.");
    if (pairs.healed.has(key)) return means(4, null, LANDED + ", although one of the two alone ends it: the other undoes that.");
    const sole = [one, other].filter(event => pairs.alone.has(event.number)).map(event => event.label);
    if (sole.length > 0) return means(3, ends, "Already alone it ends the engine: " + sole.join("; and: ") + ".");
    if (pairs.untold.has(key) || [one, other].some(event => pairs.aloneUntold.has(event.number))) {
      return means(2, null, "Nobody can say: the computation of these two failed.");
    }
    return means(5, null, LANDED + ", with the pilot as planned.");
  };

  const firstEvent = () => {
    const pairs = pairsOf(shown.candidate);
    return pairs && pairs.byName.get(failures[shown.failure].name);
  };
  const secondEvent = () => {
    const pairs = pairsOf(shown.candidate);
    return pairs && shown.second !== "" ? pairs.byName.get(shown.second) : undefined;
  };

  const listSeconds = () => {
    const pairs = pairsOf(shown.candidate);
    const first = firstEvent();
    byId("ask-both").hidden = !first;
    if (!first || (shown.second !== "" && !secondEvent())) shown.second = "";
    if (!first) return;
    const wanted = plain(byId("ask-more").value).split(" ");
    const found = pairs.events
      .filter(event => event !== first && event.name !== "" && wanted.every(word => event.hay.includes(word)))
      .map(event => ({event, come: together(pairs, first, event)}))
      .sort((a, b) => a.come.order - b.come.order || a.event.number - b.event.number);
    byId("ask-second").replaceChildren(option("", "nothing else"), ...found.map(({event, come}) =>
      option(event.name, (come.mark ? come.mark.sign : come.order === 2 ? "?" : come.order === 8 ? "\u2013" : "\u00b7")
        + " " + event.label + (come.cell ? " (told here)" : ""))));
    byId("ask-second").value = shown.second;
    const ending = found.filter(({come}) => come.order <= 1).length;
    byId("ask-second-count").textContent = found.length + " match; with " + ending + " of them the engine ends only because of both";
  };

  /* ---- one failure ---- */

  const shown = {second: "", failure: 0, candidate: 0, pilot: PLANNED, moment: 0, moments: [], drawing: null};

  const matching = words => {
    const phrase = plain(words);
    const wanted = phrase.split(" ");
    const order = hay => hay.startsWith(phrase) ? 0 : hay.includes(phrase) ? 1 : 2;
    return failures
      .filter(failure => wanted.every(word => failure.hay.includes(word)))
      .sort((one, other) => order(one.hay) - order(other.hay) || one.number - other.number);
  };

  const listFailures = () => {
    const found = matching(byId("ask-words").value);
    const here = found.filter(failure => verdict(failure.number, shown.candidate));
    byId("ask-list").replaceChildren(...here.map(failure =>
      option(failure.number,
        outcomes[outcome(failure.number, shown.candidate)].sign + " " + failure.label)));
    byId("ask-list").value = shown.failure;
    const elsewhere = found.length - here.length;
    byId("ask-count").textContent = here.length + (here.length === 1 ? " failure matches" : " failures match")
      + (elsewhere > 0 ? "; " + elsewhere + " more in other candidates only" : "");
    return here;
  };

  const momentsOf = story => {
    const moments = [{seconds: 0, changes: "", lines: [["", "before the failure: nothing is wrong", 0]]}];
    let number = 0;
    for (const [seconds, changes, ...rest] of story[1]) {
      const lines = [];
      for (let i = 0; i < rest.length; i += 3) {
        number += 1;
        lines.push([said(rest[i]), said(rest[i + 1]), rest[i + 2], number]);
      }
      moments.push({seconds, changes: said(changes), lines});
    }
    return moments;
  };

  const sentence = line => (line[3] ? line[3] + ". " : "") + line[1]
    + (line[2] ? " (because of " + line[2] + ")" : "");

  const showFailure = () => {
    const failure = failures[shown.failure];
    const candidate = data.candidates[shown.candidate];
    const alone = verdict(shown.failure, shown.candidate);
    listSeconds();
    const second = secondEvent();
    const both = second ? together(pairsOf(shown.candidate), firstEvent(), second) : null;
    const cell = both ? both.cell : alone;
    byId("ask-title").textContent = failure.label + (second ? ", and " + second.label : "") + ", in: " + candidate.title;
    document.querySelectorAll(".of-story").forEach(one => { one.hidden = !cell; });
    byId("ask-together").hidden = !both;
    byId("ask-together").textContent = both ? both.words : "";
    if (both && !cell) {
      byId("ask-outcome").textContent = both.mark ? both.mark.sign + " " + both.mark.word : "";
      byId("ask-outcome").className = both.mark ? "mark " + both.mark.style : "";
      return;
    }
    if (!cell) {
      byId("ask-outcome").textContent = "This candidate has no such part.";
      byId("ask-outcome").className = "mark";
      return;
    }
    const flown = told(cell, shown.pilot);
    const mark = outcomes[flown[0]];
    byId("ask-outcome").textContent = mark.sign + " " + mark.word;
    byId("ask-outcome").className = "mark " + mark.style;
    byId("ask-same").hidden = cell[2 + shown.pilot] !== 0;
    const facts = byId("ask-facts");
    facts.replaceChildren();
    for (let i = 2; i < flown.length; i += 2) {
      const row = made("div");
      row.append(made("dt", said(flown[i])), made("dd", said(flown[i + 1])));
      facts.append(row);
    }
    shown.story = candidate.stories[flown[1]];
    shown.moments = momentsOf(shown.story);
    byId("ask-moments").replaceChildren(...shown.moments.map((moment, number) => {
      const row = made("div");
      row.setAttribute("role", "option");
      row.id = "ask-moment-" + number;
      row.append(made("span", moment.lines[0][0], "time"));
      const words = made("span", undefined, "words");
      moment.lines.forEach(line => words.append(made("span", sentence(line))));
      row.append(words);
      row.addEventListener("click", () => showMoment(number));
      return row;
    }));
    byId("ask-moment").max = shown.moments.length - 1;
    showPlot();
    showMoment(Math.min(1, shown.moments.length - 1));
  };

  /* ---- the drawing ---- */

  const BADGES = {
    d: "M-3.6 0A3.6 3.6 0 1 0 3.6 0A3.6 3.6 0 1 0 -3.6 0M-2.6 2.6L2.6 -2.6",
    s: "M-4 -3.6L0 4L4 -3.6Z",
    o: "M-4 3.6L0 -4L4 3.6Z",
    b: "M-3.6 -3.6L3.6 -3.6L3.6 3.6L-3.6 3.6Z M-1 0L1 0",
    f: "M-4 -4L4 4M-4 4L4 -4"
  };

  const layDrawing = () => {
    const candidate = data.candidates[shown.candidate];
    if (shown.drawing && shown.drawing.of === shown.candidate) return shown.drawing;
    const picture = byId(candidate.drawing).cloneNode(true);
    picture.removeAttribute("id");
    picture.removeAttribute("aria-labelledby");
    picture.querySelectorAll("svg>title,svg>desc,svg>style").forEach(one => one.remove());
    picture.querySelectorAll("[id]").forEach(one => one.removeAttribute("id"));
    picture.classList.add("asked");
    byId("ask-drawing").replaceChildren(picture);
    picture.querySelectorAll("path").forEach(path => {
      const group = path.parentElement.getAttribute("data-part") || "";
      const first = path === path.parentElement.querySelector("path");
      const along = group.startsWith("line ") || first;
      const solid = getComputedStyle(path).stroke === "none";
      path.classList.add(solid ? "solid" : along ? "stroke" : "glyph");
    });
    const keys = [...candidate.symbols];
    for (let line = 0; line < candidate.lines; line += 1) keys.push("line " + line);
    const groups = new Map();
    picture.querySelectorAll("[data-part]").forEach(group => {
      const key = group.getAttribute("data-part");
      groups.set(key, [...(groups.get(key) || []), group]);
    });
    const places = keys.map(key => (groups.get(key) || []).map(group => ({
      group, badge: badgeOf(group), turned: turnedOf(group, candidate.contacts[key])
    })));
    shown.drawing = {of: shown.candidate, picture, places};
    return shown.drawing;
  };

  /* left of the first words of a symbol, or in the middle of a line */
  const LETTERS = 2;
  const badgeOf = group => {
    const badge = drawn("path", {class: "badge"});
    const text = [...group.querySelectorAll("text")].find(one => one.textContent.length > LETTERS);
    const path = group.querySelector("path");
    let at = {x: 0, y: 0};
    if (!group.getAttribute("data-part").startsWith("line ") && text) {
      const box = text.getBBox();
      at = {x: box.x - 6.5, y: box.y + box.height / 2};
    } else if (path) {
      at = path.getPointAtLength(path.getTotalLength() / 2);
    }
    badge.setAttribute("transform", "translate(" + at.x + " " + at.y + ")");
    group.append(badge);
    return badge;
  };

  /* strokes that a symbol loses and gains when its contacts stand otherwise */
  const turnedOf = (group, exchange) => {
    if (!exchange) return null;
    const paths = [...group.children].filter(one => one.tagName === "path" && !one.classList.contains("badge"));
    const gone = exchange[0].map(number => paths[number]);
    const come = [];
    for (let i = 0; i < exchange[1].length; i += 3) {
      const [d, inside, width] = exchange[1].slice(i, i + 3);
      const path = drawn("path", {d, fill: inside, class: width > 0 ? "glyph" : "solid"});
      if (width > 0) {
        path.setAttribute("stroke", "#000000");
        path.setAttribute("stroke-width", width);
      }
      path.style.display = "none";
      group.append(path);
      come.push(path);
    }
    return {gone, come};
  };

  const lookAt = moment => {
    const letters = data.candidates[shown.candidate].before.split("");
    for (let i = 1; i <= moment; i += 1) {
      for (const [, letter, runs] of shown.moments[i].changes.matchAll(/([a-zA-Z])([\d,-]+)/g)) {
        for (const run of runs.split(",")) {
          const [from, to] = run.split("-").map(Number);
          letters.fill(letter, from, (to === undefined ? from : to) + 1);
        }
      }
    }
    return letters;
  };

  const showDrawing = () => {
    const drawing = layDrawing();
    lookAt(shown.moment).forEach((letter, number) => {
      const state = letter.toLowerCase();
      for (const {group, badge, turned} of drawing.places[number]) {
        group.setAttribute("class", "is-" + state);
        const isLine = group.getAttribute("data-part").startsWith("line ");
        badge.setAttribute("d", isLine && state !== "f" ? "" : BADGES[state] || "");
        if (turned) {
          turned.gone.forEach(path => { path.style.display = letter === state ? "" : "none"; });
          turned.come.forEach(path => { path.style.display = letter === state ? "none" : ""; });
        }
      }
    });
    drawing.picture.setAttribute("aria-label", "One-line diagram of " + titles[shown.candidate]
      + " at the chosen moment");
  };

  /* the names of what does not look as usual, state by state */
  const NAMED = 6;
  const inWords = () => {
    const names = {};
    lookAt(shown.moment).slice(0, data.candidates[shown.candidate].symbols.length).forEach((letter, number) => {
      const title = shown.drawing.places[number].map(({group}) => group.querySelector("title"))[0];
      const state = letter.toLowerCase();
      if (title && state !== "l" && state !== "p") {
        names[state] = (names[state] || new Set()).add(title.textContent.split(" · ")[0].replace(/-/g, " "));
      }
    });
    return Object.entries(names).map(([state, all]) => {
      const some = [...all].slice(0, NAMED).join(", ");
      return data.states[state] + ": " + some + (all.size > NAMED ? " and " + (all.size - NAMED) + " more" : "");
    }).join("; ");
  };

  /* ---- the plot ---- */

  const WIDE = 1000;
  const LEFT = 150;
  const HIGH = 150;
  const KNEE = 0.01;
  const TICKS = [[0.01, "10 ms"], [0.1, "0.1 s"], [1, "1 s"], [10, "10 s"], [60, "1 min"],
    [600, "10 min"], [3600, "1 h"], [21600, "6 h"], [43200, "12 h"]];
  const place = seconds => LEFT + (WIDE - LEFT - 10)
    * Math.log10(1 + seconds / KNEE) / Math.log10(1 + shown.story[0] / KNEE);
  const pairs = text => text === "" ? [] : text.split(",").map(pair => {
    const space = pair.indexOf(" ");
    return [Number(pair.slice(0, space)), pair.slice(space + 1)];
  });

  const seriesOf = graph => {
    const all = [];
    for (let i = 0; i < shown.story[2].length; i += 3) {
      if (shown.story[2][i] === graph) {
        all.push({
          name: said(shown.story[2][i + 1]),
          samples: pairs(said(shown.story[2][i + 2])).map(([t, v]) => [t, Number(v)])
        });
      }
    }
    return all;
  };

  const valueAt = (samples, seconds) => {
    let before = samples[0];
    for (const sample of samples) {
      if (sample[0] > seconds) {
        const span = sample[0] - before[0];
        return span > 0 ? before[1] + (sample[1] - before[1]) * (seconds - before[0]) / span : sample[1];
      }
      before = sample;
    }
    return before ? before[1] : NaN;
  };

  const curve = (samples, y) => {
    const times = samples.map(sample => sample[0]);
    for (let x = LEFT; x <= WIDE - 10; x += 4) {
      times.push(KNEE * (Math.pow(1 + shown.story[0] / KNEE, (x - LEFT) / (WIDE - LEFT - 10)) - 1));
    }
    const points = samples.map(([t, v], i) => [t, i, v]);
    times.slice(samples.length).forEach(t => points.push([t, Infinity, valueAt(samples, t)]));
    points.sort((one, other) => one[0] - other[0] || one[1] - other[1]);
    return points.filter(point => point[0] <= shown.story[0])
      .map(([t, , v]) => place(t).toFixed(1) + "," + y(v).toFixed(1)).join(" ");
  };

  const panel = (graph, top, picture, unit) => {
    const series = seriesOf(graph);
    const values = series.flatMap(one => one.samples.map(sample => sample[1]));
    const low = graph === 1 ? 0 : Math.min(0, ...values);
    const high = graph === 1 ? 100 : Math.max(1, ...values) * 1.05;
    const y = v => top + HIGH - HIGH * (v - low) / (high - low);
    const step = [1, 2, 5, 10, 20, 50].find(size => (high - low) / size <= 6) || 100;
    for (let v = Math.ceil(low / step) * step; v <= high; v += step) {
      picture.append(
        drawn("line", {class: "net", x1: LEFT, x2: WIDE - 10, y1: y(v), y2: y(v)}),
        drawn("text", {x: LEFT - 6, y: y(v) + 4, "text-anchor": "end"}, v + " " + unit));
    }
    series.forEach((one, i) => picture.append(
      drawn("polyline", {class: "curve c" + i % 6, points: curve(one.samples, y)})));
  };

  const bars = (top, picture) => {
    let y = top;
    for (let i = 0; i < shown.story[3].length; i += 2) {
      const spans = pairs(said(shown.story[3][i + 1]));
      picture.append(drawn("text", {x: LEFT - 6, y: y + 12, "text-anchor": "end"}, said(shown.story[3][i])));
      spans.forEach(([from, state], n) => {
        const to = n + 1 < spans.length ? spans[n + 1][0] : shown.story[0];
        const wide = place(to) - place(from);
        const bar = drawn("rect", {class: "bar-" + state.replace(/\W/g, "-"), x: place(from), y, width: Math.max(0.5, wide), height: 15});
        bar.append(drawn("title", {}, state));
        picture.append(bar);
        if (wide > 8 + 7 * state.length) {
          picture.append(drawn("text", {class: "in-" + state.replace(/\W/g, "-"), x: place(from) + 4, y: y + 12}, state));
        }
      });
      y += 19;
    }
    return y;
  };

  const showPlot = () => {
    const charges = seriesOf(1).length > 0;
    const below = 26 + HIGH + (charges ? HIGH + 16 : 0);
    const high = below + 24 + 19 * shown.story[3].length / 2;
    const picture = drawn("svg", {viewBox: "0 0 " + WIDE + " " + high, role: "img",
      "aria-label": "Voltages and charges over time; the moments beside it say what happens"});
    let last = LEFT - 40;
    [[0, "0"], ...TICKS].filter(([t]) => t <= shown.story[0]).forEach(([t, words]) => {
      const x = place(t);
      if (x - last > 42) {
        picture.append(drawn("line", {class: "net", x1: x, x2: x, y1: 20, y2: high - 2}),
          drawn("text", {x, y: 13, "text-anchor": "middle"}, words));
        last = x;
      }
    });
    panel(0, 22, picture, "V");
    if (charges) panel(1, 22 + HIGH + 16, picture, "%");
    bars(below + 12, picture);
    const cursor = drawn("line", {class: "cursor", y1: 18, y2: high});
    picture.append(cursor);
    byId("ask-plot").replaceChildren(picture);
    shown.cursor = cursor;
  };

  const showValues = () => {
    const seconds = shown.moments[shown.moment].seconds;
    const rows = [0, 1].flatMap(graph => seriesOf(graph).map((one, i) => {
      const row = made("li");
      const key = drawn("svg", {width: 34, height: 10, "aria-hidden": "true"});
      key.append(drawn("line", {class: "curve c" + i % 6, x1: 0, x2: 34, y1: 5, y2: 5}));
      const value = shown.moment === 0 ? one.samples[0][1] : valueAt(one.samples, seconds);
      row.append(key, " " + one.name + " " + value.toFixed(graph === 0 ? 1 : 0) + (graph === 0 ? " V" : " %"));
      return row;
    }));
    byId("ask-values").replaceChildren(...rows);
    const x = place(seconds);
    shown.cursor.setAttribute("x1", x);
    shown.cursor.setAttribute("x2", x);
  };

  /* ---- moments ---- */

  const showMoment = number => {
    shown.moment = Math.max(0, Math.min(shown.moments.length - 1, number));
    const moment = shown.moments[shown.moment];
    const list = byId("ask-moments");
    [...list.children].forEach((row, i) => row.setAttribute("aria-selected", i === shown.moment));
    const row = list.children[shown.moment];
    list.setAttribute("aria-activedescendant", row.id);
    list.scrollTop = row.offsetTop - list.offsetTop - list.clientHeight / 3;
    const slider = byId("ask-moment");
    slider.value = shown.moment;
    const words = moment.lines.map(sentence).join(". ") + ".";
    const time = moment.lines[0][0];
    const when = time.startsWith("+") ? time.slice(1) + " later: " : time ? "At " + time + ": " : "";
    slider.setAttribute("aria-valuetext", when + words);
    byId("ask-back").disabled = shown.moment === 0;
    byId("ask-on").disabled = shown.moment === shown.moments.length - 1;
    showDrawing();
    showValues();
    byId("ask-now").textContent = when + words + " On the drawing: " + (inWords() || "everything live") + ".";
  };

  const choose = (failure, candidate) => {
    shown.failure = failure;
    shown.candidate = candidate;
    byId("ask-candidate").value = candidate;
    listFailures();
    showFailure();
  };

  fill(byId("ask-candidate"), titles);
  data.pilots.forEach((words, number) => {
    const radio = made("input");
    Object.assign(radio, {type: "radio", name: "ask-pilot", id: "ask-pilot-" + number, value: number, checked: number === PLANNED});
    radio.addEventListener("change", () => { shown.pilot = number; showFailure(); });
    const label = made("label", words);
    label.htmlFor = radio.id;
    byId("ask-pilot").append(radio, label);
  });
  Object.entries(BADGES).forEach(([letter, d]) => {
    const item = made("li");
    const key = drawn("svg", {class: "asked", width: 50, height: 12, viewBox: "0 -6 50 12", "aria-hidden": "true"});
    const group = drawn("g", {class: "is-" + letter});
    group.append(drawn("path", {class: "badge", d, transform: "translate(6 0)"}),
      drawn("path", {class: "stroke", d: "M14 0L50 0"}));
    key.append(group);
    item.append(key, " " + data.states[letter]);
    byId("ask-states").append(item);
  });
  byId("ask-words").addEventListener("input", () => {
    const here = listFailures();
    if (here.length > 0 && !here.some(failure => failure.number === shown.failure)) {
      choose(here[0].number, shown.candidate);
    }
  });
  byId("ask-list").addEventListener("change", event => choose(Number(event.target.value), shown.candidate));
  byId("ask-more").addEventListener("input", listSeconds);
  byId("ask-second").addEventListener("change", event => { shown.second = event.target.value; showFailure(); });
  byId("ask-candidate").addEventListener("change", event => choose(shown.failure, Number(event.target.value)));
  byId("ask-back").addEventListener("click", () => showMoment(shown.moment - 1));
  byId("ask-on").addEventListener("click", () => showMoment(shown.moment + 1));
  byId("ask-moment").addEventListener("input", event => showMoment(Number(event.target.value)));
  byId("ask-moments").addEventListener("keydown", event => {
    const steps = {ArrowDown: 1, ArrowRight: 1, ArrowUp: -1, ArrowLeft: -1, Home: -Infinity, End: Infinity};
    if (event.key in steps) {
      event.preventDefault();
      showMoment(shown.moment + steps[event.key]);
    }
  });

  /* ---- all failures, all candidates ---- */

  const cellWords = (failure, candidate) => {
    const cell = verdict(failure, candidate);
    if (!cell) return "";
    const mark = outcomes[cell[0]];
    return mark.sign + " " + mark.word + (said(cell[1]) ? " " + said(cell[1]) : "");
  };
  const cellOf = (failure, candidate) => {
    const cell = made("td", cellWords(failure, candidate));
    if (verdict(failure, candidate)) cell.className = outcomes[outcome(failure, candidate)].style;
    cell.dataset.candidate = candidate;
    return cell;
  };
  const headOf = words => {
    const row = made("tr");
    words.forEach(one => {
      const head = made("th", one);
      head.scope = "col";
      row.append(head);
    });
    const head = made("thead");
    head.append(row);
    return head;
  };
  const rowHead = words => {
    const head = made("th", words);
    head.scope = "row";
    return head;
  };
  const toStory = (failure, candidate) => {
    byId("ask-words").value = "";
    shown.second = "";
    choose(failure, candidate);
    byId("ask-title").focus();
  };

  /* one stop of the tab key for a whole table; arrow keys move inside, Enter opens the story */
  const walkable = table => {
    const move = (from, down, along) => {
      const rows = [...table.tBodies[0].rows];
      const row = rows[rows.indexOf(from.parentElement) + down];
      const cell = row && row.cells[from.cellIndex + along];
      if (cell && cell.tagName === "TD") {
        from.tabIndex = -1;
        cell.tabIndex = 0;
        cell.focus();
      }
    };
    const open = cell => {
      if (cell && cell.textContent) {
        toStory(Number(cell.parentElement.dataset.failure), Number(cell.dataset.candidate));
      }
    };
    const steps = {ArrowDown: [1, 0], ArrowUp: [-1, 0], ArrowRight: [0, 1], ArrowLeft: [0, -1]};
    table.addEventListener("keydown", event => {
      const cell = event.target.closest("td");
      if (cell && event.key in steps) {
        event.preventDefault();
        move(cell, ...steps[event.key]);
      } else if (cell && (event.key === "Enter" || event.key === " ")) {
        event.preventDefault();
        open(cell);
      }
    });
    table.addEventListener("click", event => open(event.target.closest("td")));
  };

  const lay = (table, rows) => {
    table.tBodies[0].replaceChildren(...rows);
    table.querySelectorAll("td").forEach(cell => { cell.tabIndex = -1; });
    const first = table.querySelector("td");
    if (first) first.tabIndex = 0;
  };

  const worst = failure => Math.min(...titles.map((t, candidate) => outcome(failure.number, candidate)));
  const differs = failure => new Set(failure.cells.filter(cell => cell).map(cell => cell[0])).size > 1;

  const listAll = () => {
    const wanted = byId("all-outcome").value;
    const where = byId("all-where").value;
    const order = byId("all-order").value;
    const has = failure => titles.some((t, candidate) =>
      (where === "any" || Number(where) === candidate) && outcome(failure.number, candidate) === Number(wanted));
    const rows = failures.filter(failure =>
      wanted === "any" ? where === "any" || verdict(failure.number, Number(where))
        : wanted === "differs" ? differs(failure) : has(failure));
    const rank = {
      kind: () => 0,
      worst,
      name: () => 0
    }[order] || (failure => outcome(failure.number, Number(order)));
    rows.sort((one, other) => rank(one) - rank(other)
      || (order === "name" ? (one.label < other.label ? -1 : one.label > other.label ? 1 : 0) : 0)
      || one.number - other.number);
    lay(byId("all-table"), rows.map(failure => {
      const row = made("tr");
      row.dataset.failure = failure.number;
      row.append(rowHead(failure.label), ...titles.map((t, candidate) => cellOf(failure.number, candidate)));
      return row;
    }));
    byId("all-count").textContent = rows.length + " of " + failures.length + " failures";
  };

  const each = (select, before, words) => select.replaceChildren(
    ...before.map(([value, one]) => option(value, one)), ...words.map((one, i) => option(i, one)));
  each(byId("all-outcome"), [["any", "any outcome"], ["differs", "outcomes that differ"]],
    outcomes.map(mark => mark.sign + " " + mark.word));
  each(byId("all-where"), [["any", "any candidate"]], titles);
  each(byId("all-order"), [["kind", "kind of part"], ["worst", "worst outcome first"], ["name", "name"]],
    titles.map(title => "worst first in: " + title));
  byId("all-table").append(headOf(["Failure", ...titles]), made("tbody"));
  walkable(byId("all-table"));
  ["all-outcome", "all-where", "all-order"].forEach(id => byId(id).addEventListener("change", listAll));

  /* ---- two candidates ---- */

  const listTwo = () => {
    const [one, other] = ["two-one", "two-other"].map(id => Number(byId(id).value));
    const both = failures.filter(f => verdict(f.number, one) && verdict(f.number, other));
    const rows = both.filter(f => outcome(f.number, one) !== outcome(f.number, other));
    rows.sort((f, g) => Math.min(outcome(f.number, one), outcome(f.number, other))
      - Math.min(outcome(g.number, one), outcome(g.number, other)) || f.number - g.number);
    const table = byId("two-table");
    table.tHead.replaceWith(headOf(["Failure", titles[one], titles[other], "Does less harm in"]));
    lay(table, rows.map(failure => {
      const row = made("tr");
      row.dataset.failure = failure.number;
      const milder = outcome(failure.number, one) > outcome(failure.number, other) ? one : other;
      row.append(rowHead(failure.label), cellOf(failure.number, one), cellOf(failure.number, other), made("td", titles[milder]));
      row.lastChild.dataset.candidate = milder;
      return row;
    }));
    const only = (here, there) => failures.filter(f => verdict(f.number, here) && !verdict(f.number, there));
    byId("two-count").textContent = rows.length + " of " + both.length + " failures that both can have end otherwise. "
      + [[one, other], [other, one]].map(([here, there]) => only(here, there).length + " can happen only in \"" + titles[here] + "\"").join("; ") + ".";
  };
  fill(byId("two-one"), titles);
  fill(byId("two-other"), titles);
  byId("two-other").value = Math.min(1, titles.length - 1);
  byId("two-table").append(headOf(["Failure"]), made("tbody"));
  walkable(byId("two-table"));
  ["two-one", "two-other"].forEach(id => byId(id).addEventListener("change", listTwo));

  /* ---- weights: as in the study's ranking, but for the weights ---- */

  const LEVEL = 1e-9;
  const weighing = data.weighing;
  let weights = weighing ? weighing.criteria.map(criterion => criterion[1]) : [];

  const ranked = () => {
    const sum = weights.reduce((all, weight) => all + weight, 0);
    const standings = weighing.candidates.map(([values, missed], number) => {
      const parts = values.map(([, worth], i) => weights[i] / sum * worth);
      const total = parts.reduce((all, part) => all + part, 0);
      return {number, id: data.candidates[number].id, values, missed, parts, total, steps: Math.round(total / LEVEL)};
    });
    const byValues = (one, other) => {
      for (let i = 0; i < weights.length; i += 1) {
        const [here, there] = [Number(one.values[i][0]), Number(other.values[i][0])];
        if (here !== there) return (here < there ? 1 : -1) * weighing.criteria[i][2];
      }
      return 0;
    };
    standings.sort((one, other) => one.missed.length - other.missed.length || other.steps - one.steps
      || byValues(one, other) || (one.id < other.id ? -1 : 1));
    standings.forEach((one, i) => {
      const above = standings[i - 1];
      one.rank = above && above.missed.length === one.missed.length && above.steps === one.steps ? above.rank : i + 1;
    });
    return standings;
  };

  const showRanking = () => {
    const own = weights.every((weight, i) => weight === weighing.criteria[i][1]);
    const none = !weights.some(weight => weight > 0);
    byId("weigh-table").hidden = none;
    const standings = none ? [] : ranked();
    byId("weigh-whose").textContent = none ? "No criterion counts: give one of them a weight."
      : (own ? "With the study's own weights" : "With your weights, which are not the study's") + ": first "
        + standings.filter(one => one.rank === 1).map(one => titles[one.number]).join(" and ") + ".";
    byId("weigh-table").tBodies[0].replaceChildren(...standings.map(one => {
      const row = made("tr");
      row.append(made("td", one.rank, "rank"), rowHead(titles[one.number]), made("td", one.total.toFixed(3), "num"));
      one.parts.forEach((part, i) => row.append(made("td", one.values[i][2] + " (+" + part.toFixed(3) + ")")));
      row.append(made("td", one.missed.length ? "misses " + one.missed.length : "meets all"));
      return row;
    }));
    const sum = weights.reduce((all, weight) => all + weight, 0);
    weights.forEach((weight, i) => {
      byId("weigh-share-" + i).textContent = none ? "" : Math.round(100 * weight / sum) + " %";
    });
  };

  const laySliders = () => {
    const most = 2 * Math.max(...weighing.criteria.map(criterion => criterion[1]));
    weighing.criteria.forEach(([name], i) => {
      const line = made("div", undefined, "weigh");
      const slider = made("input");
      Object.assign(slider, {type: "range", id: "weigh-" + i, min: 0, max: most, step: most / 100});
      const label = made("label", name);
      label.htmlFor = slider.id;
      const share = made("output");
      share.id = "weigh-share-" + i;
      share.htmlFor = slider.id;
      slider.addEventListener("input", () => {
        weights[i] = Number(slider.value);
        showRanking();
      });
      line.append(label, slider, share);
      byId("weigh-sliders").append(line);
    });
    byId("weigh-table").append(headOf(["Rank", "Candidate", "Points", ...weighing.criteria.map(criterion => criterion[0]), "Requirements"]), made("tbody"));
    byId("weigh-own").addEventListener("click", ownWeights);
  };
  const ownWeights = () => {
    weights = weighing.criteria.map(criterion => criterion[1]);
    weights.forEach((weight, i) => { byId("weigh-" + i).value = weight; });
    showRanking();
  };

  /* ---- begin ---- */

  if (failures.length > 0) {
    byId("explore").hidden = false;
    document.querySelectorAll(".for-explorer").forEach(one => { one.hidden = false; });
    choose(0, 0);
    const whenOpened = (id, list) => byId(id).addEventListener("toggle", list, {once: true});
    whenOpened("explore-all", listAll);
    whenOpened("explore-two", listTwo);
    if (weighing) {
      laySliders();
      ownWeights();
    } else {
      byId("explore-weigh").hidden = true;
    }
  }
}
