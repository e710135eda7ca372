using LogBook.Domain.Assessments;
using LogBook.Domain.Clocks;
using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Intervals;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Programmes;
using LogBook.Domain.Rounds;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Estimates;

/// <summary>
/// What one visit and those before it let us work out. Looks backwards only: a later visit never changes it, so a replay keeps
/// it. Visits are linked by <see cref="Previous"/>. Parts are worked out when first asked for and then kept; not for use by
/// several threads at once.
/// </summary>
public sealed class VisitFacts
{
    // Rain, or a fill with other water, thins a tower; to half its make-up it does not.
    private const double ThinnestShare = 0.6;

    private TestResult[]? _tests;
    private TestResult[]? _testsBefore;
    private EnteredValues? _entered;
    private EnteredValues? _enteredBefore;
    private IReadOnlyList<MeterFacts>? _meters;
    private IReadOnlyList<DrumFacts>? _drums;
    private IReadOnlyList<ProbeFacts>? _probes;
    private IReadOnlyList<ProductUse>? _productUse;
    private IReadOnlyList<RunOut>? _runOut;
    private IReadOnlyList<PlannedDosing>? _plannedDosing;
    private IReadOnlyList<PumpOutputs>? _pumpOutputs;
    private CodeMemo<PumpPast> _pumpPasts;
    private CodeMemo<OwnUse> _ownUses;
    private CodeMemo<Estimate?> _useRatios;
    private CodeMemo<LevelScatter> _levelScatters;
    private IReadOnlyList<Figure>? _figures;
    private WaterFacts? _water;
    private CyclesFacts? _cycles;
    private BalanceFacts? _balance;
    private (IReadOnlyList<Rule> Rules, IReadOnlyList<Duty> Duties)? _duties;
    private Computed<BleedInterval>? _bleed;
    private BleedNormal? _bleedNormal;
    private MakeUpNormal? _makeUpNormal;
    private DepositNormal? _depositNormal;
    private double? _fadingDays;
    private (bool Known, Reason? Reason) _unsettled;
    private LastSetting[]? _settingsLeft;
    private (Programme? Programme, LastSetting[] Read)? _controller;
    private CodeMemo<TestResult?> _tower;
    private CodeMemo<TestResult?> _makeUp;
    private CodeMemo<TestResult?> _newest;
    private CodeMemo<Reading[]> _readings;
    private CodeMemo<VisitFacts?> _previousWith;
    private CodeMemo<DateTime?> _lastDone;
    private IReadOnlyList<SettingsComparison>? _settingsCompared;
    private DateTime? _lastKnown;
    private Estimate? _evaporationPerHour;
    private (bool Known, Estimate? Cycles) _namedCycles;
    private CodeMemo<Computed<Estimate>> _makeUpMeans;
    private CodeMemo<(VisitFacts? Since, Computed<Estimate> Hours)> _hours;
    private CodeMemo<ProbeDrift> _probeDrifts;
    private IReadOnlyList<SignClue>? _signs;
    private bool? _isDoubted;

    /// <summary>Makes the facts of a visit.</summary>
    /// <param name="history">Set-up, site and programmes of the system; its visits are not looked at.</param>
    /// <param name="visit">The visit as known.</param>
    /// <param name="previous">Facts of the visit before it, or null for the first.</param>
    public VisitFacts(SystemHistory history, SystemVisit visit, VisitFacts? previous)
    {
        History = history;
        Visit = visit;
        Previous = previous;
        Place = previous is null ? 0 : previous.Place + 1;
        First = previous is null ? this : previous.First;
        Day = history.DayOf(visit.At);
        Programme = history.ProgrammeOn(Day);
    }

    /// <summary>Set-up, site and programmes; its visits may be later than this one and are not to be read.</summary>
    public SystemHistory History { get; }

    /// <summary>The visit.</summary>
    public SystemVisit Visit { get; private set; }

    /// <summary>The visit before, or null.</summary>
    public VisitFacts? Previous { get; }

    /// <summary>The first visit of all.</summary>
    internal VisitFacts First { get; }

