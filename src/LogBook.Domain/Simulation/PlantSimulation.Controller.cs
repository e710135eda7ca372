using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Simulation;

/// <content>What the controller decides, and when its next decision falls.</content>
public sealed partial class PlantSimulation
{
    // Below any display's last digit, above the rounding of a root.
    private const double Hair = 1e-6;
    private const double TimeHair = 1e-9;
    private const double OrpHair = 1e-3;
    private const double PhHair = 1e-6;

    private readonly List<FeedState> _feeds = [];
    private readonly List<FeedState> _waiting = [];
    private readonly List<PlantEvent> _log = [];
    private readonly HashSet<string> _alarms = new(StringComparer.OrdinalIgnoreCase);
    private OutputState? _bleed;
    private Programme _settings;
    private bool _bleedCalls;
    private double _switchAt = double.NaN;
    private double _bleedSince;
    private FeedState? _dose;
    private DosePhase _phase;
    private double _phaseEnd;
    private double _clockOffMin;
    private int _weekOff;

    /// <summary>Settings in the controller, whatever the programme of record says.</summary>
    public Programme Settings
    {
        get => _settings;
        set
        {
            _settings = value;
            TakeSettings();
        }
    }

    /// <summary>Controller clock minus true time, min.</summary>
    public double ClockOffMin
    {
        get => _clockOffMin;
        set
        {
            _clockOffMin = value;
            PlanStarts();
        }
    }

    /// <summary>Weeks the controller counts too many.</summary>
    public int WeekOff
    {
        get => _weekOff;
        set
        {
            _weekOff = value;
            PlanStarts();
        }
    }

    /// <summary>Whether <see cref="Log"/> is written; off at first, since 18 months make tens of thousands of entries.</summary>
    public bool KeepsLog { get; set; }

    /// <summary>What happened while <see cref="KeepsLog"/> was on, in order.</summary>
    public IReadOnlyList<PlantEvent> Log => _log;

    /// <summary>Alarms since they were last cleared: kind and output.</summary>
    public IReadOnlyCollection<string> Alarms => _alarms;

    /// <summary>Week of the dose plan that the controller shows, from 1.</summary>
    public int ProgrammeWeek => WeekOf(DateOnly.FromDateTime(LocalAt(_t).AddMinutes(ClockOffMin)));

    /// <summary>Acknowledges all alarms; a feed that its time limit had stopped may run again.</summary>
    public void ClearAlarms()
    {
        _alarms.Clear();
        foreach (var feed in _feeds)
        {
            feed.RunH = 0;
        }
    }

    /// <summary>Sets the switch of an output.</summary>
    /// <param name="output">Its code.</param>
    /// <param name="position">New position.</param>
    public void SetSwitch(string output, SwitchPosition position) => _outputs[output].Switch = position switch
    {
        SwitchPosition.ForcedOn => SwitchState.ForcedOn,
        SwitchPosition.ForcedOff => SwitchState.ForcedOff,
        _ => SwitchState.Automatic,
    };

    /// <summary>Position of the switch of an output.</summary>
    /// <param name="output">Its code.</param>
    /// <returns>Position.</returns>
    public SwitchPosition SwitchOf(string output) => _outputs[output].Switch switch
    {
        SwitchState.ForcedOn => SwitchPosition.ForcedOn,
        SwitchState.ForcedOff => SwitchPosition.ForcedOff,
        _ => SwitchPosition.Automatic,
    };

    private void TakeSettings()
    {
        _feeds.Clear();
        _waiting.Clear();
        _dose = null;
        _phase = DosePhase.None;
        _bleedCalls = false;
        _switchAt = double.NaN;
        foreach (var feed in _settings.Feeds)
        {
            var target = feed.Output is { } code
                ? _outputs.GetValueOrDefault(code)
                : _outputOrder.Find(o => o.Drum is { } d && Same(d.Drum.Code, feed.Drum));
            target ??= feed.Mode == FeedMode.Feeder ? FeederOf(feed) : null;
            if (target is not null)
            {
                _feeds.Add(new FeedState { Feed = feed, Target = target, NextAtL = CountedL + (feed.EveryL ?? 0) });
            }
        }

        PlanStarts();
    }

