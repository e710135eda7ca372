using LogBook.Domain.Quantities;

namespace LogBook.Domain.Exchange.Shapes;

// Inside the namespace, or Moment would be the type of that name.
using static LogBook.Domain.Exchange.Shapes.FieldKind;

/// <summary>
/// The shape table: every object type of the exchange format with its fields, closed lists and bounds. What compares one
/// part of a document with another (codes, units of a test, dates) is in <see cref="ExchangeCheck"/>.
/// </summary>
internal static class ExchangeShapes
{
    /// <summary>Newest minor number that this program reads. 1: hours to notify and a shorter interval in the bands of a rule; counters and levels as first typed. 2: years for which a rule keeps records, summaries by a day of the month, the limit of the discharge.</summary>
    public const int Minor = 2;

    private static readonly string[] Languages = ["en", "es", "pt"];
    private static readonly string[] Severities = ["act", "plan", "watch"];
    private static readonly string[] Weekdays = ["mon", "tue", "wed", "thu", "fri", "sat", "sun"];
    private static readonly string[] ProbeKinds = ["conductivity", "pH", "orp"];
    private static readonly string[] SwitchPositions = ["automatic", "forced-on", "forced-off"];

    private static readonly Shape Contact = new("contact", Required("name"), Required("email", Mail), Choice("language", Languages), Field("getsSummaries", Flag));

    private static readonly Shape Certificate = new("certificate", Required("name"), Field("number"), Field("expires", Date));

    private static readonly Shape Residual = new("productResidual", Required("test"), Must(Positive("mgPerLPerMgProduct")));

    private static readonly Shape InstrumentCheckShape =
        new("instrumentCheck", Required("at", Moment), Required("standard", Number), Required("read", Number), Must(Unit("unit")), Field("standardLot"));

    private static readonly Shape RuleBand = new("ruleBand", Must(Amount("from")), Must(Unit("unit")), Must(Choice("severity", Severities)), Positive("notifyWithinHours"), Positive("everyDays"), Field("says"));

    private static readonly Shape Hours = new("operatingHours", List("days", Choice("", Weekdays)), Required("from", ClockTime), Required("to", ClockTime));

    private static readonly Shape Operation = new(
        "operation",
        List("week", Hours),
        List("seasons", new Shape("season", Required("from", MonthDay), Required("to", MonthDay))),
        List("stops", new Shape("stop", Required("from", Date), Required("to", Date), Field("reason"))));

    private static readonly Shape Probe = new("probe", Required("code"), Must(Choice("of", ProbeKinds)), Field("from", Date));

    private static readonly Shape Output = new("output", Required("code"), Must(Choice("drives", "bleed", "feed", "alarm")));

    private static readonly Shape Meter = new(
        "meter",
        Required("code"),
        Must(Choice("measures", "make-up", "bleed", "softened", "backwash", "other")),
        Must(Unit("unit", UnitDimension.Volume)),
        Must(Whole("digits", 1, 15)),
        Positive("dialMultiplier"),
        Whole("totalDigits", 1, 15),
        Positive("litresPerPulse"),
        Positive("pulsesPerLitre"),
        List("serves", Text),
        Positive("maxLPerH", UnitDimension.Flow),
        Field("from", Date));

    private static readonly Shape Drum = new(
        "drum",
        Required("code"),
        Required("product"),
        Must(Choice("shape", "vertical-cylinder", "horizontal-cylinder", "rectangular", "by-weight", "table")),
        Positive("capacityL", UnitDimension.Volume),
        Positive("heightCm", UnitDimension.Length),
        Positive("lengthCm", UnitDimension.Length),
        Positive("widthCm", UnitDimension.Length),
        Positive("diameterCm", UnitDimension.Length),
        Amount("tareKg", UnitDimension.Mass),
        List("points", List("", Amount("")) with { Count = (2, 2) }),
        Amount("unusableL", UnitDimension.Volume),
        Amount("spareL", UnitDimension.Volume),
        Amount("deliveryDays"),
        Field("from", Date))
    {
        Demands =
        [
            new("shape", "vertical-cylinder", ["capacityL", "heightCm"]),
            new("shape", "horizontal-cylinder", ["lengthCm", "diameterCm"]),
            new("shape", "rectangular", ["lengthCm", "widthCm", "heightCm"]),
            new("shape", "by-weight", ["tareKg", "capacityL"]),
            new("shape", "table", ["points"]),
        ],
    };

    private static readonly Shape Pump =
        new("pump", Required("code"), Required("drum"), Required("output"), Amount("ratedLPerH", UnitDimension.Flow), Field("from", Date));

