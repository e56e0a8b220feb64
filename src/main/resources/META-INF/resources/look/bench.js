// At the bench: Enter moves on to the next reading, and what is typed is drawn at once. It decides nothing; Drawing.java draws the same.
"use strict";
const sheet = document.querySelector("form[data-sheet]");
if (sheet) {
  const readings = [...sheet.querySelectorAll("[data-next]")];
  const end = sheet.querySelector("[data-end]");
  let unsent = sheet.querySelector(".refused") !== null;
  const places = new Map(readings.flatMap((field) => {
    const place = /\/cylinders\/(\d+)\/grid\/readings\/(\d+)\/(\d+)$/.exec(field.name);
    return place ? [[field, { hole: place[1], row: Number(place[2]), axis: place[3] }]] : [];
  }));
  const fields = () => [...sheet.querySelectorAll("input:not([type=hidden]), select, summary, button")].filter((field) => field.offsetParent);
  const last = readings[readings.length - 1];
  // What is left to fill in after the last reading: the deck, and who signs.
  const rest = () => fields().filter((field) => field.matches("input, select") && !field.closest(".hole") && last?.compareDocumentPosition(field) & Node.DOCUMENT_POSITION_FOLLOWING);
  const go = (field) => { field.focus(); if (field.select) field.select(); };
  const next = (field, step) => {
    const to = field.dataset.next !== undefined && readings[readings.indexOf(field) + step];
    if (to) return to;
    const left = rest();
    const at = left.indexOf(field);
    if (step < 0 && (at >= 0 || field === end)) return left[at < 0 ? left.length - 1 : at - 1] || last;
    // No sheet goes without the name that it needs, however often Enter is pressed.
    if (field.required && !field.value.trim()) return field;
    if (field === last || at >= 0) return left.slice(at + 1).find((one) => !one.value.trim()) || end;
    const all = fields();
    return all[all.indexOf(field) + step] || field;
  };
  sheet.addEventListener("focusin", (event) => { if (event.target.matches("input")) event.target.dataset.was = event.target.value; });
  sheet.addEventListener("keydown", (event) => {
    const field = event.target;
    const moves = event.key === "Enter";
    if (moves && (event.ctrlKey || event.metaKey)) {
      event.preventDefault();
      sheet.requestSubmit(end);
    } else if (moves && event.shiftKey && field === end) {
      event.preventDefault();
      go(next(field, -1));
    } else if (moves && field.matches("input, select")) {
      event.preventDefault();
      go(next(field, event.shiftKey ? -1 : 1));
    } else if (event.key === "Escape" && field.dataset.was !== undefined) {
      field.value = field.dataset.was;
      drawAll();
      field.select();
    }
  });

  const dash = (field) => {
    field.value = "–";
    field.dispatchEvent(new Event("input", { bubbles: true }));
  };
  for (const grid of sheet.querySelectorAll(".hole > .grid")) {
    const cells = readings.filter((cell) => grid.contains(cell));
    const cannot = document.createElement("button");
    Object.assign(cannot, { type: "button", className: "cannot quiet", tabIndex: -1, textContent: "– This one cannot be measured" });
    cannot.addEventListener("pointerdown", (event) => event.preventDefault());
    cannot.addEventListener("click", () => {
      const at = cells.includes(document.activeElement) ? document.activeElement : cells.find((cell) => !cell.value.trim());
      if (at) dash(at);
    });
    grid.after(cannot);
  }

  const svg = (name, attributes, text) => {
    const element = document.createElementNS("http://www.w3.org/2000/svg", name);
    for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
    if (text) element.textContent = text;
    return element;
  };
  const figure = (field) => (/^([0-9]{1,6}|(?=\.))(\.[0-9]{1,9})?$/.test(field.value.trim()) ? Number(field.value) : null);
  const pictures = [...sheet.querySelectorAll("svg[data-profile]")].map((picture) => ({
    picture,
    drawn: picture.querySelector("[data-drawn]"),
    title: picture.querySelector("title"),
    lines: picture.dataset.lines.split(";").filter(Boolean).map((line) => ({ label: line.split("|")[0], at: Number(line.split("|")[1]) })),
    cells: readings.filter((cell) => places.has(cell) && places.get(cell).hole === picture.dataset.profile),
    alone: sheet.querySelector(`[name="number:/cylinders/${picture.dataset.profile}/diameter"]`),
  }));
  const together = sheet.querySelector("[name='/condition']") !== null;
  const depths = readings.filter((field) => field.dataset.depth);
  const unit = sheet.querySelector("[name='/unit']");

  const read = ({ cells, lines, alone }) => {
    const factor = unit && unit.value === "in" ? 25.4 : 1;
    const down = depths.map(figure);
    const deepest = Math.max(0, ...down);
    const taken = cells.filter((cell) => figure(cell) !== null);
    const byDepth = deepest > 0 && taken.every((cell) => down[places.get(cell).row] !== null);
    const single = !taken.length && alone && figure(alone) !== null;
    const at = single ? [{ axis: null, typed: alone.value.trim(), mm: figure(alone) * factor, y: 198 }] : taken.map((cell) => ({
      axis: places.get(cell).axis, typed: cell.value.trim(), mm: figure(cell) * factor,
      y: 46 + 152 * (byDepth ? down[places.get(cell).row] / deepest : (places.get(cell).row + 1) / depths.length),
    }));
    return at.filter((one) => !lines.length || lines.some((line) => Math.abs(line.at - one.mm) <= 2));
  };
  const scale = (taken, lines) => {
    const at = lines.map((line) => line.at);
    const shown = taken.length ? taken.map((one) => one.mm) : at;
    const least = Math.min(...shown), greatest = Math.max(...shown);
    const from = Math.max(...at.filter((line) => line <= least)), to = Math.min(...at.filter((line) => line >= greatest));
    const left = Number.isFinite(from) ? from : least, right = Number.isFinite(to) ? to : greatest;
    const margin = 0.12 * Math.max(right - left, 0.02);
    return { left: left - margin, right: right + margin };
  };
  const draw = (one, all) => {
    const { drawn, title, lines } = one;
    const taken = read(one);
    const { left, right } = scale(all || [...taken, ...lines.map((line) => ({ mm: line.at }))], lines);
    const x = (mm) => (8 + ((mm - left) / (right - left)) * 224).toFixed(1);
    const parts = [];
    lines.filter((line) => line.at >= left && line.at <= right).forEach((line, i) => {
      parts.push(svg("path", { class: "against", d: `M${x(line.at)} 34V212` }), svg("text", { class: "against", x: Math.min(Math.max(x(line.at), 32), 208), y: i % 2 ? 30 : 14 }, line.label));
    });
    const widest = new Map();
    let largest = null, smallest = null;
    for (const one of taken) {
      if (!widest.has(one.y) || one.mm > widest.get(one.y).mm) widest.set(one.y, one);
      if (!largest || one.mm > largest.mm) largest = one;
      if (!smallest || one.mm < smallest.mm) smallest = one;
    }
    if (widest.size > 1) {
      const rows = [...widest].sort((one, other) => one[0] - other[0]);
      const edge = [rows[rows.length - 1][0], rows[0][0]].map((y) => `${x(smallest.mm)},${y.toFixed(1)}`);
      parts.push(svg("polygon", { class: "worn", points: [...rows.map(([y, one]) => `${x(one.mm)},${y.toFixed(1)}`), ...edge].join(" ") }));
    }
    for (const axis of new Set(taken.map((one) => one.axis).filter((one) => one !== null))) {
      const own = taken.filter((one) => one.axis === axis);
      parts.push(svg("polyline", { class: `trace t${axis}`, points: own.map((one) => `${x(one.mm)},${one.y.toFixed(1)}`).join(" ") }));
      for (const one of own) parts.push(svg("circle", { class: `reading t${axis}`, cx: x(one.mm), cy: one.y.toFixed(1), r: 4 }));
    }
    const single = taken.length === 1 && taken[0].axis === null;
    if (single) parts.push(svg("path", { class: "alone", d: `M${x(largest.mm)} 38V212` }));
    else if (largest) parts.push(svg("circle", { class: "largest", cx: x(largest.mm), cy: largest.y.toFixed(1), r: 8 }));
    drawn.replaceChildren(...parts);
    title.textContent = title.textContent.replace(/: [^:]*\. The/, `: ${single ? `one diameter, ${largest.typed}` : largest ? `${taken.length} readings, from ${smallest.typed} to ${largest.typed}` : "nothing is read yet"}. The`);
  };
  const drawAll = () => {
    const all = together ? pictures.flatMap(read) : null;
    pictures.forEach((one) => draw(one, all));
    depths.forEach((field) => {
      sheet.querySelectorAll(`[data-depth-of="${field.dataset.depth}"]`).forEach((head) => { head.textContent = field.value.trim() || `${field.dataset.depth}.`; });
    });
  };
  sheet.addEventListener("input", (event) => {
    const field = event.target;
    unsent = unsent || field.dataset.next !== undefined;
    drawAll();
    if (/^[-–—]$/.test(field.value) && places.has(field)) go(next(field, 1));
  });
  sheet.addEventListener("change", drawAll);
  sheet.addEventListener("submit", () => { unsent = false; });
  window.addEventListener("beforeunload", (event) => { if (unsent) event.preventDefault(); });
}
