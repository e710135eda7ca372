// The chart of a site's history: panels over one time axis, pan and zoom by touch, wheel, keys and buttons, a click that tells the page which visit.
// No eval, no inline script; text enters the page as text only.
import * as echarts from "echarts/core";
import { CustomChart, LineChart, ScatterChart } from "echarts/charts";
import { GridComponent, TitleComponent, TooltipComponent, DataZoomInsideComponent, MarkAreaComponent, AxisPointerComponent } from "echarts/components";
import { CanvasRenderer } from "echarts/renderers";
import langES from "echarts/i18n/langES-obj.js";
import langPT from "echarts/i18n/langPT-br-obj.js";
import { heightOf, optionOf, themeOf } from "./option.mjs";

echarts.use([CustomChart, LineChart, ScatterChart, GridComponent, TitleComponent, TooltipComponent, DataZoomInsideComponent, MarkAreaComponent, AxisPointerComponent, CanvasRenderer]);
echarts.registerLocale("ES", langES);
echarts.registerLocale("PT", langPT);

const NARROW = 620;
const DAY = 86400000;
const PICTURE_WIDTH = 1200;
const PICTURE_HEAD = 64;
const PICTURE_LINE = 22;
const PICTURE_EDGE = 16;
const GLYPHS = { circle: "●", diamond: "◆", square: "■", plus: "✚", hexagon: "⬢", hourglass: "⧗" };
const HOLLOW = "○";