    /// <summary>Moment at which the visit or the last of its results became known, UTC.</summary>
    internal DateTime LastKnown
    {
        get
        {
            if (_lastKnown is not { } last)
            {
                last = Visit.KnownFrom;
                foreach (var reading in Record.Readings)
                {
                    last = reading.ResultAt is { } result && result.Utc > last ? result.Utc : last;
                }

                _lastKnown = last;
            }

            return last;
        }
    }

    /// <summary>Name of a part of an uncertainty that only this visit has, as one string object: names are compared often.</summary>
    internal string PartName => field ??= $"visit:{Visit.Visit.Id}";

    /// <summary>How many visits were before it.</summary>
    internal int Place { get; }

    /// <summary>Day of the visit in the site's zone.</summary>
    public DateOnly Day { get; }

    /// <summary>Programme in force on the day, or null.</summary>
    public Programme? Programme { get; }

    /// <summary>Feeds of the programme in force; none without one.</summary>
    internal IReadOnlyList<Feed> FeedsInForce => Programme?.Feeds ?? [];

    /// <summary>Tests of the tower water for which the programme in force has a range.</summary>
    internal TowerTests TowerTests => History.TowerTestsOf(Programme);

    /// <summary>Test results with a number, as entered.</summary>
    public IReadOnlyList<TestResult> Tests
    {
        get
        {
            if (_tests is null)
            {
                _tests = ReadingEstimates.AllOf(History, Visit, _testsBefore ?? []);
                _testsBefore = null;
            }

            return _tests;
        }
    }

    /// <summary>Signs that the record was copied or made up.</summary>
    internal IReadOnlyList<SignClue> Signs => _signs ??= SecondLookSigns.Of(this, History.Firm.Engine.Thresholds);

    /// <summary>
    /// Whether the record is no evidence of what the plant does: two signs, or one on the visit after such a one by the same person.
    /// </summary>
    internal bool IsDoubted => _isDoubted ??= SecondLookSigns.Suffice(Signs)
        || (Signs.Count > 0 && Previous is { IsDoubted: true } last && FeedParts.Same(last.Visit.Visit.Technician, Visit.Visit.Technician));

    /// <summary>Water meters read.</summary>
    public IReadOnlyList<MeterFacts> Meters => _meters ??= MeterFacts.Of(this);

    /// <summary>Drums read or filled.</summary>
    public IReadOnlyList<DrumFacts> Drums => _drums ??= DrumFacts.Of(this);

    /// <summary>Conductivity probes compared.</summary>
    public IReadOnlyList<ProbeFacts> Probes => _probes ??= ProbeFacts.Of(this);

    /// <summary>Water counted since the last reading.</summary>
    public WaterFacts Water => _water ??= WaterFacts.Of(this);

    /// <summary>Cycles by every route.</summary>
    public CyclesFacts Cycles => _cycles ??= CyclesFacts.Of(this);

    /// <summary>Water balance of the interval.</summary>
    public BalanceFacts Balance => _balance ??= BalanceFacts.Of(this);

    /// <summary>Bleed and liquid loss over the stretch of about a week or more that ends with the visit.</summary>
    public Computed<BleedInterval> Bleed => _bleed ??= BleedInterval.Of(this);

    /// <summary>What was known before this visit of the system's usual loss for the hours its bleed is open.</summary>
    public BleedNormal BleedNormal => _bleedNormal ??= Previous is null ? BleedNormal.None : Previous.BleedNormal.After(Previous);

    /// <summary>What was known before this visit of the make-up water.</summary>
    public MakeUpNormal MakeUpNormal => _makeUpNormal ??= Previous is null ? MakeUpNormal.None : Previous.MakeUpNormal.After(Previous);

    /// <summary>What was known before this visit of the system's usual ratios of scaling to conservative ions.</summary>
    public DepositNormal DepositNormal => _depositNormal ??= Previous is null ? DepositNormal.None : Previous.DepositNormal.After(Previous);

    /// <summary>Product used against expected.</summary>
    public IReadOnlyList<ProductUse> ProductUse => _productUse ??= Estimates.ProductUse.Of(this);

    /// <summary>Run-out of the drums.</summary>
    public IReadOnlyList<RunOut> RunOuts => _runOut ??= RunOut.Of(this);

    /// <summary>Output of the feed pumps by their drums.</summary>
    public IReadOnlyList<PumpOutputs> PumpOutputs => _pumpOutputs ??= Estimates.PumpOutputs.Of(this);