    private static readonly Shape MaRange = new("maRange", Required("at4Ma", Number), Required("at20Ma", Number), Must(Unit("unit")));

    private static readonly Shape Range =
        new("range", Required("at"), Required("test"), Field("low", Number), Field("high", Number), Must(Unit("unit")), Field("basis"));

    private static readonly Shape Feed = new(
        "feed",
        Required("drum"),
        Field("output"),
        Must(Choice("mode", "by-make-up-volume", "alongside-bleed", "fixed-share", "share-of-last-bleed", "dose-plan", "by-orp", "by-ph", "by-residual", "by-hand", "feeder")),
        Amount("targetMgPerL"),
        List("waitsFor", Text),
        Positive("everyL", UnitDimension.Volume),
        Amount("runSeconds"),
        Positive("cycleMin"),
        Amount("sharePercent") with { Max = 100 },
        Amount("longestFeedMin"),
        Field("setPoint", Number),
        Amount("differential"),
        Unit("unit", UnitDimension.Potential, UnitDimension.Ph, UnitDimension.Concentration),
        Choice("direction", "up", "down"),
        List("weeks", Whole("", 1, 52)),
        List("days", Choice("", Weekdays)),
        List("starts", Field("", ClockTime)),
        Amount("runMinutes"),
        Nested("bleedDownFirst", new Shape("bleedDown", Amount("minutes"), Amount("toUsPerCm"))),
        Amount("holdBleedShutMin"),
        Choice("inhibitorMeanwhile", "feeds", "waits", "skips"))
    {
        Demands =
        [
            new("mode", "by-make-up-volume", ["everyL", "runSeconds"]),
            new("mode", "alongside-bleed", ["longestFeedMin"]),
            new("mode", "fixed-share", ["cycleMin", "sharePercent"]),
            new("mode", "share-of-last-bleed", ["sharePercent", "longestFeedMin"]),
            new("mode", "dose-plan", ["weeks", "days", "starts", "runMinutes"]),
            new("mode", "by-orp", ["setPoint", "differential", "unit", "direction", "longestFeedMin"]),
            new("mode", "by-ph", ["setPoint", "differential", "unit", "direction", "longestFeedMin"]),
            new("mode", "by-residual", ["setPoint", "differential", "unit", "direction", "longestFeedMin"]),
        ],
    };

    private static readonly Shape MakeUp = new(
        "makeUpWater",
        Amount("conductivityUsPerCm"),
        Amount("calciumMgPerLAsCaCO3"),
        Amount("magnesiumMgPerLAsCaCO3"),
        Amount("alkalinityMgPerLAsCaCO3"),
        Amount("chlorideMgPerL"),
        Amount("silicaMgPerL"),
        Amount("sulphateMgPerL"),
        Amount("pH") with { Max = 14 });

    private static readonly Shape Programme = new(
        "programme",
        Required("from", Date),
        Amount("targetCycles") with { Min = 1 },
        Positive("setPointUsPerCm", UnitDimension.Conductivity),
        Amount("differentialUsPerCm", UnitDimension.Conductivity),
        Choice("bleedActs", "on-rise", "on-fall"),
        Amount("displayAverageSeconds"),
        Amount("highAlarmUsPerCm", UnitDimension.Conductivity),
        Amount("lowAlarmUsPerCm", UnitDimension.Conductivity),
        Amount("longestBleedMin"),
        Nested("maRange", MaRange),
        Whole("planWeeks", 1, 52),
        Field("weekOneFrom", Date),
        List("ranges", Range),
        List("feeds", Feed),
        Nested("makeUp", MakeUp),
        Field("why"));

    private static readonly Shape Reading = new(
        "reading",
        Required("at"),
        Required("test"),
        Choice("source", "controller", "reference", "kit", "lab", "site-staff"),
        Field("value", Number),
        Amount("drops"),
        Positive("perDrop"),
        Must(Unit("unit")),
        Field("basis"),
        Field("method"),
        Choice("qualifier", "<", ">"),
        Field("notQuantifiable", Flag),
        Field("notTaken"),
        Field("instrument"),
        Field("lot"),
        Nested("dilution", new Shape("dilution", Must(Positive("sample")), Must(Positive("total")))),
        Field("firstValue", Number),
        Field("confirmed", Flag),
        Choice("phase", "found", "again", "left"),
        Field("takenAt", Moment),
        Field("resultAt", Moment),
        Field("receivedAt", Moment),
        Field("lab"),
        Field("labRef"),
        Field("sampleId"),
        Nested("incubation", new Shape("incubation", Field("degC", Number), Amount("hours"))))
    {
        OneOf = [["value"], ["drops", "perDrop"], ["notQuantifiable"], ["notTaken"]],
        Needs = [("drops", "perDrop"), ("qualifier", "value|drops")],
        Exclusive = [("notQuantifiable", "value"), ("notTaken", "value"), ("notQuantifiable", "qualifier"), ("notTaken", "qualifier")],
    };