/** Draws into `root` ([data-plot] and [data-live] inside it) and answers with the handle that the page steers. */
export function mount(root, model, page) {
  const plot = root.querySelector("[data-plot]");
  const live = root.querySelector("[data-live]");
  const abort = new AbortController();
  let chart = null;
  let cursor = -1;
  let stops = [];
  let view = null;
  let isOnPaper = matchMedia("print").matches;

  // Paper is light, whatever the screen looks like.
  const isDark = () => {
    if (isOnPaper) return false;
    const [r, g, b] = getComputedStyle(root).color.match(/[\d.]+/g).map(Number);
    return 0.2126 * r + 0.7152 * g + 0.0722 * b > 127;
  };

  function locale() {
    return { es: "ES", pt: "PT" }[model.language] ?? "EN";
  }

  // Always light and wide: a picture goes on paper or into a letter, whatever the screen looks like.
  function picture() {
    const theme = themeOf(false), family = getComputedStyle(root).fontFamily, ratio = 2;
    const hidden = echarts.init(document.createElement("div"), null, { renderer: "canvas", locale: locale(), width: PICTURE_WIDTH, height: heightOf(model, false) });
    const option = optionOf(model, theme, false, family);
    Object.assign(option.dataZoom[0], view ?? {});
    hidden.setOption(option);
    const drawn = hidden.renderToCanvas({ pixelRatio: ratio, backgroundColor: theme.paper });
    const sheet = document.createElement("canvas");
    const pen = sheet.getContext("2d");
    const small = `${14 * ratio}px ${family}`;
    pen.font = small;
    const lines = legendLines(model, theme, pen, drawn.width - 2 * PICTURE_EDGE * ratio);
    sheet.width = drawn.width;
    sheet.height = drawn.height + (PICTURE_HEAD + lines.length * PICTURE_LINE) * ratio;
    pen.fillStyle = theme.paper;
    pen.fillRect(0, 0, sheet.width, sheet.height);
    pen.drawImage(drawn, 0, PICTURE_HEAD * ratio);
    pen.fillStyle = theme.text;
    pen.font = `600 ${18 * ratio}px ${family}`;
    pen.fillText(model.title, PICTURE_EDGE * ratio, 28 * ratio);
    pen.font = small;
    const [from, to] = view ? [view.startValue, view.endValue] : [model.from, model.to];
    const day = at => new Intl.DateTimeFormat(model.language, { dateStyle: "medium", timeZone: "UTC" }).format(at);
    pen.fillText(`${day(from)} – ${day(to - 1)}`, PICTURE_EDGE * ratio, 52 * ratio);
    lines.forEach((line, row) => line.forEach(piece => {
      pen.fillStyle = piece.color;
      pen.fillText(piece.text, PICTURE_EDGE * ratio + piece.x, drawn.height + (PICTURE_HEAD + row * PICTURE_LINE + 6) * ratio);
    }));
    hidden.dispose();
    sheet.toBlob(blob => {
      const link = document.createElement("a");
      link.href = URL.createObjectURL(blob);
      link.download = model.file || "chart.png";
      link.click();
      URL.revokeObjectURL(link.href);
    }, "image/png");
  }

  function draw() {
    model.texts.number = value => new Intl.NumberFormat(model.language, { maximumSignificantDigits: 6 }).format(value);
    const narrow = plot.clientWidth < NARROW;
    plot.style.height = `${heightOf(model, narrow)}px`;
    chart?.dispose();
    chart = echarts.init(plot, null, { renderer: "canvas", locale: locale() });
    const option = optionOf(model, themeOf(isDark()), narrow, getComputedStyle(root).fontFamily);
    option.tooltip.formatter = tooltip;
    if (view) Object.assign(option.dataZoom[0], view);
    chart.setOption(option);
    chart.on("click", params => open(params.data?.visit));
    chart.on("datazoom", remember);
    stops = stopsOf(model);
    wheel(root.contains(document.activeElement));
  }

  function remember() {
    const zoom = chart.getOption().dataZoom[0];
    view = { startValue: zoom.startValue, endValue: zoom.endValue };
  }

  function wheel(focused) {
    chart.setOption({ dataZoom: [{ id: "inside", zoomOnMouseWheel: focused ? true : "ctrl" }] });
  }

  function open(visit) {
    if (visit) page.invokeMethodAsync("OpenVisit", visit);
  }

  // Elements with textContent, not markup: names and notes come from people.
  function tooltip(params) {
    const box = document.createElement("div");
    const list = Array.isArray(params) ? params : [params];
    const shown = list.filter(one => one.data?.text);
    if (shown.length === 0) return "";
    const head = box.appendChild(document.createElement("strong"));
    head.textContent = dateText(shown[0].value[0]);
    for (const one of shown) {
      const line = box.appendChild(document.createElement("div"));
      line.textContent = `${one.data.panel}: ${one.data.text}`;
    }
    return box;
  }

  function dateText(at) {
    return new Intl.DateTimeFormat(model.language, { dateStyle: "medium", timeStyle: "short", timeZone: "UTC" }).format(at);
  }

  function currentView() {
    const zoom = chart.getOption().dataZoom[0];
    return [zoom.startValue ?? model.from, zoom.endValue ?? model.to];
  }

  function show(from, to) {
    const whole = model.to - model.from;
    const span = Math.min(Math.max(to - from, DAY), whole);
    const start = Math.min(Math.max(from, model.from), model.to - span);
    view = { startValue: start, endValue: start + span };
    chart.dispatchAction({ type: "dataZoom", dataZoomIndex: 0, ...view });
    say(`${dateText(view.startValue)} – ${dateText(view.endValue)}`);
  }

  function zoom(factor) {
    const [from, to] = currentView();
    const middle = (from + to) / 2;
    const half = (to - from) * factor / 2;
    show(middle - half, middle + half);
  }

  function pan(share) {
    const [from, to] = currentView();
    const by = (to - from) * share;
    show(from + by, to + by);
  }

  function whole() {
    show(model.from, model.to);
  }

  function say(text) {
    live.textContent = text;
  }

  function step(by) {
    if (stops.length === 0) return;
    cursor = Math.min(Math.max(cursor < 0 ? (by > 0 ? 0 : stops.length - 1) : cursor + by, 0), stops.length - 1);
    const stop = stops[cursor];
    const [from, to] = currentView();
    if (stop.at < from || stop.at > to) show(stop.at - (to - from) / 2, stop.at + (to - from) / 2);
    const [x, y] = chart.convertToPixel({ gridIndex: stop.grid }, [stop.at, stop.value]);
    chart.dispatchAction({ type: "showTip", x, y });
    say(`${dateText(stop.at)}. ${stop.texts.join(". ")}`);
  }

  const acts = { in: () => zoom(0.5), out: () => zoom(2), earlier: () => pan(-0.5), later: () => pan(0.5), whole, previous: () => step(-1), next: () => step(1), picture };

  root.addEventListener("keydown", event => {
    if (event.target !== plot || event.ctrlKey || event.metaKey || event.altKey) return;
    const act = {
      ArrowLeft: () => pan(-0.25), ArrowRight: () => pan(0.25), "+": acts.in, "=": acts.in, "-": acts.out, Home: whole, "0": whole,
      PageUp: acts.previous, PageDown: acts.next, Enter: () => cursor >= 0 && open(stops[cursor].visit), Escape: () => chart.dispatchAction({ type: "hideTip" }),
    }[event.key];
    if (!act) return;
    event.preventDefault();
    act();
  }, { signal: abort.signal });
  root.addEventListener("click", event => {
    const act = event.target.closest?.("[data-act]")?.dataset.act;
    if (act && acts[act]) acts[act]();
  }, { signal: abort.signal });
  root.addEventListener("focusin", () => chart && wheel(true), { signal: abort.signal });
  root.addEventListener("focusout", () => chart && wheel(false), { signal: abort.signal });
  // Browsers ask before they print, and draw what then stands on the canvas; a print preview or a page shown as print only changes the medium.
  const onPaper = is => { if (is !== isOnPaper) { isOnPaper = is; draw(); } };
  window.addEventListener("beforeprint", () => onPaper(true), { signal: abort.signal });
  window.addEventListener("afterprint", () => onPaper(false), { signal: abort.signal });
  matchMedia("print").addEventListener("change", event => onPaper(event.matches), { signal: abort.signal });
  // A change of theme changes the text colour; its (tiny) transition tells, whatever caused it.
  root.addEventListener("transitionend", event => { if (event.target === root && event.propertyName === "color") draw(); }, { signal: abort.signal });

  let width = 0;
  const resize = new ResizeObserver(() => {
    if (!chart || plot.clientWidth === width) return;
    const crossed = (width < NARROW) !== (plot.clientWidth < NARROW);
    width = plot.clientWidth;
    if (crossed) draw(); else chart.resize();
  });
  width = plot.clientWidth;
  draw();
  resize.observe(plot);
  root.dataset.ready = "true";

  return {
    update(next) { model = next; view = null; cursor = -1; draw(); },
    dispose() { abort.abort(); resize.disconnect(); chart?.dispose(); chart = null; },
  };
}