    /// <summary>Calendar doses against hours and drum since the last visit.</summary>
    internal IReadOnlyList<PlannedDosing> PlannedDosing => _plannedDosing ??= Estimates.PlannedDosing.Of(this);

    /// <summary>Settings as found against as last left.</summary>
    internal IReadOnlyList<SettingsComparison> SettingsCompared => _settingsCompared ??= SettingsComparison.Of(this);

    /// <summary>Days in which the present water fades to 1/e.</summary>
    public double FadingDays => _fadingDays ??= Settling.FadingDays(this);

    /// <summary>Why the state of the water tells nothing about steady running, or null when it does.</summary>
    public Reason? Unsettled
    {
        get
        {
            if (!_unsettled.Known)
            {
                _unsettled = (true, Settling.Of(this));
            }

            return _unsettled.Reason;
        }
    }

    /// <summary>Figures of the visit and of the interval that ends with it.</summary>
    public IReadOnlyList<Figure> Figures => _figures ??= VisitFigures.Of(this);

    /// <summary>Code of the output that drives the bleed, or null.</summary>
    public string? BleedOutput
    {
        get
        {
            foreach (var output in History.Outputs)
            {
                if (output.Drives == OutputDrives.Bleed)
                {
                    return output.Code;
                }
            }

            return null;
        }
    }

    /// <summary>Mean evaporation of the stretch of <see cref="Bleed"/>, L/h under the unit L, or null where it is not known.</summary>
    internal Estimate? EvaporationPerHour => Bleed is { HasValue: true, Value: var stretch }
        ? _evaporationPerHour ??= stretch.MakeUpPerDay.Minus(stretch.LossPerDay).Scaled(1 / 24.0, "L")
        : null;

    /// <summary>Cycles whose random part bears the name of the visit, see <see cref="BalanceFacts"/>; null where they tell nothing.</summary>
    internal Estimate? NamedCycles
    {
        get
        {
            if (!_namedCycles.Known)
            {
                _namedCycles = (true, BalanceFacts.Named(this));
            }

            return _namedCycles.Cycles;
        }
    }

    /// <summary>Results as the checks of an entry see them.</summary>
    internal EnteredValues Entered
    {
        get
        {
            if (_entered is null)
            {
                _entered = EnteredValues.Of(this, _enteredBefore);
                _enteredBefore = null;
            }

            return _entered;
        }
    }

    /// <summary>Settings as this visit and those before it left them.</summary>
    internal LastSetting[] SettingsLeft
    {
        get
        {
            // From the first visit on that does not know it yet, so that a long history does not pile up calls.
            for (var unknown = FirstUnknown(); _settingsLeft is null; unknown = FirstUnknown())
            {
                unknown._settingsLeft = Estimates.SettingsLeft.After(unknown);
            }

            return _settingsLeft;
        }
    }

    /// <summary>The programme as the controller holds it, with the settings that make it.</summary>
    internal (Programme? Programme, LastSetting[] Read) Controller => _controller ??= ControllerPlan.Of(this, Previous?._controller);

    /// <summary>What a rule that reads counts among much else said of this visit last, and by which thresholds.</summary>
    internal (FindingThresholds? By, List<Verdict>? Verdicts) Suspects { get; set; }

    /// <summary>What was found and done.</summary>
    internal VisitedSystem Record => Visit.Record;

    /// <summary>
    /// Takes in results of counts, of this visit or of one before it: no balance, no drum and no probe depends on a count, so
    /// what is worked out already stays.
    /// </summary>
    /// <param name="visit">The visit with what is known now.</param>
    internal void TakeCounts(SystemVisit visit)
    {
        if (!ReferenceEquals(visit, Visit))
        {
            // What stands in both is worked out already.
            (_testsBefore, _enteredBefore) = (_tests ?? _testsBefore, _entered ?? _enteredBefore);
            (_tests, _entered, _tower, _makeUp, _readings, _newest, _lastKnown) = (null, null, default, default, default, default, null);
        }

        _duties = null;
        Visit = visit;
    }