    private static readonly Shape ProbeReading = new(
        "probeReading",
        Field("probe"),
        Choice("of", ProbeKinds),
        Amount("settledMin"),
        Required("asFound", Number),
        Field("reference", Number),
        Field("instrument"),
        Field("afterCleaning", Number),
        Field("asLeft", Number),
        Field("calibrated", Flag),
        Nested("calibration", new Shape(
            "probeCalibration",
            Choice("against", "hand-meter", "standard"),
            Field("standardValue", Number),
            Field("standardLot"),
            Field("factorBefore", Number),
            Field("factorAfter", Number),
            Field("reason"))),
        Must(Unit("unit", UnitDimension.Conductivity, UnitDimension.Ph, UnitDimension.Potential)));

    private static readonly Shape MeterReading = new(
        "meterReading",
        Required("meter"),
        Amount("dial"),
        Amount("total"),
        Field("replaced", Flag),
        Field("reset", Flag),
        Amount("oldFinal"),
        Amount("newStart"),
        Field("replacedOn", Date),
        Amount("before"),
        Amount("after"),
        Amount("firstDial"),
        Amount("firstTotal"));

    private static readonly Shape DrumReading = new(
        "drumReading",
        Required("drum"),
        Amount("level"),
        Unit("unit", UnitDimension.Length, UnitDimension.Mass, UnitDimension.Percent, UnitDimension.Volume),
        Amount("addedL"),
        Amount("removedL"),
        Field("swapped", Flag),
        Amount("left"),
        Amount("spareL"),
        Field("lot"),
        Field("productFound"),
        Amount("firstLevel"))
    {
        Needs = [("level", "unit"), ("left", "unit"), ("firstLevel", "unit")],
    };

    /// <summary>An event of a visit.</summary>
    public static readonly Shape VisitEvent = new(
        "event",
        Must(Choice(
            "type",
            "drained",
            "refilled",
            "cleaned",
            "disinfected",
            "stopped",
            "started",
            "power-lost",
            "probe-cleaned",
            "probe-renewed",
            "pump-renewed",
            "strainer-cleaned",
            "valve-renewed",
            "softener-regenerated",
            "device-checked",
            "other")),
        Field("of"),
        Field("at", Moment),
        Amount("litres"),
        Field("by"),
        Field("note"));

    private static readonly Shape VisitedSystem = new(
        "visitedSystem",
        Required("system"),
        Field("running", Flag),
        Field("inUse", Flag),
        Field("clockOffByMin", Number),
        Whole("programmeWeek", 1, 52),
        List("readings", Reading),
        List("probes", ProbeReading),
        List("meters", MeterReading),
        List("drums", DrumReading),
        List("hoursRun", new Shape("hoursReading", Required("output"), Must(Amount("hours")), Field("reset", Flag), Amount("before"), Amount("after"), Amount("firstHours"))),
        List("pumps", new Shape(
            "pumpReading",
            Required("pump"),
            Amount("strokeFound") with { Max = 100 },
            Amount("strokeLeft") with { Max = 100 },
            Amount("speedFound") with { Max = 100 },
            Amount("speedLeft") with { Max = 100 })),
        List("drawdowns", new Shape("drawdown", Required("pump"), Must(Amount("millilitres")), Must(Positive("seconds")))),
        Nested("bleedTest", new Shape("bleedTest", Must(Amount("litres")), Must(Positive("seconds")))),
        List("switches", new Shape("switchReading", Required("output"), Choice("found", SwitchPositions), Choice("left", SwitchPositions), Field("reason"))),
        List("settings", new Shape(
            "settingReading",
            Required("name"),
            Field("found", Setting) with { IsNullKept = true },
            Field("left", Setting),
            Field("notRead", Flag),
            Unit("unit"),
            Positive("step"),
            Field("reason"))),
        Nested("maOutput", new Shape("maReading", Must(Amount("found")), Must(Unit("unit")))),
        List("additions", new Shape(
            "addition",
            Required("product"),
            Must(Amount("amount")),
            Must(Unit("unit", UnitDimension.Volume, UnitDimension.Mass, UnitDimension.Ratio)),
            Field("to"),
            Field("at", Moment),
            Field("reason"))),
        List("events", VisitEvent),
        List("alarms", new Shape("alarm", Required("text"), Field("output"), Field("standing", Flag))),
        List("observations", new Shape("observation", Required("about"), Required("text"), Choice("severity", Severities))),
        List("actions", new Shape(
            "action",
            Field("id", Identity),
            Field("for"),
            Required("text"),
            Field("owner"),
            Field("due", Date),
            Choice("state", "open", "done", "dropped"))));

