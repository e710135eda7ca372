// From the chart's model (HistoryChartModel, as JSON) to the drawing library's options. Pure: no page, no library, so it runs under `node --test`.
// Moments are milliseconds of the site's wall time; the chart is drawn "in UTC" so that no browser zone moves a mark to another day.

const PANEL = 132;
const PANEL_GAP = 34;
const LANE = 28;
const LANE_NARROW = 42;
const TOP = 30;
const AXIS = 44;

/** Colours of Okabe and Ito; shapes and words carry the meaning, colour only helps. */
export function themeOf(dark) {
  return dark
    ? { text: "#f2f2f2", faint: "#bdbdbd", rule: "#5a5a5a", band: "rgba(120,180,230,0.20)", bandEdge: "#8fb8d8", paper: "#1e1e1e", ink: ["#7cc4f5", "#f0b455", "#e6a3cb", "#d0d0d0"] }
    : { text: "#1b1b1b", faint: "#4a4a4a", rule: "#c4c4c4", band: "rgba(0,90,160,0.10)", bandEdge: "#5d7f9c", paper: "#ffffff", ink: ["#00568f", "#8a4b00", "#8c2f66", "#4a4a4a"] };
}

export function heightOf(model, narrow) {
  return TOP + model.panels.length * (PANEL + PANEL_GAP) + model.lanes.length * (narrow ? LANE_NARROW : LANE) + AXIS;
}

/** Lowest and highest number to show in a panel: its values, its ranges, and some air. */
export function extentOf(panel) {
  const numbers = [];
  for (const series of panel.series) for (const point of series.points) if (point.value !== null && point.value !== undefined) numbers.push(point.value);
  for (const series of panel.series.filter((_, position) => hasBars(panel, position))) for (const point of series.points) for (const edge of [point.low, point.high]) if (edge !== null && edge !== undefined) numbers.push(edge);
  for (const line of panel.lines) numbers.push(line.value);
  for (const band of panel.bands) for (const edge of [band.low, band.high]) if (edge !== null && edge !== undefined) numbers.push(edge);
  if (numbers.length === 0) return { min: 0, max: 1, step: 0.25 };
  const low = Math.min(...numbers);
  const high = Math.max(...numbers);
  const air = high > low ? (high - low) * 0.08 : Math.abs(high) * 0.1 || 1;
  const min = low >= 0 ? Math.max(0, low - air) : low - air;
  const step = niceStep((high + air - min) / 4);
  return { min: Math.floor(min / step) * step, max: Math.ceil((high + air) / step) * step, step };
}

function niceStep(raw) {
  const power = 10 ** Math.floor(Math.log10(raw));
  const part = raw / power;
  return (part <= 1 ? 1 : part <= 2 ? 2 : part <= 5 ? 5 : 10) * power;
}

const DOWN = "path://M0,0 L10,0 L5,9 Z";
const UP = "path://M0,9 L10,9 L5,0 Z";
const SQUARE = "rect";
// The same shapes stand in the legend beside the chart (SeriesShape.razor).
const SHAPES = {
  square: SQUARE,
  plus: "path://M5,1 h4 v4 h4 v4 H9 v4 H5 V9 H1 V5 h4 Z",
  hexagon: "path://M4,1 h6 l3,6 -3,6 H4 L1,7 Z",
  hourglass: "path://M1,1 h12 L1,13 h12 Z",
};

/** Less-than and more-than results are triangles that point where the truth lies; a symbol never stands for a plain number. */
export function symbolOf(point, series) {
  if (point.qualifier === "<") return DOWN;
  if (point.qualifier === ">") return UP;
  return SHAPES[series.symbol] ?? series.symbol;
}

export function optionOf(model, theme, narrow, fontFamily) {
  const left = narrow ? 52 : 148;
  const right = 16;
  const grids = [], xAxes = [], yAxes = [], series = [], titles = [];
  let top = TOP;
  model.panels.forEach((panel, index) => {
    const extent = extentOf(panel);
    grids.push({ left, right, top, height: PANEL });
    titles.push({ text: panel.unit ? `${panel.title} (${panel.unit})` : panel.title, left: narrow ? 4 : left, top: top - 24, textStyle: { color: theme.text, fontSize: 14, fontWeight: 600 } });
    xAxes.push(timeAxis(model, index, theme, index === model.panels.length - 1 && model.lanes.length === 0));
    yAxes.push({
      type: "value", gridIndex: index, min: extent.min, max: extent.max, interval: extent.step,
      axisLabel: { color: theme.faint, fontSize: 12, formatter: value => model.texts.number(value) },
      splitLine: { lineStyle: { color: theme.rule, opacity: 0.5 } },
    });
    panel.series.forEach((one, position) => {
      series.push(lineSeries(panel, one, index, position, theme));
      if (hasBars(panel, position) && one.points.some(point => isNumber(point.low) && isNumber(point.high))) series.push(uncertaintySeries(one, index, position, theme));
    });
    if (panel.series.length === 0) series.push(lineSeries(panel, { name: panel.title, symbol: "circle", points: [] }, index, 0, theme));
    if (panel.lines.length > 0) series.push(stepSeries(panel, index, theme));
    top += PANEL + PANEL_GAP;
  });
  if (model.lanes.length > 0) {
    const index = model.panels.length;
    grids.push({ left, right, top, height: model.lanes.length * (narrow ? LANE_NARROW : LANE) });
    xAxes.push(timeAxis(model, index, theme, true));
    yAxes.push({
      type: "category", gridIndex: index, inverse: true, data: model.lanes.map(lane => lane.name),
      axisLabel: { color: theme.text, fontSize: 12, inside: narrow, width: narrow ? undefined : left - 16, overflow: "truncate", padding: narrow ? [0, 0, 20, 0] : 0 },
      axisTick: { show: false }, splitArea: { show: true, areaStyle: { color: ["transparent", theme.band] } },
    });
    model.lanes.forEach((lane, row) => series.push(laneSeries(lane, row, index, theme, narrow)));
  }
  const all = grids.map((_, index) => index);
  return {
    useUTC: true, animation: false, backgroundColor: "transparent",
    textStyle: { fontFamily, color: theme.text },
    title: titles, grid: grids, xAxis: xAxes, yAxis: yAxes, series,
    axisPointer: { link: [{ xAxisIndex: "all" }], lineStyle: { color: theme.faint } },
    tooltip: { trigger: "axis", confine: true, backgroundColor: theme.paper, borderColor: theme.faint, textStyle: { color: theme.text, fontSize: 13 } },
    dataZoom: [{
      id: "inside", type: "inside", xAxisIndex: all, filterMode: "none", startValue: model.from, endValue: model.to,
      // The wheel belongs to the page until the chart has the focus; see chart.mjs.
      zoomOnMouseWheel: "ctrl", moveOnMouseMove: true, moveOnMouseWheel: false, preventDefaultMouseMove: false, minValueSpan: 86400000,
    }],
  };
}