    /// <summary>A feeder of solid product: no output of the controller, no pump.</summary>
    private OutputState? FeederOf(Feed feed)
    {
        if (!_drums.TryGetValue(feed.Drum, out var drum))
        {
            return null;
        }

        if (!_outputs.TryGetValue(feed.Drum, out var state))
        {
            state = new OutputState { Code = feed.Drum, Drum = drum, FeederLPerH = _model.FeederKgPerH / (drum.Known?.DensityKgPerL ?? 1) };
            _outputs[feed.Drum] = state;
            _outputOrder.Add(state);
        }

        return state;
    }

    private void PlanStarts()
    {
        foreach (var feed in _feeds.Where(f => f.Feed.Mode == FeedMode.DosePlan))
        {
            feed.NextStart = StartAfter(feed.Feed, _t);
        }
    }

    private int WeekOf(DateOnly day)
    {
        var weeks = _settings.PlanWeeks ?? 4;
        var anchor = _settings.WeekOneFrom ?? _settings.From.AddDays(-(((int)_settings.From.DayOfWeek + 6) % 7));
        var passed = (int)Math.Floor((day.DayNumber - anchor.DayNumber) / 7.0) + WeekOff;
        return (((passed % weeks) + weeks) % weeks) + 1;
    }

    private double StartAfter(Feed feed, double after)
    {
        var clock = LocalAt(after).AddMinutes(ClockOffMin);
        var day = DateOnly.FromDateTime(clock).AddDays(-1);
        for (var i = 0; i < (7 * (_settings.PlanWeeks ?? 4)) + 8; i++, day = day.AddDays(1))
        {
            if ((feed.Weeks.Count > 0 && !feed.Weeks.Contains(WeekOf(day)))
                || (feed.Days.Count > 0 && !feed.Days.Contains((Weekday)(((int)day.DayOfWeek + 6) % 7))))
            {
                continue;
            }

            foreach (var start in feed.Starts.Order(StringComparer.Ordinal))
            {
                var at = HoursOfLocal(day.ToDateTime(TimeOnly.MinValue).AddMinutes(OperationCalendar.Minutes(start) - ClockOffMin));
                if (at > after + TimeHair)
                {
                    return at;
                }
            }
        }

        return double.PositiveInfinity;
    }

    /// <summary>A wall time that the clock skips counts at the jump, one that comes twice counts the first time: a start runs once.</summary>
    private double HoursOfLocal(DateTime local)
    {
        while (_zone.IsInvalidTime(local))
        {
            local = local.AddMinutes(15);
        }

        var offset = _zone.IsAmbiguousTime(local) ? _zone.GetAmbiguousTimeOffsets(local).Max() : _zone.GetUtcOffset(local);
        return HoursOf(DateTime.SpecifyKind(local - offset, DateTimeKind.Utc));
    }

    private void Decide()
    {
        var flow = _running || _flowBridged;
        foreach (var drum in _drumOrder)
        {
            var empty = drum.UsableL <= 1e-9 && drum.DrawnL > 0;
            if (empty && !drum.EmptyNoted)
            {
                Note(PlantEventKind.DrumEmpty, drum.Drum.Code);
            }

            drum.EmptyNoted = empty;
        }

        DecideBleedCall();
        DecideDose(flow);
        DecideValve(flow);
        foreach (var output in _outputOrder)
        {
            output.Wanted = false;
        }

        foreach (var feed in _feeds)
        {
            DecideFeed(feed, flow);
            feed.Target.Wanted |= feed.Wants;
        }

        foreach (var output in _outputOrder)
        {
            if (!ReferenceEquals(output, _bleed))
            {
                output.On = output.Switch == SwitchState.ForcedOn || (output.Switch == SwitchState.Automatic && output.Wanted);
            }
        }
    }

    private void DecideBleedCall()
    {
        if (_settings.SetPointUsPerCm is not { } setPoint)
        {
            _bleedCalls = false;
            return;
        }

        if (_switchAt <= _t + TimeHair)
        {
            _bleedCalls = !_bleedCalls;
            _switchAt = double.NaN;
        }

        var due = _bleedCalls ? Beyond(ShutsAt(setPoint), opening: false) : Beyond(setPoint, opening: true);
        if (!due)
        {
            _switchAt = double.NaN;
        }
        else if (double.IsNaN(_switchAt))
        {
            // A moving average of a steady ramp lags by half its length.
            _switchAt = _t + ((_settings.DisplayAverageSeconds ?? 0) / 7200);
            if (_switchAt <= _t + TimeHair)
            {
                _bleedCalls = !_bleedCalls;
                _switchAt = double.NaN;
            }
        }

        if (_settings.HighAlarmUsPerCm is > 0 and var high && DisplayUsPerCm > high && _alarms.Add("high conductivity"))
        {
            Note(PlantEventKind.HighAlarm, _bleed?.Code ?? "");
        }

        if (_running && _settings.LowAlarmUsPerCm is > 0 and var low && DisplayUsPerCm < low && _alarms.Add("low conductivity"))
        {
            Note(PlantEventKind.LowAlarm, _bleed?.Code ?? "");
        }
    }