    /// <summary>A test that the firm adds.</summary>
    public static Shape Test { get; } = new("test", Required("code"), Required("name"), Field("basis"), Must(Unit("unit")), Positive("step"));

    /// <summary>A customer.</summary>
    public static Shape Customer { get; } = new("customer", Required("code"), Required("name"), List("contacts", Contact));

    /// <summary>A person.</summary>
    public static Shape Person { get; } = new(
        "person",
        Required("code"),
        Required("name"),
        Field("email", Mail),
        Must(Choice("role", "technician", "supervisor", "administrator", "site-staff", "customer")),
        List("certificates", Certificate));

    /// <summary>A product.</summary>
    public static Shape Product { get; } = new(
        "product",
        Required("code"),
        Required("name"),
        Must(Choice("kind", "inhibitor", "biocide", "dispersant", "acid", "antifoam", "other")),
        Field("oxidising", Flag),
        Positive("densityKgPerL"),
        Amount("doseMgPerL", UnitDimension.Concentration),
        Nested("residual", Residual),
        Amount("labelMaxMgPerL", UnitDimension.Concentration),
        Amount("labelMaxWeekMgPerL", UnitDimension.Concentration),
        Amount("labelGapHours"),
        Amount("labelContactHours"),
        Field("registration"),
        List("neverWith", Text));

    /// <summary>An instrument.</summary>
    public static Shape Instrument { get; } = new(
        "instrument",
        Required("code"),
        Must(Choice("kind", "conductivity-meter", "ph-meter", "photometer", "thermometer", "other")),
        Field("name"),
        Field("serial"),
        List("checks", InstrumentCheckShape));

    /// <summary>A reagent lot.</summary>
    public static Shape Lot { get; } = new("lot", Required("code"), Required("test"), Positive("step"), Field("expires", Date));

    /// <summary>A rule.</summary>
    public static Shape Rule { get; } = new(
        "rule",
        Required("code"),
        Required("name"),
        Field("jurisdiction"),
        Required("from", Date),
        Field("to", Date),
        Field("source"),
        Field("test"),
        Field("task"),
        Field("onEvent"),
        Positive("everyDays"),
        Amount("withinDays"),
        Amount("graceDays"),
        Field("operatingDaysOnly", Flag),
        List("retestDays", Amount("")) with { Count = (0, 2) },
        Positive("keepYears"),
        List("bands", RuleBand));

    /// <summary>A site.</summary>
    public static Shape Site { get; } = new(
        "site",
        Required("code"),
        Required("customer"),
        Required("name"),
        Required("timeZone"),
        Positive("visitEveryDays"),
        Choice("units", "metric", "us", "imperial"),
        Field("assignedTo"),
        Positive("summaryWithinHours"),
        Whole("summaryByMonthDay", 1, 28),
        Field("photosAllowed", Flag),
        Field("address"),
        Field("accessNotes"));

    /// <summary>A water system.</summary>
    public static Shape WaterSystem { get; } = new(
        "system",
        Required("site"),
        Required("code"),
        Required("name"),
        Must(Choice("kind", "open-recirculating", "closed-loop", "boiler", "softener", "other")),
        Positive("volumeL", UnitDimension.Volume),
        Amount("fullLoadKw", UnitDimension.Power),
        Amount("recirculationLPerMin", UnitDimension.Flow),
        Amount("bleedValveLPerH", UnitDimension.Flow),
        Nested("bleedTimed", new Shape("bleedTiming", Required("on", Date), Must(Amount("LPerH")))),
        List("metals", Choice("", "steel", "copper", "galvanised", "stainless", "aluminium", "plastic")),
        Field("newGalvanisedFrom", Date),
        Positive("dischargeUsPerCm"),
        Field("dischargeSource"),
        List("rules", Text),
        Nested("operation", Operation),
        List("samplePoints", Text),
        List("probes", Probe),
        List("outputs", Output),
        List("meters", Meter),
        List("drums", Drum),
        List("pumps", Pump),
        List("programmes", Programme));

