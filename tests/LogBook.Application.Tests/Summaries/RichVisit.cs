using LogBook.Application.Tests.Imports;
using LogBook.Domain.Assessments;
using LogBook.Domain.Estimates;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Sites;
using LogBook.Domain.Summaries;
using LogBook.Domain.Visits;

namespace LogBook.Application.Tests.Summaries;

/// <summary>A visit on which nearly everything happened that a summary can tell.</summary>
internal static class RichVisit
{
    private static readonly Text ProbeOff = new("Probe C1 reads 7.4 % low.", "La sonda C1 lee un 7,4 % menos.", "A sonda C1 lê 7,4 % a menos.");
    private static readonly Text RunsOut = new("Inhibitor P-40 lasts until 20 March.", "El inhibidor P-40 alcanza hasta el 20 de marzo.", "O inibidor P-40 dura até 20 de março.");

    public static Visit Visit { get; } = new()
    {
        Id = Guid.Parse("01955b40-5e60-7c77-9a57-0a6f8a0d2a11"),
        Site = "YAF-1",
        Technician = "RYA",
        Also = ["IWE"],
        Kind = VisitKind.Routine,
        Version = 2,
        Amends = 1,
        AmendedBy = "IWE",
        AmendedAt = At("2025-03-04T08:00:00+00:00"),
        Reason = "chloride was misread",
        Arrived = At("2025-03-03T09:05:00+00:00"),
        Left = At("2025-03-03T10:10:00+00:00"),
        Notes = "for the office only",
        Systems =
        [
            new VisitedSystem
            {
                System = "CT-1",
                Running = true,
                Readings =
                [
                    new Reading { At = "tower", Test = "conductivity", Source = ReadingSource.Controller, Value = 1260, Unit = "uS/cm" },
                    new Reading { At = "tower", Test = "conductivity", Source = ReadingSource.Reference, Instrument = "HM-1", Value = 1361.5, Unit = "uS/cm" },
                    new Reading { At = "tower", Test = "chloride", Drops = 21, PerDrop = 5, Unit = "mg/L", Basis = "as Cl" },
                    new Reading { At = "tower", Test = "inhibitor", Value = 132.5, Unit = "mg/L", Lot = "IN-0412" },
                    new Reading { At = "tower", Test = "pH", Value = 8.1, Unit = "[pH]" },
                    new Reading { At = "tower", Test = "dip-slide", Value = 1000, Qualifier = "<", Unit = "[CFU]/mL" },
                    new Reading { At = "tower", Test = "colony-count", Value = 12500, Unit = "[CFU]/mL" },
                    new Reading { At = "tower", Test = "legionella", Unit = "[CFU]/mL", SampleId = "B-7" },
                    new Reading { At = "make-up", Test = "conductivity", NotTaken = "tap frozen", Unit = "uS/cm" },
                ],
                Probes = [new ProbeReading { Probe = "C1", Of = ProbeKind.Conductivity, AsFound = 1260, Reference = 1361, AfterCleaning = 1342, AsLeft = 1361, Calibrated = true, Unit = "uS/cm" }],
                Drums =
                [
                    new DrumReading { Drum = "D-INH", Level = 41.5, Unit = "cm", AddedL = 25.5, ProductFound = "P-40" },
                    new DrumReading { Drum = "D-B1", Swapped = true },
                ],
                Switches = [new SwitchReading { Output = "bleed", Found = SwitchPosition.Automatic, Left = SwitchPosition.ForcedOff, Reason = "valve leaks" }],
                Settings =
                [
                    new SettingReading { Name = "setPointUsPerCm", Found = SettingValue.Of(1350), Left = SettingValue.Of(1400), Reason = "softer make-up" }, new SettingReading { Name = "inhibitor/mode", Found = SettingValue.Of("by-make-up-volume"), Left = SettingValue.Of("alongside-bleed"), Reason = "meter stands still" },
                    new SettingReading { Name = "biocide-1/starts", Found = SettingValue.Of("21:30"), Left = SettingValue.Of("22:00") },
                ],
                Additions = [new Addition { Product = "P-40", Amount = 0.5, Unit = "L", To = "basin", Reason = "residual was low" }],
                Events = [new VisitEvent { Type = EventType.StrainerCleaned, Of = "suction strainer", Note = "half full of leaves" }],
                Observations = [new Observation { About = "basin", Text = "light algae" }],
                Actions =
                [
                    new VisitAction { Text = "clean the basin at shutdown", Owner = "customer", Due = new DateOnly(2025, 4, 1), State = ActionState.Open },
                    new VisitAction { Text = "bring a new valve", Owner = "RYA", Due = new DateOnly(2025, 3, 31), State = ActionState.Open },
                    new VisitAction { Text = "check the strainer", State = ActionState.Done },
                ],
            },
        ],
        Recommendations =
        [
            new Recommendation { Text = "Renew the bleed valve.", Consequence = "Water and product are lost.", State = RecommendationState.Asked },
            new Recommendation { Text = "Cover the basin.", State = RecommendationState.Declined },
        ],
        Signatures =
        [
            new Signature { By = SignedBy.Technician, Name = "R. Yaffle" },
            new Signature { By = SignedBy.Customer, AbsentReason = "office closed" },
        ],
        Samples = [new Sample { Bottle = "B-7", Point = "tower", Lab = "Ibbenstoke" }],
    };

    public static async Task<SummarySource> SourceAsync(Language language) => new(
        "Quernwath Water",
        new FirmSetUp(await Documents.SetUpAsync()),
        Visit,
        [
            FindingOf(FindingKinds.ProbeReadsOff, Severity.Act, ProbeOff.In(language)),
            FindingOf(FindingKinds.RunsOut, Severity.Plan, RunsOut.In(language)),
            FindingOf(FindingKinds.SecondLook, Severity.Act, "not for the customer"),
            FindingOf(FindingKinds.ControllerClock, Severity.Watch, "only watched"),
        ],
        [
            new SummarySourceFigure("CT-1", FigureCodes.CyclesBest, "", new Estimate(4.52, "1", 0.11), null),
            new SummarySourceFigure("CT-1", FigureCodes.MakeUp, "", new Estimate(48210, "L", 480), null),
            new SummarySourceFigure("CT-1", FigureCodes.ProductUsed, "D-INH", new Estimate(6.42, "L", 0.31), null),
            new SummarySourceFigure("CT-1", FigureCodes.ProbeError, "C1", new Estimate(-7.4, "%", 1.1), null),
            new SummarySourceFigure("CT-1", FigureCodes.PumpOutput, "P-INH", new Estimate(1.5, "L/h", 0.1), null),
        ]);

    public static Finding FindingOf(string kind, Severity severity, string text, FindingState state = FindingState.Open) => new()
    {
        Site = "YAF-1", System = "CT-1", Kind = kind, Severity = severity, State = state, Text = text,
        FirstSeen = new DateOnly(2025, 3, 3), LastSeen = new DateOnly(2025, 3, 3),
    };

    private static Moment At(string text) => Moment.TryParse(text, out var moment) ? moment : throw new ArgumentException("No time.", nameof(text));
}