    private bool OnFall => _settings.BleedActs == BleedActs.OnFall;

    private double ShutsAt(double setPoint) =>
        OnFall ? setPoint + (_settings.DifferentialUsPerCm ?? 0) : setPoint - (_settings.DifferentialUsPerCm ?? 0);

    private bool Beyond(double threshold, bool opening) =>
        opening != OnFall ? DisplayUsPerCm >= threshold - Hair : DisplayUsPerCm <= threshold + Hair;

    private void DecideDose(bool flow)
    {
        foreach (var feed in _feeds)
        {
            if (feed.NextStart <= _t + TimeHair)
            {
                feed.NextStart = StartAfter(feed.Feed, _t);
                Note(PlantEventKind.DoseDue, feed.Output);
                if (!_waiting.Contains(feed) && !ReferenceEquals(_dose, feed))
                {
                    _waiting.Add(feed);
                }
            }
        }

        if (_phase == DosePhase.BleedDown
            && (_t >= _phaseEnd - TimeHair || (_dose!.Feed.BleedDownFirst?.ToUsPerCm is { } bottom && DisplayUsPerCm <= bottom + Hair)))
        {
            BeginFeeding();
        }

        if (_phase == DosePhase.Feeding && _t >= _phaseEnd - TimeHair)
        {
            _phase = DosePhase.Hold;
            _phaseEnd = _t + ((_dose!.Feed.HoldBleedShutMin ?? 0) / 60);
            Note(PlantEventKind.DoseEnded, _dose.Output);
        }

        if (_phase == DosePhase.Hold && _t >= _phaseEnd - TimeHair)
        {
            Note(PlantEventKind.HoldEnded, _dose!.Output);
            _phase = DosePhase.None;
            _dose = null;
        }

        if (_dose is null && flow && _waiting.Count > 0 && !Blocked(_waiting[0]))
        {
            _dose = _waiting[0];
            _waiting.RemoveAt(0);
            if (_dose.Feed.BleedDownFirst is { } down && (down.Minutes is > 0 || down.ToUsPerCm is > 0))
            {
                _phase = DosePhase.BleedDown;
                _phaseEnd = _t + ((down.Minutes ?? 24 * 60) / 60);
                Note(PlantEventKind.BleedDownStarted, _dose.Output);
                if (down.ToUsPerCm is { } to && DisplayUsPerCm <= to + Hair)
                {
                    BeginFeeding();
                }
            }
            else
            {
                BeginFeeding();
            }
        }
    }

    private void BeginFeeding()
    {
        _phase = DosePhase.Feeding;
        _phaseEnd = _t + ((_dose!.Feed.RunMinutes ?? 0) / 60);
        Note(PlantEventKind.DoseStarted, _dose.Output);
    }

    private bool Blocked(FeedState feed)
    {
        for (var i = 0; i < feed.Feed.WaitsFor.Count; i++)
        {
            if (_outputs.TryGetValue(feed.Feed.WaitsFor[i], out var other)
                && (other.On || ReferenceEquals(_dose?.Target, other) || _t < other.LastOn + ContactHours(other) - TimeHair))
            {
                return true;
            }
        }

        return false;
    }

    private static double ContactHours(OutputState output) => output.Drum?.Known?.ContactHours ?? 0;