    /// <summary>Clocks that run on a day on or after this visit.</summary>
    /// <param name="day">Day in the site's zone.</param>
    /// <returns>The duties by the rules in force on that day.</returns>
    public IReadOnlyList<Duty> DutiesOn(DateOnly day)
    {
        // Asked for every day: what a duty runs from changes only with the rules in force.
        var rules = RulesInForce.Of(History, day);
        if (_duties is not { } kept || kept.Rules != rules)
        {
            _duties = kept = (rules, Clocks.Duties.Of(this, rules));
        }

        return kept.Duties;
    }

    /// <summary>This visit and those before it, latest first.</summary>
    /// <returns>The visits.</returns>
    public IEnumerable<VisitFacts> Back()
    {
        for (var visit = this; visit is not null; visit = visit.Previous)
        {
            yield return visit;
        }
    }

    /// <summary>Result of a test of the tower water as found: a hand instrument before a kit, a laboratory and site staff; never the controller's display.</summary>
    /// <param name="test">Code of the test.</param>
    /// <returns>The result, or null when it was not measured.</returns>
    public TestResult? TowerReading(string test) => _tower.TryGet(test, out var kept)
        ? kept
        : _tower.Keep(test, AreExchanged(test) ? null : OfTower(test));

    /// <summary>Result of a test of the make-up water (behind the softener where only that was tested).</summary>
    /// <param name="test">Code of the test.</param>
    /// <returns>The result, or null when it was not measured.</returns>
    public TestResult? MakeUpReading(string test) => _makeUp.TryGet(test, out var kept)
        ? kept
        : _makeUp.Keep(test, AreExchanged(test) ? null : OfMakeUp(test));

    /// <summary>Readings of a test, with or without a number, in their order.</summary>
    /// <param name="test">Code of the test.</param>
    internal Reading[] ReadingsOf(string test)
    {
        if (_readings.TryGet(test, out var kept))
        {
            return kept;
        }

        var all = Record.Readings;
        List<Reading>? of = null;
        for (var i = 0; i < all.Count; i++)
        {
            if (FeedParts.Same(all[i].Test, test))
            {
                (of ??= []).Add(all[i]);
            }
        }

        return _readings.Keep(test, of is null ? [] : [.. of]);
    }

    /// <summary>When a task was last done, up to this visit, UTC, or null: asked for every day, it changes with the visits that do it.</summary>
    /// <param name="task">Task of a rule.</param>
    internal DateTime? LastDone(string task)
    {
        if (_lastDone.TryGet(task, out var kept))
        {
            return kept;
        }

        DateTime? done = null;
        for (var at = this; at is not null && done is null; at = at.Previous)
        {
            if (at._lastDone.TryGet(task, out var earlier))
            {
                done = earlier;
                break;
            }

            done = Tasks.DoneAt(task, at.Visit.Visit, at.Record);
        }

        return _lastDone.Keep(task, done);
    }

    /// <summary>The last visit before this one that has a reading of a test, with or without a number, or null: counts and coupons are rare, and a look back over a year need not read every visit.</summary>
    /// <param name="test">Code of the test.</param>
    internal VisitFacts? PreviousWith(string test)
    {
        if (_previousWith.TryGet(test, out var kept))
        {
            return kept;
        }

        var at = Previous;
        while (at is not null && at.ReadingsOf(test).Length == 0)
        {
            // A result that comes in later stands in the record from the beginning, as one that is to come: what is kept stays true.
            at = at._previousWith.TryGet(test, out var earlier) ? earlier : at.Previous;
        }

        return _previousWith.Keep(test, at);
    }

    /// <summary>This visit where it has a reading of a test, else the last one before it that has.</summary>
    /// <param name="test">Code of the test.</param>
    internal VisitFacts? LatestWith(string test) => ReadingsOf(test).Length > 0 ? this : PreviousWith(test);

    /// <summary>The result of a test whose sample was taken last; the first of those taken together.</summary>
    /// <param name="test">Code of the test.</param>
    internal TestResult? Newest(string test)
    {
        if (_newest.TryGet(test, out var newest))
        {
            return newest;
        }

        foreach (var result in Tests)
        {
            if (result.Reading.Test.Equals(test, StringComparison.OrdinalIgnoreCase) && (newest is null || result.TakenAt > newest.TakenAt))
            {
                newest = result;
            }
        }

        return _newest.Keep(test, newest);
    }