function timeAxis(model, index, theme, labelled) {
  return {
    type: "time", gridIndex: index, min: model.from, max: model.to,
    axisLabel: { show: labelled, color: theme.text, fontSize: 12, hideOverlap: true },
    axisTick: { show: labelled }, axisLine: { lineStyle: { color: theme.rule } },
    axisPointer: { label: { show: false } }, splitLine: { show: true, lineStyle: { color: theme.rule, opacity: 0.4 } },
  };
}

function lineSeries(panel, one, index, position, theme) {
  const color = theme.ink[position % theme.ink.length];
  return {
    type: "line", name: one.name, xAxisIndex: index, yAxisIndex: index, connectNulls: false, showAllSymbol: true,
    lineStyle: { color, width: one.dashed ? 1.5 : 2, type: one.dashed ? "dashed" : "solid" },
    itemStyle: { color: one.hollow ? theme.paper : color, borderColor: color, borderWidth: 2 },
    data: one.points.map(point => ({
      value: [point.at, point.value ?? null],
      symbol: symbolOf(point, one), symbolSize: point.outside ? 13 : point.qualifier ? 11 : 8,
      // Outside its range: a larger mark with a heavy rim, so that it stands out in grey too.
      itemStyle: point.outside ? { color: theme.paper, borderColor: theme.text, borderWidth: 3 } : undefined,
      visit: point.visit, text: point.text, panel: panel.title,
    })),
    markArea: position === 0 && panel.bands.length > 0 ? {
      silent: true, itemStyle: { color: theme.band, borderColor: theme.bandEdge, borderWidth: 1, borderType: "dashed" },
      data: panel.bands.map(band => [corner(band.from, band.low), corner(band.to, band.high)]),
    } : undefined,
  };
}

// With many lines in one panel the uncertainty of all of them would hide them: the first one's stands for the rest, which tell theirs at the pointer and in the table.
function hasBars(panel, position) {
  return position === 0 || panel.series.length <= 3;
}

function isNumber(value) {
  return value !== null && value !== undefined;
}

// An upright line from the low to the high end of each value, with its own short ends.
function uncertaintySeries(one, index, position, theme) {
  const color = theme.ink[position % theme.ink.length];
  return {
    type: "custom", name: one.name, xAxisIndex: index, yAxisIndex: index, silent: true, clip: true, z: 1, tooltip: { show: false },
    data: one.points.filter(point => isNumber(point.low) && isNumber(point.high)).map(point => [point.at, point.low, point.high]),
    encode: { x: 0, y: [1, 2] },
    renderItem(params, api) {
      const [x, low] = api.coord([api.value(0), api.value(1)]);
      const high = api.coord([api.value(0), api.value(2)])[1];
      const line = (x1, y1, x2, y2) => ({ type: "line", shape: { x1, y1, x2, y2 }, style: { stroke: color, lineWidth: 1.5 } });
      return { type: "group", children: [line(x, low, x, high), line(x - 4, low, x + 4, low), line(x - 4, high, x + 4, high)] };
    },
  };
}

// A corner without y reaches to the edge of the panel: a range may be open above or below.
function corner(at, value) {
  return value === null || value === undefined ? { xAxis: at } : { xAxis: at, yAxis: value };
}

function stepSeries(panel, index, theme) {
  const data = [];
  for (const line of panel.lines) data.push([line.from, line.value], [line.to, line.value], [line.to, null]);
  return {
    type: "line", name: panel.lines[0].name, xAxisIndex: index, yAxisIndex: index, symbol: "none", silent: true, connectNulls: false,
    lineStyle: { color: theme.faint, width: 1.5, type: [2, 4] }, data, tooltip: { show: false },
  };
}

function laneSeries(lane, row, index, theme, narrow) {
  return {
    type: "scatter", name: lane.name, xAxisIndex: index, yAxisIndex: index,
    // On a narrow screen the lane's name stands above its marks.
    symbolOffset: narrow ? [0, 9] : 0,
    data: lane.marks.map(mark => ({
      value: [mark.at, row], symbol: laneSymbol(mark.symbol), symbolSize: mark.symbol === "circle-small" ? 7 : 13,
      itemStyle: mark.hollow ? { color: theme.paper, borderColor: theme.text, borderWidth: 2 } : { color: theme.text },
      visit: mark.visit, text: mark.text, panel: lane.name,
    })),
  };
}

function laneSymbol(name) {
  return name === "down" ? DOWN : name === "up" ? UP : SHAPES[name] ? SHAPES[name] : name === "circle-small" ? "circle" : name;
}