    private void DecideValve(bool flow)
    {
        if (_bleed is not { } bleed)
        {
            return;
        }

        var held = _phase == DosePhase.Hold || (_phase == DosePhase.Feeding && _dose!.Feed.HoldBleedShutMin is > 0);
        var wants = flow && (_phase == DosePhase.BleedDown || (_bleedCalls && !held));
        var open = bleed.Switch == SwitchState.ForcedOn || (bleed.Switch == SwitchState.Automatic && wants);
        if (open && !bleed.On)
        {
            _bleedSince = _t;
            foreach (var feed in _feeds.Where(f => f.Feed.Mode == FeedMode.AlongsideBleed))
            {
                feed.RunH = 0;
            }

            Note(PlantEventKind.BleedOpened, bleed.Code);
        }
        else if (!open && bleed.On)
        {
            foreach (var feed in _feeds.Where(f => f.Feed.Mode == FeedMode.ShareOfLastBleed))
            {
                feed.OwedH = Math.Min((_t - _bleedSince) * (feed.Feed.SharePercent ?? 0) / 100, (feed.Feed.LongestFeedMin ?? double.PositiveInfinity) / 60);
            }

            Note(PlantEventKind.BleedShut, bleed.Code);
        }

        bleed.On = open;
        if (open && _settings.LongestBleedMin is > 0 and var longest && _t >= _bleedSince + (longest / 60) - TimeHair && _alarms.Add("long bleed"))
        {
            Note(PlantEventKind.LongBleed, bleed.Code);
        }
    }

    private void DecideFeed(FeedState state, bool flow)
    {
        var feed = state.Feed;
        var held = _phase == DosePhase.Feeding && feed.Mode != FeedMode.DosePlan && state.Target.Drum?.Known?.Becomes == Substance.Inhibitor && _dose!.Feed.InhibitorMeanwhile is InhibitorMeanwhile.Waits or InhibitorMeanwhile.Skips;
        var wants = false;
        switch (feed.Mode)
        {
            case FeedMode.ByMakeUpVolume:
                while (feed.EveryL is > 0 and var every && CountedL >= state.NextAtL - Hair)
                {
                    state.NextAtL += every;
                    state.OwedH += held || !flow ? 0 : (feed.RunSeconds ?? 0) / 3600;
                }

                wants = state.OwedH > TimeHair;
                break;
            case FeedMode.AlongsideBleed:
                var allowed = (feed.LongestFeedMin ?? double.PositiveInfinity) / 60;
                wants = _bleed is { On: true } && state.RunH < allowed - TimeHair;
                if (_bleed is { On: true } && !wants && _alarms.Add("long feed " + state.Output))
                {
                    Note(PlantEventKind.LongFeed, state.Output);
                }

                break;
            case FeedMode.FixedShare:
                wants = Turn(feed, out var since) && since < (feed.CycleMin / 60 * (feed.SharePercent ?? 0) / 100) - TimeHair;
                break;
            case FeedMode.ShareOfLastBleed:
                wants = state.OwedH > TimeHair && _bleed is not { On: true };
                break;
            case FeedMode.DosePlan:
                wants = ReferenceEquals(_dose, state) && _phase == DosePhase.Feeding;
                break;
            case FeedMode.ByOrp:
            case FeedMode.ByPh:
            case FeedMode.ByResidual:
                DecideMeasured(state);
                wants = state.Calls && state.RunH < ((feed.LongestFeedMin ?? double.PositiveInfinity) / 60) - TimeHair;
                if (state.Calls && !wants && _alarms.Add("long feed " + state.Output))
                {
                    Note(PlantEventKind.LongFeed, state.Output);
                }

                break;
            case FeedMode.Feeder:
                wants = _running;
                break;
            case FeedMode.ByHand:
            default:
                break;
        }

        state.Wants = wants && flow && !held && !Blocked(state);
    }

    private static bool IsMeasured(FeedMode mode) => mode is FeedMode.ByOrp or FeedMode.ByPh or FeedMode.ByResidual;

    private static bool Lowers(Feed feed) => (feed.Direction ?? (feed.Mode == FeedMode.ByPh ? FeedDirection.Down : FeedDirection.Up)) == FeedDirection.Down;

    /// <summary>A measured feed begins a differential away from its set point and ends at it.</summary>
    private void DecideMeasured(FeedState state)
    {
        var (reading, hair) = state.Feed.Mode switch
        {
            FeedMode.ByOrp => (OrpDisplayMv, OrpHair),
            FeedMode.ByPh => (Ph, PhHair),
            _ => (state.Target.Drum?.Known is { } product ? _c[(int)product.Becomes] : 0, Hair),
        };
        var setPoint = state.Feed.SetPoint ?? 0;
        var beyond = Lowers(state.Feed) ? reading - setPoint : setPoint - reading;
        if (!state.Calls && beyond >= (state.Feed.Differential ?? 0) - hair && beyond > hair)
        {
            state.Calls = true;
            state.RunH = 0;
        }
        else if (state.Calls && beyond <= hair)
        {
            state.Calls = false;
        }
    }