    /// <summary>A visit.</summary>
    public static Shape Visit { get; } = new(
        "visit",
        Required("id", Identity),
        Required("site"),
        Required("technician"),
        List("also", Text),
        Choice("kind", "routine", "start-up", "shut-down", "cleaning", "delivery", "result", "emergency", "audit", "commissioning", "stopped"),
        Field("reason"),
        Required("arrived", Moment),
        Field("left", Moment),
        Field("enteredAt", Moment),
        Whole("version", 1, null),
        Whole("amends", 1, null),
        Field("amendedBy"),
        Field("amendedAt", Moment),
        List("systems", VisitedSystem),
        List("photos", new Shape("photo", Required("id", Identity), Required("of"), Field("sha256"), Field("takenAt", Moment))),
        List("recommendations", new Shape(
            "recommendation",
            Field("id", Identity),
            Required("text"),
            Field("consequence"),
            Choice("state", "asked", "accepted", "declined"))),
        List("signatures", new Shape("signature", Must(Choice("by", "technician", "customer")), Field("name"), Field("role"), Field("absentReason"))),
        List("samples", new Shape(
            "sample",
            Field("bottle"),
            Field("point"),
            Field("takenAt", Moment),
            Field("temperatureCel", Number),
            Amount("residualMgPerL"),
            Field("lab"),
            Field("system"))),
        Field("cleaning"),
        Field("notes"));

    /// <summary>A finding; checked for its form and otherwise ignored.</summary>
    public static Shape Finding { get; } = new(
        "finding",
        Field("site"),
        Field("system"),
        Nested("about", new Shape(
            "about",
            Field("probe"),
            Field("drum"),
            Field("output"),
            Field("meter"),
            Field("pump"),
            Field("test"),
            Field("instrument"),
            Field("lot"),
            Field("person"),
            Field("rule"),
            Field("task"))),
        Required("kind"),
        Must(Choice("severity", Severities)),
        Required("firstSeen", Date),
        Field("firstVisit", Identity),
        Required("lastSeen", Date),
        Must(Choice("state", "open", "acknowledged", "snoozed", "withdrawn", "closed")),
        Field("until", Date),
        Field("because"),
        Field("closedOn", Date),
        Field("earlier", Date),
        Required("text"),
        List("evidence", new Shape(
            "evidence",
            Required("what"),
            Field("value", Number),
            Field("low", Number),
            Field("high", Number),
            Field("limitLow", Number),
            Field("limitHigh", Number),
            Required("unit"))),
        List("suggests", new Shape("suggestion", Required("cause"), Required("text"))),
        List("lookAtNext", Text));

    /// <summary>The whole document.</summary>
    public static Shape Document { get; } = new(
        "document",
        Must(Choice("format", "logbook-exchange")),
        Must(Whole("version", 1, 1)),
        Whole("minor", 0, Minor),
        List("tests", Test),
        List("customers", Customer),
        List("people", Person),
        List("products", Product),
        List("instruments", Instrument),
        List("lots", Lot),
        List("rules", Rule),
        List("sites", Site),
        List("systems", WaterSystem),
        List("visits", Visit),
        List("findings", Finding));

    /// <summary>A quantity as a person entered it.</summary>
    public static Shape EnteredIn(UnitDimension dimension) =>
        new("entered" + dimension, Must(Amount("value")), Must(Unit("unit", dimension)));

    private static Field Field(string name, FieldKind kind = Text) => new(name, kind);

    private static Field Required(string name, FieldKind kind = Text) => new(name, kind) { IsRequired = true };

    private static Field Must(Field field) => field with { IsRequired = true };

    private static Field Choice(string name, params string[] choices) => new(name, FieldKind.Choice) { Choices = choices };

    private static Field Unit(string name, params UnitDimension[] dimensions) =>
        new(name, FieldKind.Choice) { IsUnit = true, Choices = dimensions.Length == 0 ? UnitCodes.All : UnitCodes.Of(dimensions) };

    private static Field Amount(string name, UnitDimension? enteredIn = null) => new(name, Number) { Min = 0, EnteredIn = enteredIn };

    private static Field Positive(string name, UnitDimension? enteredIn = null) => new(name, Number) { Min = 0, IsAbove = true, EnteredIn = enteredIn };

    private static Field Whole(string name, int min, int? max) => new(name, Integer) { Min = min, Max = max };

    private static Field Nested(string name, Shape shape) => new(name, FieldKind.Object) { Shape = shape };

    private static Field List(string name, Shape shape) => List(name, new Field("", FieldKind.Object) { Shape = shape });

    private static Field List(string name, FieldKind item) => List(name, new Field("", item) { IsRequired = true });

    private static Field List(string name, Field item) => new(name, FieldKind.List) { Item = item };
}
