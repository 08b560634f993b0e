// The page that an installer fills in on a tablet. It calls nothing and nobody: its policy forbids every connection.
// What is typed stays in the page until it is saved as a file; a copy in the browser's own store is a help only.
// Texts of people are only ever set as values or as text, never as markup.
"use strict";
(() => {
  const form = JSON.parse(document.getElementById("form-data").textContent);
  const words = form.words;
  const byId = (id) => document.getElementById(id);
  const fields = [...document.querySelectorAll("[data-field]")];
  const pictures = []; // { position, kind, name, caption, data (base64) }
  const pads = new Map(); // the drawn signature of each position
  let unsaved = false;

  // Readings: read as the program reads them, judged by its limits. What cannot be read here is told, never guessed.

  const SIGNS = { "\u2212": "-", "\u2011": "-", "\u2013": "-", "\u00a0": " ", "\u202f": " ", "\u2044": "/",
    "\u2032": "'", "\u2019": "'", "\u2033": "\"", "\u201d": "\"",
    "½": " 1/2", "¼": " 1/4", "¾": " 3/4", "⅛": " 1/8", "⅜": " 3/8", "⅝": " 5/8", "⅞": " 7/8" };
  const SIGN = new RegExp(`[${Object.keys(SIGNS).join("")}]`, "g");
  const NUMBER = new RegExp("^\\s*([+-]?)\\s*(?:(\\d+)[\\s-]+(\\d+)/(\\d+)|(\\d+)/(\\d+)" +
    "|((?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?))\\s*([^\\d\\s.,].*?)?\\s*$");
  const FEET = new RegExp("^\\s*([+-]?)\\s*(\\d+)\\s*(?:ft\\.?|feet|foot|')\\s*[-,]?\\s*" +
    "((?:\\d+[\\s-]+)?\\d+/\\d+|\\d+\\.?\\d*|\\.\\d+)\\s*(?:in\\.?|inch|inches|\"|'')\\s*$", "i");
  const OPEN = new RegExp("^\\s*[>+]?\\s*(?:∞|o\\.?\\s?l\\.?|o\\.?f\\.?l\\.?|over|overload|inf|infinite|infinity|open)" +
    "\\s*(?:[kM]?(?:Ω|ohm))?\\s*$", "i");

  function numberOf(match) {
    const size = match[7] !== undefined ? Number(match[7])
      : match[3] !== undefined ? Number(match[2]) + Number(match[3]) / Number(match[4])
        : Number(match[5]) / Number(match[6]);
    return match[1] === "-" ? -size : size;
  }

  function factorOf(unit, units) {
    if (Object.hasOwn(units, unit)) return units[unit];
    // a small m is milli and is never read as mega
    const alike = Object.keys(units).filter((known) =>
      known.toLowerCase() === unit.toLowerCase() && !(unit.startsWith("m") && known.startsWith("M")));
    const factors = new Set(alike.map((known) => units[known]));
    return factors.size === 1 ? [...factors][0] : null;
  }

  function withPoint(text) {
    if (form.writesComma && /\d\.\d{3}(?!\d)/.test(text)) return null; // may part thousands
    const isOne = text.split(",").length === 2 && !text.includes(".");
    const isDecimal = form.writesComma || (form.takesComma && !/\d,\d{3}(?!\d)/.test(text));
    return isOne && isDecimal ? text.replace(",", ".") : text;
  }

  function quantity(text, by) {
    const plain = text.replace(SIGN, (sign) => SIGNS[sign]).trim();
    if (/\d,\d/.test(plain)) return null;
    const both = by.isLength ? FEET.exec(plain) : null;
    if (both) {
      const inches = numberOf(NUMBER.exec(both[3]));
      const length = Number(both[2]) * by.units.ft + inches * by.units.in;
      return inches < 12 && Number.isFinite(length) ? (both[1] === "-" ? -length : length) : null;
    }
    const match = NUMBER.exec(plain);
    if (!match) return null;
    const factor = factorOf((match[8] || "").trim() || by.bare, by.units);
    const value = factor === null ? NaN : numberOf(match) * factor;
    return Number.isFinite(value) ? value : null;
  }

  // Returns { value, over }, or null where the text is no reading.
  function reading(text, by) {
    let written = text.trim(), over = false;
    if (by.isResistance) {
      if (OPEN.test(written)) return { value: null, over: true };
      const beyond = /^[>≫]\s*(\S.*)$/.exec(written);
      if (beyond) { written = beyond[1]; over = true; }
      const prefixed = /^(.*\d)\s*([kKM])\s*$/.exec(written);
      if (prefixed) written = `${prefixed[1]} ${prefixed[2].replace("K", "k")}ohm`;
    }
    if (by.onTape && /^[+-]?[\d.,/\s-]+$/.test(written)) return null; // feet or inches: not guessed
    const pointed = withPoint(written);
    const value = pointed === null ? null : quantity(pointed, by);
    return value === null || value < 0 ? null : { value, over };
  }

  const beyond = (value, low, high) => (low !== null && value < low) || (high !== null && value > high);

  function verdictOf(field) {
    const text = field.value.trim();
    if (!text || text === form.notChosen) return "";
    const by = form.readings[field.id];
    if (!by) return { passed: "within", failed: "outside" }[text] || "open";
    const read = reading(text, by);
    if (read === null) return "unreadable";
    if (read.over || beyond(read.value, by.low, by.high)) return "outside";
    return beyond(read.value, by.usualLow, by.usualHigh) ? "unusual" : "within";
  }

  function judge(field) {
    const said = byId(`v-${field.id}`);
    if (!said) return;
    const verdict = verdictOf(field);
    said.className = verdict;
    said.textContent = verdict === "unreadable" ? `? ${words.unreadable} ${form.readings[field.id].example}`
      : verdict ? form.verdicts[verdict] : "";
    field.setAttribute("aria-invalid", String(verdict === "outside" || verdict === "unreadable"));
  }

  function count(position) {
    const asked = fields.filter((one) => one.dataset.position === position && byId(`v-${one.id}`));
    const verdicts = asked.map(verdictOf);
    const mark = verdicts.some((one) => one === "outside" || one === "unreadable") ? " ✗"
      : verdicts.every((one) => one === "within" || one === "unusual") ? " ✓" : "";
    const told = `${verdicts.filter(Boolean).length} / ${asked.length}${mark}`;
    document.querySelectorAll(`[data-count="${position}"]`).forEach((place) => { place.textContent = told; });
  }

  // Keeping: the file that is saved counts; the browser's copy may be refused or wiped at any time.

  const fieldsOf = (position) => Object.fromEntries(
    fields.filter((one) => one.dataset.position === position).map((one) => [one.id, one.value]));
  const filled = () => ({ format: form.format, version: form.version, fields: form.positions.map(fieldsOf), pictures });
  const ours = form.positions.map((number) => byId(`p${number}_tag`).value);
  const key = `spoutline form ${ours.join(" ")}`;

  const MOST_KEPT = 3000000; // signs of pictures; browsers keep about five million of a page, and writing more out is slow

  function keepCopy() {
    const isSmall = pictures.reduce((sum, one) => sum + one.data.length, 0) <= MOST_KEPT;
    for (const kept of isSmall ? [pictures, []] : [[]]) {
      try {
        localStorage.setItem(key, JSON.stringify({ ...filled(), pictures: kept }));
        return;
      } catch { /* it is a help only */ }
    }
  }

  let later = 0;
  function changed() {
    unsaved = true;
    byId("state").textContent = words.unsaved;
    clearTimeout(later);
    later = setTimeout(keepCopy, 400);
  }

  function isOurs(kept) {
    if (!kept || kept.format !== form.format || kept.version !== form.version) return false;
    if (!Array.isArray(kept.fields) || !Array.isArray(kept.pictures)) return false;
    // each page of it must be of the same position of the same plan
    return kept.fields.length === form.positions.length && kept.fields.every((one, at) =>
      one && one[`p${form.positions[at]}_tag`] === ours[at]);
  }

  function putBack(kept) {
    for (const one of fields) {
      const values = kept.fields[form.positions.indexOf(one.dataset.position)];
      if (one.type !== "hidden" && typeof values[one.id] === "string") one.value = values[one.id];
    }
    pictures.length = 0;
    const isSound = (one) => one && form.positions.includes(String(one.position)) &&
      [one.name, one.caption, one.data].every((text) => typeof text === "string") && /^[A-Za-z0-9+/=]+$/.test(one.data);
    kept.pictures.filter(isSound).forEach((one) => {
      if (one.kind === "photo" && hasRoom(String(one.position), one.data.length)) pictures.push(one);
      if (one.kind === "signature") pads.get(String(one.position)).show(one);
    });
    showAll();
  }

  function showAll() {
    fields.forEach(judge);
    form.positions.forEach((position) => { count(position); showPhotos(position); });
  }

  function save() {
    const blob = new Blob([JSON.stringify(filled())], { type: "application/json" });
    const link = document.createElement("a");
    link.href = URL.createObjectURL(blob);
    link.download = form.file;
    document.body.append(link);
    link.click();
    link.remove();
    setTimeout(() => URL.revokeObjectURL(link.href), 60000);
    unsaved = false;
    byId("state").textContent = `${words.saved} ${form.file}`;
  }

  async function openSaved(file) {
    let kept = null;
    try {
      kept = file.size <= form.mostBytes ? JSON.parse(await file.text()) : null;
    } catch { /* told below */ }
    if (!isOurs(kept)) {
      byId("state").textContent = `${words.other} ${file.name}`;
      return;
    }
    pads.forEach((pad) => pad.clear());
    putBack(kept);
    changed();
  }

  // Photos: scaled down here, so that the file stays small enough for mail.

  const photosOf = (position) => pictures.filter((one) => one.kind === "photo" && String(one.position) === position);
  const hasRoom = (position, more) => photosOf(position).length < form.mostPhotos &&
    pictures.reduce((sum, one) => sum + one.data.length, more) * 3 / 4 <= form.mostTotal;

  function loaded(file) {
    return new Promise((resolve, reject) => {
      const picture = new Image();
      picture.onload = () => resolve(picture);
      picture.onerror = reject;
      picture.src = URL.createObjectURL(file);
    });
  }

  async function scaled(file) {
    const picture = await loaded(file);
    for (let edge = form.longestEdge; edge >= 200; edge = Math.floor(edge * 0.7)) {
      const share = Math.min(1, edge / Math.max(picture.naturalWidth, picture.naturalHeight));
      const canvas = document.createElement("canvas");
      canvas.width = Math.max(1, Math.round(picture.naturalWidth * share));
      canvas.height = Math.max(1, Math.round(picture.naturalHeight * share));
      const pen = canvas.getContext("2d");
      pen.fillStyle = "#fff";
      pen.fillRect(0, 0, canvas.width, canvas.height);
      pen.drawImage(picture, 0, 0, canvas.width, canvas.height);
      const data = canvas.toDataURL("image/jpeg", 0.8).split(",")[1];
      if (data.length * 3 / 4 <= form.mostPhotoBytes) { URL.revokeObjectURL(picture.src); return data; }
    }
    throw new Error("too large");
  }

  async function addPhotos(position, files) {
    const said = byId(`photo-state-${position}`);
    said.textContent = "";
    for (const file of files) {
      try {
        const data = await scaled(file);
        if (!hasRoom(position, data.length)) { said.textContent = `${words.full} ${form.mostPhotos}`; break; }
        pictures.push({ position: Number(position), kind: "photo", name: file.name.slice(0, 200), caption: "", data });
      } catch {
        said.textContent = `${words.noPicture} ${file.name}`;
      }
    }
    showPhotos(position);
    changed();
  }

  function showPhotos(position) {
    byId(`photos-${position}`).replaceChildren(...photosOf(position).map((one, at) => {
      const figure = document.createElement("figure"), image = document.createElement("img");
      const label = document.createElement("label"), caption = document.createElement("input");
      const away = document.createElement("button");
      image.src = `data:image/jpeg;base64,${one.data}`;
      image.alt = one.caption || one.name;
      caption.id = `caption-${position}-${at}`;
      caption.maxLength = 200;
      caption.value = one.caption;
      caption.addEventListener("input", () => { one.caption = caption.value; image.alt = caption.value || one.name; changed(); });
      label.htmlFor = caption.id;
      label.textContent = `${words.caption} (${one.name})`;
      away.type = "button";
      away.textContent = words.remove;
      away.setAttribute("aria-label", `${words.remove}: ${one.name}`);
      away.addEventListener("click", () => {
        pictures.splice(pictures.indexOf(one), 1);
        showPhotos(position);
        byId(`add-${position}`).focus();
        changed();
      });
      figure.append(image, label, caption, away);
      return figure;
    }));
  }

  // The signature: ink on white in light and dark, since it goes onto paper.

  function makePad(position) {
    const canvas = byId(`pad-${position}`), pen = canvas.getContext("2d");
    const isThis = (one) => one.kind === "signature" && String(one.position) === position;
    const forget = () => { const at = pictures.findIndex(isThis); if (at >= 0) pictures.splice(at, 1); };
    const clear = () => {
      pen.fillStyle = "#fff";
      pen.fillRect(0, 0, canvas.width, canvas.height);
      forget();
    };
    const put = (data) => {
      forget();
      pictures.push({ position: Number(position), kind: "signature", name: "signature.png", caption: "", data });
    };
    const at = (event) => {
      const box = canvas.getBoundingClientRect();
      return [(event.clientX - box.left) * canvas.width / box.width, (event.clientY - box.top) * canvas.height / box.height];
    };
    let isDrawing = false;
    canvas.addEventListener("pointerdown", (event) => {
      isDrawing = true;
      canvas.setPointerCapture(event.pointerId);
      pen.lineWidth = 3;
      pen.lineCap = pen.lineJoin = "round";
      pen.strokeStyle = "#000";
      pen.beginPath();
      pen.moveTo(...at(event));
      event.preventDefault();
    });
    canvas.addEventListener("pointermove", (event) => {
      if (!isDrawing) return;
      pen.lineTo(...at(event));
      pen.stroke();
    });
    const lift = () => {
      if (!isDrawing) return;
      isDrawing = false;
      put(canvas.toDataURL("image/png").split(",")[1]);
      changed();
    };
    canvas.addEventListener("pointerup", lift);
    canvas.addEventListener("pointercancel", lift);
    byId(`clear-${position}`).addEventListener("click", () => { clear(); changed(); });
    clear();
    return { clear, show: (one) => {
      const image = new Image();
      image.onload = () => { pen.drawImage(image, 0, 0, canvas.width, canvas.height); };
      image.src = `data:image/png;base64,${one.data}`;
      put(one.data);
    } };
  }

  // What a person does.

  form.positions.forEach((position) => {
    pads.set(position, makePad(position));
    byId(`add-${position}`).addEventListener("change", (event) => {
      const files = [...event.target.files];
      event.target.value = "";
      addPhotos(position, files);
    });
  });
  fields.forEach((field) => field.addEventListener("input", () => {
    judge(field);
    count(field.dataset.position);
    changed();
  }));
  byId("save").addEventListener("click", save);
  byId("open").addEventListener("change", (event) => {
    const [file] = event.target.files;
    event.target.value = "";
    if (file) openSaved(file);
  });
  byId("empty").addEventListener("click", () => {
    if (!confirm(words.emptyAsk)) return;
    fields.forEach((one) => {
      if (one.type === "hidden") return;
      if (one.tagName === "SELECT") one.value = form.notChosen;
      else one.value = one.defaultValue;
    });
    pads.forEach((pad) => pad.clear());
    pictures.length = 0;
    showAll();
    try { localStorage.removeItem(key); } catch { /* it is a help only */ }
    unsaved = false;
    byId("state").textContent = "";
  });
  // a link of the checklist opens its position
  document.querySelectorAll("nav a").forEach((link) => link.addEventListener("click", () => {
    const target = document.querySelector(link.getAttribute("href"));
    target.querySelector("details").open = true;
  }));
  addEventListener("beforeunload", (event) => { if (unsaved) event.preventDefault(); });
  addEventListener("beforeprint", () => document.querySelectorAll(".position > details").forEach((one) => { one.open = true; }));

  document.querySelectorAll("[data-script]").forEach((one) => { one.hidden = false; });
  try {
    const kept = JSON.parse(localStorage.getItem(key) || "null");
    if (isOurs(kept)) {
      putBack(kept);
      unsaved = true;
      byId("state").textContent = words.kept;
    }
  } catch { /* it is a help only */ }
  showAll();
})();