    /// <summary>Fading mean of the make-up that fed the present water.</summary>
    /// <param name="test">Code of the test.</param>
    /// <returns>The mean, or why there is none.</returns>
    public Computed<Estimate> MakeUp(string test) => _makeUpMeans.TryGet(test, out var kept) ? kept : _makeUpMeans.Keep(test, MakeUpMean.Of(this, test));

    /// <summary>A water meter at this visit.</summary>
    /// <param name="code">Code of the meter.</param>
    /// <returns>Its facts, or null when it was not read.</returns>
    public MeterFacts? Meter(string code)
    {
        var meters = Meters;
        for (var i = 0; i < meters.Count; i++)
        {
            if (meters[i].Meter.Code.Equals(code, StringComparison.OrdinalIgnoreCase))
            {
                return meters[i];
            }
        }

        return null;
    }

    /// <summary>A drum at this visit.</summary>
    /// <param name="code">Code of the drum.</param>
    /// <returns>Its facts, or null when it was not read.</returns>
    public DrumFacts? Drum(string code)
    {
        var drums = Drums;
        for (var i = 0; i < drums.Count; i++)
        {
            if (drums[i].Drum.Code.Equals(code, StringComparison.OrdinalIgnoreCase))
            {
                return drums[i];
            }
        }

        return null;
    }

    /// <summary>A probe at this visit; the first of several comparisons.</summary>
    /// <param name="code">Code of the probe.</param>
    /// <returns>Its facts, or null when it was not compared.</returns>
    internal ProbeFacts? Probe(string code)
    {
        var probes = Probes;
        for (var i = 0; i < probes.Count; i++)
        {
            if (FeedParts.Same(probes[i].Probe, code))
            {
                return probes[i];
            }
        }

        return null;
    }

    /// <summary>A meter reading as entered.</summary>
    /// <param name="code">Code of the meter.</param>
    /// <returns>The reading, or null.</returns>
    public MeterReading? MeterReading(string code)
    {
        for (var i = 0; i < Record.Meters.Count; i++)
        {
            if (Record.Meters[i].Meter.Equals(code, StringComparison.OrdinalIgnoreCase))
            {
                return Record.Meters[i];
            }
        }

        return null;
    }

    /// <summary>Hours an output ran since its last reading.</summary>
    /// <param name="output">Code of the output.</param>
    /// <returns>Hours, or why they are not known.</returns>
    public Computed<Estimate> HoursRun(string output) => Hours(output).Hours;

    /// <summary>Visit of the last reading of an output's hours before this one.</summary>
    /// <param name="output">Code of the output.</param>
    /// <returns>The visit, or null.</returns>
    public VisitFacts? HoursSince(string output) => Hours(output).Since;

    /// <summary>Straight line through the errors of a probe up to this visit: kept, because several rules ask for it.</summary>
    /// <param name="probe">One of <see cref="Probes"/>.</param>
    internal ProbeDrift Drift(ProbeFacts probe)
    {
        // A probe compared twice at one visit has two lines, of which only the first is kept.
        var compared = 0;
        for (var i = 0; i < Probes.Count; i++)
        {
            compared += FeedParts.Same(Probes[i].Probe, probe.Probe) ? 1 : 0;
        }

        if (compared > 1)
        {
            return ProbeDrift.Of(this, probe);
        }

        return _probeDrifts.TryGet(probe.Probe, out var kept) ? kept : _probeDrifts.Keep(probe.Probe, ProbeDrift.Of(this, probe));
    }

    /// <summary>What earlier visits tell about a pump: kept, because every later visit asks for it again.</summary>
    /// <param name="pump">The pump.</param>
    /// <returns>Its past up to this visit.</returns>
    internal PumpPast PumpPast(Pump pump) => _pumpPasts.TryGet(pump.Code, out var kept) ? kept : _pumpPasts.Keep(pump.Code, Estimates.PumpPast.Of(this, pump));

    /// <summary>What the system usually takes from a drum: kept, because every later visit asks for it again.</summary>
    /// <param name="drum">Code of the drum.</param>
    /// <returns>The baseline up to this visit.</returns>
    internal OwnUse OwnUse(string drum) => _ownUses.TryGet(drum, out var kept) ? kept : _ownUses.Keep(drum, Estimates.OwnUse.Of(this, drum));

