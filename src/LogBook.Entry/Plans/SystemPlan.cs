using LogBook.Domain.History;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;
using LogBook.Entry.Drafts;
using LogBook.Entry.State;

namespace LogBook.Entry.Plans;

/// <summary>What the form offers for one system on one day: from its set-up, its programme and its last visits.</summary>
public sealed class SystemPlan
{
    private static readonly string[] Biology = [TestCodes.DipSlide, TestCodes.ColonyCount, TestCodes.Legionella];
    private static readonly string[] Usual = [TestCodes.Ph, TestCodes.Chloride, TestCodes.Calcium, TestCodes.Alkalinity, TestCodes.Inhibitor];

    private SystemPlan(WaterSystem system, Programme? programme, IReadOnlyList<(DateTime Utc, VisitedSystem System)> visits)
    {
        System = system;
        Programme = programme;
        Visits = visits;
    }

    /// <summary>The system.</summary>
    public WaterSystem System { get; }

    /// <summary>Programme in force on the day of the visit, if any.</summary>
    public Programme? Programme { get; }

    /// <summary>Earlier visits of the system, latest last.</summary>
    public IReadOnlyList<(DateTime Utc, VisitedSystem System)> Visits { get; }

    /// <summary>Whether it only gets a sheet of tests.</summary>
    public bool RecordOnly => System.Kind != SystemKind.OpenRecirculating;

    /// <summary>Steps of the form for this system.</summary>
    public IReadOnlyList<EntryStep> Steps { get; private init; } = [];

    /// <summary>Water tests, in the order of the sample points.</summary>
    public IReadOnlyList<PlannedTest> Tests { get; private init; } = [];

    /// <summary>Tests of slides and bottles.</summary>
    public IReadOnlyList<PlannedTest> SampleTests { get; private init; } = [];

    /// <summary>Settings of the programme.</summary>
    public IReadOnlyList<PlannedSetting> Settings { get; private init; } = [];

    /// <summary>Whether the full walk through the settings is due, or was asked for today.</summary>
    public bool WalkIsDue { get; private init; }

    /// <summary>Whether the person asked for the full walk today, though it is not due by itself.</summary>
    public bool WalkIsAsked { get; private init; }

    /// <summary>Key under which a draft notes that all settings are read today.</summary>
    /// <param name="system">Code of the system.</param>
    /// <returns>The key.</returns>
    public static string WalkKey(string system) => DraftKey.Of(DraftKey.Systems, system, "walk");

    /// <summary>Works out the plan.</summary>
    /// <param name="system">The system.</param>
    /// <param name="firm">Set-up of the firm.</param>
    /// <param name="previous">The site's last visits, latest last.</param>
    /// <param name="draft">The visit at hand.</param>
    /// <returns>The plan.</returns>
    public static SystemPlan For(WaterSystem system, FirmSetUp firm, IReadOnlyList<Visit> previous, VisitDraft draft)
    {
        var arrived = draft.Arrived();
        var day = DateOnly.FromDateTime(arrived.Wall);
        var programme = system.Programmes.Where(p => p.From <= day).MaxBy(p => p.From) ?? system.Programmes.MinBy(p => p.From);
        var visits = previous
            .Where(v => v.Id != draft.Id && v.Arrived < arrived)
            .OrderBy(v => v.Arrived.Utc)
            .SelectMany(v => v.Systems.Where(s => s.System.Equals(system.Code, StringComparison.OrdinalIgnoreCase)).Select(s => (v.Arrived.Utc, s)))
            .ToList();
        var settings = programme is null ? [] : SettingList.Of(programme, system);
        var tests = TestsOf(system, programme, firm, visits, draft);
        var recordOnly = system.Kind != SystemKind.OpenRecirculating;
        var mayWalk = !recordOnly && settings.Count > 0;
        var walkIsDue = mayWalk && SettingList.WalkIsDue(settings, visits, Today(draft, system, settings), arrived.Utc);
        var walkIsAsked = mayWalk && !walkIsDue && draft.Text(WalkKey(system.Code)).Length > 0;
        return new SystemPlan(system, programme, visits)
        {
            Settings = settings,
            WalkIsDue = walkIsDue || walkIsAsked,
            WalkIsAsked = walkIsAsked,
            Tests = recordOnly ? tests : [.. tests.Where(t => !IsSample(t))],
            SampleTests = recordOnly ? [] : [.. tests.Where(IsSample)],
            Steps = VisitShape.Steps(KindOf(draft), recordOnly, Filled(draft, system.Code, recordOnly)),
        };
    }