    /// <summary>The first moment up to <paramref name="end"/> at which a measured feed's reading reaches the limit it waits for.</summary>
    private double CrossingOfReading(FeedState state, double end)
    {
        var away = state.Calls ? 0 : state.Feed.Differential ?? 0;
        var limit = (state.Feed.SetPoint ?? 0) + (Lowers(state.Feed) ? away : -away);
        var flow = FlowNow();
        switch (state.Feed.Mode)
        {
            case FeedMode.ByPh:
                var acid = FeedOf(Substance.Acid);
                var alkalinity = AlkalinityAt(limit);
                return Root(end, dt => After(Substance.AlkalinityKept, dt, flow, 0) - After(Substance.CalciumKept, dt, flow, 0)
                    + After(Substance.Calcium, dt, flow, 0) - After(Substance.Acid, dt, flow, acid) - alkalinity);
            case FeedMode.ByOrp:
                var halogen = HalogenAt(limit - _orpError.At(_t));
                var rate = FeedOf(Substance.Halogen);
                return Root(end, dt => After(Substance.Halogen, dt, flow, rate) - halogen);
            default:
                if (state.Target.Drum?.Known is not { } product)
                {
                    return end;
                }

                var feed = FeedOf(product.Becomes);
                return Root(end, dt => After(product.Becomes, dt, flow, feed) - limit);
        }
    }

    /// <summary>Hours since the present turn of a fixed share began.</summary>
    private bool Turn(Feed feed, out double since)
    {
        since = 0;
        if (feed.CycleMin is not > 0)
        {
            return false;
        }

        var cycle = feed.CycleMin.Value / 60;
        since = Math.Max(0, _t - (Math.Floor((_t + TimeHair) / cycle) * cycle));
        return true;
    }

    private void CountHours(double dt)
    {
        foreach (var output in _outputOrder)
        {
            if (output.On)
            {
                output.Hours += dt;
                output.LastOn = _t + dt;
            }
        }

        foreach (var feed in _feeds)
        {
            if (feed.Wants && feed.Target.On)
            {
                feed.OwedH = Math.Max(0, feed.OwedH - dt);
                feed.RunH += dt;
            }
        }
    }

    /// <summary>The next moment at which something happens by time alone.</summary>
    private double NextTimer()
    {
        var next = double.PositiveInfinity;
        void At(double time)
        {
            if (time > _t + TimeHair && time < next)
            {
                next = time;
            }
        }

        if (!double.IsNaN(_switchAt))
        {
            At(_switchAt);
        }

        if (_phase != DosePhase.None)
        {
            At(_phaseEnd);
        }

        var makeUp = FlowNow().MakeUp;
        foreach (var feed in _feeds)
        {
            At(feed.NextStart);
            var running = feed.Wants && feed.Target.On;
            switch (feed.Feed.Mode)
            {
                case FeedMode.ByMakeUpVolume when _pulseShare > 0 && makeUp > 0:
                    At(_t + ((feed.NextAtL - CountedL) / (_pulseShare * makeUp)));
                    break;
                case FeedMode.AlongsideBleed or FeedMode.ByOrp or FeedMode.ByPh or FeedMode.ByResidual when running && feed.Feed.LongestFeedMin is > 0 and var longest:
                    At(_t + (longest / 60) - feed.RunH);
                    break;
                case FeedMode.FixedShare when Turn(feed.Feed, out var since):
                    At(_t - since + (feed.Feed.CycleMin!.Value / 60));
                    At(_t - since + (feed.Feed.CycleMin!.Value / 60 * (feed.Feed.SharePercent ?? 0) / 100));
                    break;
                default:
                    break;
            }

            if (running && feed.OwedH > TimeHair)
            {
                At(_t + feed.OwedH);
            }

            foreach (var code in feed.Feed.WaitsFor)
            {
                if (_outputs.TryGetValue(code, out var other))
                {
                    At(other.LastOn + ContactHours(other));
                }
            }
        }

        foreach (var output in _outputOrder)
        {
            if (output is { On: true, Drum: { } drum } && drum.UsableL > 0 && PumpFlow(output) is > 0 and var flow)
            {
                At(_t + (drum.UsableL / flow));
            }
        }

        if (_bleed is { On: true } && _settings.LongestBleedMin is > 0 and var allowed)
        {
            At(_bleedSince + (allowed / 60));
        }

        return next;
    }