    /// <summary>Used over expected of the product that a test follows, of the first drum that holds it: kept, because many later visits look back at it.</summary>
    /// <param name="test">Code of the test.</param>
    /// <returns>The ratio, or null where it is not known.</returns>
    internal Estimate? UseRatio(string test)
    {
        if (_useRatios.TryGet(test, out var kept))
        {
            return kept;
        }

        var uses = ProductUse;
        for (var i = 0; i < uses.Count; i++)
        {
            if (test.Equals(uses[i].Drum.Product?.Residual?.Test, StringComparison.OrdinalIgnoreCase))
            {
                return _useRatios.Keep(test, uses[i].Ratio.HasValue ? uses[i].Ratio.Value : null);
            }
        }

        return _useRatios.Keep(test, null);
    }

    /// <summary>How far the levels of a drum scatter: kept, because every later visit asks for it again.</summary>
    /// <param name="drum">Code of the drum.</param>
    /// <returns>The scatter up to this visit.</returns>
    internal LevelScatter LevelScatter(string drum) => _levelScatters.TryGet(drum, out var kept) ? kept : _levelScatters.Keep(drum, Estimates.LevelScatter.Of(this, drum));

    private (VisitFacts? Since, Computed<Estimate> Hours) Hours(string output)
    {
        if (_hours.TryGet(output, out var kept))
        {
            return kept;
        }

        var since = Previous;
        while (since is not null && since.HoursReading(output) is null)
        {
            if (since._hours.TryGet(output, out var before))
            {
                since = before.Since;
                break;
            }

            since = since.Previous;
        }

        var hours = HoursReading(output) is not { } now ? Computed<Estimate>.None(IntervalReasons.NotRead)
            : since is null ? Computed<Estimate>.None(IntervalReasons.NoEarlierReading)
            : HoursBetween.Of(since.HoursReading(output)!, now, (Visit.At - since.Visit.At).TotalHours);
        return _hours.Keep(output, (since, hours));
    }

    private HoursReading? HoursReading(string output)
    {
        for (var i = 0; i < Record.HoursRun.Count; i++)
        {
            if (Record.HoursRun[i].Output.Equals(output, StringComparison.OrdinalIgnoreCase))
            {
                return Record.HoursRun[i];
            }
        }

        return null;
    }

    private VisitFacts FirstUnknown()
    {
        var visit = this;
        while (visit.Previous is { _settingsLeft: null } previous)
        {
            visit = previous;
        }

        return visit;
    }

    private TestResult? OfTower(string test) => Preferred(test, SamplePoints.Tower) ?? Preferred(test, SamplePoints.Bleed);

    private TestResult? OfMakeUp(string test) => Preferred(test, SamplePoints.MakeUp) ?? Preferred(test, SamplePoints.Softened);

    // Evaporation leaves what is dissolved: tower water far thinner than its make-up was written in the wrong fields, and neither counts.
    private bool AreExchanged(string test) =>
        (test.Equals(TestCodes.Conductivity, StringComparison.OrdinalIgnoreCase) || test.Equals(TestCodes.Chloride, StringComparison.OrdinalIgnoreCase))
        && OfTower(test) is { Value: var tower } && OfMakeUp(test) is { Value: var makeUp } && tower.Value < ThinnestShare * makeUp.Value;

    private TestResult? Preferred(string test, string at)
    {
        TestResult? best = null;
        var bestRank = int.MaxValue;
        var tests = Tests;
        for (var i = 0; i < tests.Count; i++)
        {
            var reading = tests[i].Reading;
            if (reading.Source != ReadingSource.Controller
                && reading.Phase != ReadingPhase.Left
                && reading.Test.Equals(test, StringComparison.OrdinalIgnoreCase)
                && reading.At.Equals(at, StringComparison.OrdinalIgnoreCase)
                && Rank(reading) is var rank
                && rank < bestRank)
            {
                (best, bestRank) = (tests[i], rank);
            }
        }

        return best;
    }

    // What was found before what was measured again, then by source.
    private static int Rank(Reading reading) => (reading.Phase == ReadingPhase.Again ? 4 : 0) + reading.Source switch
    {
        ReadingSource.Reference => 0,
        ReadingSource.Kit or null => 1,
        ReadingSource.Lab => 2,
        _ => 3,
    };
}