/** The legend under a picture, broken into lines that fit: which mark is which series, then what the marks mean. */
function legendLines(model, theme, pen, width) {
  const lines = [];
  const begin = () => lines.push([]);
  let x = 0;
  const add = pieces => {
    const wide = pieces.reduce((sum, piece) => sum + pen.measureText(piece.text).width, 0);
    if (x > 0 && x + wide > width) { begin(); x = 0; }
    for (const piece of pieces) { lines.at(-1).push({ ...piece, x }); x += pen.measureText(piece.text).width; }
  };
  for (const panel of model.panels.filter(panel => panel.series.length > 1)) {
    begin();
    x = 0;
    add([{ text: `${panel.title}:  `, color: theme.text }]);
    panel.series.forEach((one, position) => add([{ text: `${one.hollow ? HOLLOW : GLYPHS[one.symbol] ?? GLYPHS.circle} `, color: theme.ink[position % theme.ink.length] }, { text: `${one.name}   `, color: theme.text }]));
  }
  if (model.notes.length > 0) begin();
  x = 0;
  for (const note of model.notes) add([{ text: `${note}   `, color: theme.text }]);
  return lines;
}

/** The moments that PageUp and PageDown stop at: one per visit or mark, with everything told there. */
function stopsOf(model) {
  const byMoment = new Map();
  const add = (at, visit, text, grid, value) => {
    const stop = byMoment.get(at) ?? { at, visit, grid, value, texts: [] };
    stop.visit ??= visit;
    stop.texts.push(text);
    byMoment.set(at, stop);
  };
  model.panels.forEach((panel, grid) => panel.series.forEach(series => series.points.forEach(point => {
    if (point.value !== null && point.value !== undefined) add(point.at, point.visit, `${panel.title}: ${point.text}`, grid, point.value);
  })));
  model.lanes.forEach((lane, row) => lane.marks.forEach(mark => add(mark.at, mark.visit, `${lane.name}: ${mark.text}`, model.panels.length, row)));
  return [...byMoment.values()].sort((a, b) => a.at - b.at);
}