    /// <summary>Whether it offers the same as another plan, so that nothing need be shown anew.</summary>
    /// <param name="other">The other one.</param>
    /// <returns>True when no part of them differs.</returns>
    public bool Offers(SystemPlan other) =>
        ReferenceEquals(System, other.System) && ReferenceEquals(Programme, other.Programme) && WalkIsDue == other.WalkIsDue && WalkIsAsked == other.WalkIsAsked
        && Steps.SequenceEqual(other.Steps) && Tests.SequenceEqual(other.Tests) && SampleTests.SequenceEqual(other.SampleTests)
        && Settings.SequenceEqual(other.Settings) && Visits.SequenceEqual(other.Visits);

    /// <summary>The last result of a test.</summary>
    /// <param name="key">The test.</param>
    /// <returns>Time and result, or null.</returns>
    public (DateTime Utc, Reading Reading)? LastOf(ReadingKey key)
    {
        for (var i = Visits.Count - 1; i >= 0; i--)
        {
            var found = Visits[i].System.Readings.LastOrDefault(r => r.At == key.At && r.Test == key.Test && (key.Source is null || r.Source == key.Source) && r.NotTaken is null);
            if (found is not null)
            {
                return (Visits[i].Utc, found);
            }
        }

        return null;
    }

    /// <summary>Unit that a test begins with: that of last time, else of its range, else its usual one.</summary>
    /// <param name="test">The test.</param>
    /// <returns>UCUM unit.</returns>
    public string UnitOf(PlannedTest test) =>
        LastOf(test.Key)?.Reading.Unit is { } unit && test.Info.Units.Contains(unit) ? unit : test.Range?.Unit ?? test.Info.Units[0];

    /// <summary>Whether the controller counts the pulses of a meter, so that it has a total of its own.</summary>
    /// <param name="meter">The meter.</param>
    /// <returns>True where the set-up says so or a visit has read one.</returns>
    public bool HasTotal(Meter meter) => meter.LitresPerPulse is not null || meter.PulsesPerLitre is not null || meter.TotalDigits is not null
        || LastOf(s => s.Meters.FirstOrDefault(m => m.Meter == meter.Code && (m.Total ?? m.After) is not null)) is not null;

    /// <summary>What can be set at a pump.</summary>
    /// <param name="pump">The pump.</param>
    /// <returns>Fields of its stroke and speed; only those that an earlier visit has read, both where none has read any.</returns>
    public IReadOnlyList<string> KnobsOf(Pump pump)
    {
        bool WasRead(Func<PumpReading, double?> of) => LastOf(s => s.Pumps.FirstOrDefault(p => p.Pump == pump.Code && of(p) is not null)) is not null;
        return (WasRead(p => p.StrokeLeft ?? p.StrokeFound), WasRead(p => p.SpeedLeft ?? p.SpeedFound)) switch
        {
            (true, false) => ["strokeFound"],
            (false, true) => ["speedFound"],
            _ => ["strokeFound", "speedFound"],
        };
    }

    /// <summary>The last record of a part.</summary>
    /// <typeparam name="T">Type of the record.</typeparam>
    /// <param name="of">Picks it from a visit, null where the visit has none.</param>
    /// <returns>Time and record, or null.</returns>
    public (DateTime Utc, T Record)? LastOf<T>(Func<VisitedSystem, T?> of)
        where T : class
    {
        for (var i = Visits.Count - 1; i >= 0; i--)
        {
            if (of(Visits[i].System) is { } record)
            {
                return (Visits[i].Utc, record);
            }
        }

        return null;
    }

    private static VisitKind KindOf(VisitDraft draft) => Enum.TryParse<VisitKind>(draft.Text(DraftKey.Of(DraftKey.Visit, "kind")), out var kind) ? kind : VisitKind.Routine;

    // What this visit has found so far that can ask for a full walk, read here because the visit itself is made later.
    private static VisitedSystem Today(VisitDraft draft, WaterSystem system, IReadOnlyList<PlannedSetting> settings)
    {
        var top = DraftKey.Of(DraftKey.Systems, system.Code);
        SettingValue? Found(string name)
        {
            var key = DraftKey.Under(top, "settings", name, "found");
            return draft.Text(key).Trim() is not { Length: > 0 } text ? null
                : draft.Field(key)?.Unit is null || text == "none" ? SettingValue.Of(text)
                : draft.Number(key) is { } number ? SettingValue.Of(number) : null;
        }

        return new VisitedSystem
        {
            System = system.Code,
            Settings = [.. settings.Select(s => new SettingReading { Name = s.Name, Found = Found(s.Name) })],
            Alarms =
            [
                .. draft.Rows(DraftKey.Under(top, "alarms")).Where(row => draft.Text(DraftKey.Under(row, "text")).Trim().Length > 0)
                    .Select(row => new AlarmReading { Text = draft.Text(DraftKey.Under(row, "text")), Standing = draft.Text(DraftKey.Under(row, "standing")) != "no" }),
            ],
            Events =
            [
                .. draft.Rows(DraftKey.Under(top, "events")).Where(row => draft.Text(DraftKey.Under(row, "type")) == nameof(EventType.PowerLost))
                    .Select(_ => new VisitEvent { Type = EventType.PowerLost }),
            ],
        };
    }