    /// <summary>The first moment up to <paramref name="end"/> at which the display reaches a threshold the controller waits for.</summary>
    private double FirstCrossing(double end)
    {
        if (double.IsNaN(_switchAt) && _settings.SetPointUsPerCm is { } setPoint)
        {
            end = CrossingOfDisplay(end, _bleedCalls ? ShutsAt(setPoint) : setPoint);
        }

        if (_phase == DosePhase.BleedDown && _dose!.Feed.BleedDownFirst?.ToUsPerCm is { } to)
        {
            end = CrossingOfDisplay(end, to);
        }

        if (_model.DepositPerHour > 0 && double.IsFinite(_depositAbove))
        {
            var flow = FlowNow();
            end = Root(end, dt => After(Substance.Calcium, dt, flow, 0) - _depositAbove);
        }

        foreach (var feed in _feeds)
        {
            if (IsMeasured(feed.Feed.Mode))
            {
                end = CrossingOfReading(feed, end);
            }
        }

        return end;
    }

    /// <summary>Share of the excess calcium that deposits in an hour: none below the threshold, nor at it while calcium falls.</summary>
    private double DepositPerHour((double MakeUp, double Liquid) flow)
    {
        const int I = (int)Substance.Calcium;
        var above = _c[I] - _depositAbove;
        return above > Hair || (above >= -Hair && (flow.MakeUp * _makeUp[I]) - (flow.Liquid * _c[I]) > 0) ? _model.DepositPerHour : 0;
    }

    private double CrossingOfDisplay(double end, double threshold)
    {
        var flow = FlowNow();
        var factor = ProbeFactor;
        var inhibitor = FeedOf(Substance.Inhibitor);
        return Root(end, dt => (factor * Conductivity(
            After(Substance.Conductance, dt, flow, 0), After(Substance.Cycles, dt, flow, 0), After(Substance.Inhibitor, dt, flow, inhibitor))) - threshold);
    }

    /// <summary>First sign change of a function that is monotone over one segment, as an absolute time; <paramref name="end"/> when there is none.</summary>
    private double Root(double end, Func<double, double> distance)
    {
        var high = end - _t;
        var atLow = distance(0);
        var atHigh = distance(high);
        if (Math.Abs(atLow) <= Hair || (atLow > 0) == (atHigh > 0) || high <= TimeHair)
        {
            return end;
        }

        // Illinois variant of the false position: keeps the bracket, converges faster than halving.
        var low = 0.0;
        var side = 0;
        for (var i = 0; i < 60 && high - low > TimeHair / 4; i++)
        {
            var mid = ((low * atHigh) - (high * atLow)) / (atHigh - atLow);
            var value = distance(mid);
            if (Math.Abs(value) < Hair / 100)
            {
                return _t + Math.Max(mid, TimeHair * 2);
            }

            if ((value > 0) == (atHigh > 0))
            {
                (high, atHigh) = (mid, value);
                atLow = side == 1 ? atLow / 2 : atLow;
                side = 1;
            }
            else
            {
                (low, atLow) = (mid, value);
                atHigh = side == -1 ? atHigh / 2 : atHigh;
                side = -1;
            }
        }

        return _t + Math.Max(high, TimeHair * 2);
    }

    private (double MakeUp, double Liquid) FlowNow()
    {
        var liquid = BleedFlow() + _leak + (_running ? _model.DriftLPerH : 0);
        return (_evaporation + liquid, liquid);
    }

    private double FeedOf(Substance substance)
    {
        var sum = 0.0;
        foreach (var output in _outputOrder)
        {
            if (output.On && _running && output.Drum is { UsableL: > 0, Known: { } product } && product.Becomes == substance)
            {
                sum += PumpFlow(output) * product.DensityKgPerL * 1e6 * product.Share;
            }
        }

        return sum;
    }

    private double After(Substance substance, double dt, (double MakeUp, double Liquid) flow, double feed)
    {
        var i = (int)substance;
        var deposit = substance == Substance.Calcium ? DepositPerHour(flow) : 0;
        var a = (flow.Liquid / _model.VolumeL) + _decay[i] + deposit;
        var source = (((flow.MakeUp * _makeUp[i]) + feed) / _model.VolumeL) + (deposit > 0 ? deposit * _depositAbove : 0);
        var slope = source - (a * _c[i]);
        var x = a * dt;
        return _c[i] + (slope * dt * (1 - (x * PortableMath.WashoutIntegral(x))));
    }

    private void Note(PlantEventKind what, string of)
    {
        if (KeepsLog)
        {
            _log.Add(new PlantEvent(Utc, what, of, ConductivityUsPerCm));
        }
    }
}