    private static HashSet<EntryStep> Filled(VisitDraft draft, string system, bool recordOnly)
    {
        var top = DraftKey.Of(DraftKey.Systems, system) + "/";
        return
        [
            .. draft.Fields.Where(f => f.Value.Text.Length > 0 && f.Key.StartsWith(top, StringComparison.Ordinal))
                .Select(f => recordOnly ? EntryStep.Sheet : FieldPlaces.OfSystem(DraftKey.Parts(f.Key))),

            // Where it is told how a switch was found, it is asked how it was left.
            .. !recordOnly && draft.HasAny(top + "switches") ? [EntryStep.Adjust] : Array.Empty<EntryStep>(),
            .. draft.Rows(DraftKey.Of(DraftKey.Visit, "samples")).Count > 0 ? [EntryStep.Samples] : Array.Empty<EntryStep>(),
        ];
    }

    internal static bool IsSample(PlannedTest test) => Biology.Contains(test.Key.Test);

    private static List<PlannedTest> TestsOf(
        WaterSystem system, Programme? programme, FirmSetUp firm, List<(DateTime Utc, VisitedSystem System)> visits, VisitDraft draft)
    {
        var recordOnly = system.Kind != SystemKind.OpenRecirculating;
        var probed = recordOnly ? [] : system.Probes.Select(p => p.Of switch
        {
            ProbeKind.Ph => TestCodes.Ph,
            ProbeKind.Orp => TestCodes.Orp,
            _ => TestCodes.Conductivity,
        }).ToList();
        var keys = new List<ReadingKey>();
        void Add(string at, string test, ReadingSource? source = null)
        {
            // The probes' own displays and references have their place in the steps before.
            var atProbe = at == SamplePoints.Tower && probed.Contains(test);
            if (!atProbe && !keys.Exists(k => k.At == at && k.Test == test))
            {
                keys.Add(new ReadingKey(at, test, source));
            }
        }

        if (!recordOnly)
        {
            Add(SamplePoints.MakeUp, TestCodes.Conductivity, ReadingSource.Reference);
        }

        foreach (var range in programme?.Ranges ?? [])
        {
            Add(range.At, range.Test, SourceOf(range.Test));
        }

        foreach (var reading in visits.TakeLast(3).SelectMany(v => v.System.Readings))
        {
            Add(reading.At, reading.Test, reading.Source is ReadingSource.Controller ? null : reading.Source);
        }

        if (keys.Count <= 1 && !recordOnly)
        {
            foreach (var test in Usual)
            {
                Add(SamplePoints.Tower, test);
            }
        }

        if (!recordOnly)
        {
            Add(SamplePoints.Tower, TestCodes.DipSlide);
        }

        var list = DraftKey.Of(DraftKey.Systems, system.Code, "readings");
        foreach (var key in draft.PartsUnder(list).Select(ReadingKey.Parse).OfType<ReadingKey>())
        {
            var follows = draft.Text(DraftKey.Under(key.In(system.Code), "follows")).Length > 0;
            if (!follows && !keys.Contains(key))
            {
                keys.RemoveAll(k => k.At == key.At && k.Test == key.Test && key.Number == 1 && !draft.HasAny(k.In(system.Code)));
                keys.Add(key);
            }
        }

        return
        [
            .. keys.Select(key => (key, Info: TestCatalogue.Find(key.Test, firm)))
                .Where(pair => pair.Info is not null)
                .OrderBy(pair => pair.key.At == SamplePoints.MakeUp ? 0 : 1)
                .Select(pair => new PlannedTest(pair.key, pair.Info!, programme?.Ranges.FirstOrDefault(r => r.At == pair.key.At && r.Test == pair.key.Test), ModeOf(pair.key, visits))),
        ];
    }

    // The kit of last time is most likely the kit of today.
    private static string ModeOf(ReadingKey key, List<(DateTime Utc, VisitedSystem System)> visits)
    {
        var last = visits.SelectMany(v => v.System.Readings).LastOrDefault(r => r.At == key.At && r.Test == key.Test && (key.Source is null || r.Source == key.Source) && r.NotTaken is null);
        return last switch
        {
            { Drops: not null } => "drops",
            { Method: ReadingMode.Comparator } => "comparator",
            _ => string.Empty,
        };
    }

    private static ReadingSource? SourceOf(string test) => test is TestCodes.ColonyCount or TestCodes.Legionella ? ReadingSource.Lab : null;
}
