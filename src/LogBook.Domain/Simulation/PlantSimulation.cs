using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Simulation;

/// <summary>Mass balance of one open-recirculating system with its controller: exact between switchings, so that no step size enters the result.</summary>
/// <remarks>
/// Volume constant, well mixed, make-up follows losses: V dc/dt = M c_m + feed - (W + k V) c (reference/01, circulating system).
/// Load, make-up strength and the probe's error are constant within an hour; bleeds, feeds, doses, empty drums are met at their exact moment.
/// Deterministic: same set-up, story and seed give the same numbers on every machine.
/// Not covered: incomplete mixing, float valve lag, temperature, chemistry of alkalinity beyond deposit.
/// </remarks>
public sealed partial class PlantSimulation
{
    private const double LeastAlkalinity = 20;
    private const double Ln10 = 2.302585092994046;

    private static readonly int Count = Enum.GetValues<Substance>().Length;

    private readonly PlantModel _model;
    private readonly Operation? _operation;
    private readonly TimeZoneInfo _zone;
    private readonly DateTime _start;
    private readonly SplitMix _weather;
    private readonly SplitMix _water;
    private readonly SplitMix _probe;
    private readonly Dictionary<string, PlantProduct> _products;
    private readonly Dictionary<string, OutputState> _outputs = new(StringComparer.OrdinalIgnoreCase);
    private readonly List<OutputState> _outputOrder = [];
    private readonly List<DrumState> _drumOrder = [];
    private readonly Dictionary<string, DrumState> _drums = new(StringComparer.OrdinalIgnoreCase);
    private readonly List<ScenarioEntry> _story = [];
    private readonly List<(DateTime Utc, string Product, double Litres)> _poured = [];

    private readonly double[] _c;
    private readonly double[] _makeUp;
    private readonly double[] _makeUpBase;
    private readonly double[] _decay;
    private readonly double[] _feed;
    private readonly double[] _in;
    private readonly double[] _out;
    private readonly double[] _gone;
    private readonly double[] _fed;
    private readonly double[] _stranded;
    private readonly double[] _startMass;

    private double _t;
    private double _nextHour;
    private int _day = int.MinValue;
    private double _weatherFactor = 1;
    private double _weekFrom;
    private double _weekTo;
    private double _probeWander;
    private double _evaporation;
    private double _leak;
    private bool _running;
    private Ramp _leakRamp = Ramp.Constant(0);
    private Ramp _calcium;
    private Ramp _alkalinity;
    private Ramp _orpError = Ramp.Constant(0);
    private double _foulingPerHour;
    private double _fouling;
    private double _gain = 1;
    private double _pulseShare = 1;
    private Ramp _makeUpStrength = Ramp.Constant(1);
    private double _depositAbove;
    private bool _dialCounts = true;
    private bool _flowBridged;
    private double _bleedShare = 1;
    private double _bleedPassesLPerH;
    private double _controlIndex;
    private double _makeUpL;
    private double _evaporatedL;
    private double _bledL;
    private double _lostL;
    private int _nextStory;

    /// <summary>A plant at its first moment, steady at the model's starting cycles and the usual inhibitor level.</summary>
    /// <param name="model">The plant as it truly is.</param>
    /// <param name="system">Its set-up: outputs, pumps, drums and the first make-up meter are used.</param>
    /// <param name="settings">Settings of the controller.</param>
    /// <param name="zone">Time zone of the site; dose plans and operating hours are local.</param>
    /// <param name="startUtc">First moment, UTC.</param>
    /// <param name="seed">Seed of weather, water and probe wander.</param>
    public PlantSimulation(PlantModel model, WaterSystem system, Programme settings, TimeZoneInfo zone, DateTime startUtc, ulong seed)
    {
        ArgumentNullException.ThrowIfNull(model);
        ArgumentNullException.ThrowIfNull(system);
        ArgumentNullException.ThrowIfNull(settings);
        _model = model;
        _operation = system.Operation;
        _zone = zone;
        _start = DateTime.SpecifyKind(startUtc, DateTimeKind.Utc);
        _weather = SplitMix.For(seed, "weather");
        _water = SplitMix.For(seed, "water");
        _probe = SplitMix.For(seed, "probe");
        _weekTo = model.WeekShare * _water.NextNormal();
        _products = model.Products.ToDictionary(p => p.Code, StringComparer.OrdinalIgnoreCase);
        foreach (var drum in system.Drums)
        {
            var state = new DrumState
            {
                Drum = drum,
                StartL = 0.8 * (drum.CapacityL ?? 0),
                Litres = 0.8 * (drum.CapacityL ?? 0),
                Product = drum.Product,
                Known = _products.GetValueOrDefault(drum.Product),
            };
            _drums[drum.Code] = state;
            _drumOrder.Add(state);
        }

        foreach (var output in system.Outputs)
        {
            var state = new OutputState { Code = output.Code, Pump = system.Pumps.FirstOrDefault(p => Same(p.Output, output.Code)) };
            state.Drum = state.Pump is { } pump ? _drums[pump.Drum] : null;
            _outputs[output.Code] = state;
            _outputOrder.Add(state);
            if (output.Drives == OutputDrives.Bleed)
            {
                _bleed = state;
            }
        }

        var water = model.MakeUp;
        _makeUpBase = new double[Count];
        _makeUpBase[(int)Substance.Cycles] = 1;
        _makeUpBase[(int)Substance.Conductance] = water.ConductivityUsPerCm ?? 0;
        _makeUpBase[(int)Substance.Chloride] = water.ChlorideMgPerL ?? 0;
        _makeUpBase[(int)Substance.Silica] = water.SilicaMgPerL ?? 0;
        _makeUpBase[(int)Substance.CalciumKept] = water.CalciumMgPerLAsCaCO3 ?? 0;
        _makeUpBase[(int)Substance.AlkalinityKept] = water.AlkalinityMgPerLAsCaCO3 ?? 0;
        _makeUpBase[(int)Substance.Calcium] = water.CalciumMgPerLAsCaCO3 ?? 0;
        _calcium = Ramp.Constant(_makeUpBase[(int)Substance.Calcium]);
        _alkalinity = Ramp.Constant(_makeUpBase[(int)Substance.AlkalinityKept]);
        _depositAbove = model.DepositAboveMgPerL;
        _makeUp = [.. _makeUpBase];
        _c = [.. _makeUpBase.Select(m => m * model.StartCycles)];
        _c[(int)Substance.Calcium] = Math.Min(_c[(int)Substance.Calcium], model.DepositAboveMgPerL);
        _c[(int)Substance.Inhibitor] = model.UsualInhibitorMgPerL;
        _decay = new double[Count];
        foreach (var product in model.Products.Where(p => p.HalfLifeH > 0))
        {
            _decay[(int)product.Becomes] = 0.693147180559945309 / product.HalfLifeH;
        }

        _feed = new double[Count];
        _in = new double[Count];
        _out = new double[Count];
        _gone = new double[Count];
        _fed = new double[Count];
        _stranded = new double[Count];
        _startMass = [.. _c.Select(c => c * model.VolumeL)];
        _settings = settings;
        EnterHour();
        TakeSettings();
    }

    /// <summary>The moment the simulation stands at, UTC.</summary>
    public DateTime Utc => _start.AddTicks((long)Math.Round(_t * TimeSpan.TicksPerHour));

    /// <summary>Whether water circulates.</summary>
    public bool IsRunning => _running;

    /// <summary>True cycles, by volume.</summary>
    public double Cycles => _c[(int)Substance.Cycles];

    /// <summary>True conductivity of the circulating water, µS/cm at 25 °C.</summary>
    public double ConductivityUsPerCm => Conductivity(_c[(int)Substance.Conductance], _c[(int)Substance.Cycles], _c[(int)Substance.Inhibitor]);

    /// <summary>Conductivity as the controller shows it, µS/cm.</summary>
    public double DisplayUsPerCm => ConductivityUsPerCm * ProbeFactor;

    /// <summary>Display over true conductivity.</summary>
    public double ProbeFactor => _gain * (1 + _fouling) * (1 + _probeWander);

    /// <summary>True ORP, mV (a demo relation to the free halogen).</summary>
    public double OrpMv => OrpOf(_c[(int)Substance.Halogen]);

    /// <summary>ORP as the controller shows it, mV.</summary>
    public double OrpDisplayMv => OrpMv + _orpError.At(_t);

    /// <summary>Bacteria on a dip slide, log10 CFU/mL, without the reader's error: falls with biocide over the last days.</summary>
    /// <remarks>Demo choice: two doses a week keep even a water that is renewed in some hours well below 10,000, two weeks without any do not.</remarks>
    public double DipSlideLog => 5.3 - (3.5 * Math.Min(1, _controlIndex / 0.06));

    /// <summary>Make-up counted by the dial since the start, L.</summary>
    public double DialL { get; private set; }

    /// <summary>Make-up counted by the controller since the start, L.</summary>
    public double CountedL { get; private set; }

    /// <summary>Running sums; input and output agree to rounding.</summary>
    public PlantBalance Balance => new()
    {
        MakeUpL = _makeUpL,
        EvaporatedL = _evaporatedL,
        BledL = _bledL,
        LostL = _lostL,
        Start = [.. _startMass],
        In = [.. _in],
        Out = [.. _out],
        Gone = [.. _gone],
        Now = [.. _c.Select(c => c * _model.VolumeL)],
        Fed = [.. _fed],
        Stranded = [.. _stranded],
        Drums = [.. _drumOrder.Select(d => new DrumBalance { Drum = d.Drum.Code, StartL = d.StartL, AddedL = d.AddedL, DrawnL = d.DrawnL, NowL = d.Litres })],
    };

    /// <summary>Concentration in the circulating water.</summary>
    /// <param name="substance">Which.</param>
    /// <returns>mg/L in the basis of <see cref="Substance"/>.</returns>
    public double Of(Substance substance) => _c[(int)substance];

    /// <summary>Alkalinity of the circulating water: what deposited as calcium carbonate and what acid took is missing.</summary>
    public double AlkalinityMgPerL => Math.Max(
        LeastAlkalinity, _c[(int)Substance.AlkalinityKept] - (_c[(int)Substance.CalciumKept] - _c[(int)Substance.Calcium]) - _c[(int)Substance.Acid]);

    /// <summary>pH of the circulating water, from its alkalinity.</summary>
    /// <remarks>
    /// A common rule for waters in contact with air: pH rises with the logarithm of alkalinity, 4.4 + 1.6 log10 (from memory; demo data only).
    /// </remarks>
    public double Ph => PhOf(AlkalinityMgPerL);

    /// <summary>pH of a water in contact with air.</summary>
    /// <param name="alkalinity">Alkalinity, mg/L as CaCO3; below 20 counts as 20.</param>
    /// <returns>pH.</returns>
    public static double PhOf(double alkalinity) => 4.4 + (1.6 * PortableMath.Log(Math.Max(alkalinity, LeastAlkalinity)) / Ln10);

    /// <summary>Concentration in the make-up now.</summary>
    /// <param name="substance">Which.</param>
    /// <returns>mg/L in the basis of <see cref="Substance"/>; conductivity µS/cm for <see cref="Substance.Conductance"/>.</returns>
    public double MakeUpOf(Substance substance) => _makeUp[(int)substance];

    /// <summary>Hours an output has run since the start.</summary>
    /// <param name="output">Its code.</param>
    /// <returns>Hours.</returns>
    public double HoursRun(string output) => _outputs[output].Hours;

    /// <summary>Whether an output runs now.</summary>
    /// <param name="output">Its code.</param>
    /// <returns>True while it is on.</returns>
    public bool IsOn(string output) => _outputs[output].On;

    /// <summary>True contents of a drum, L.</summary>
    /// <param name="drum">Its code.</param>
    /// <returns>Litres.</returns>
    public double DrumL(string drum) => _drums[drum].Litres;

    /// <summary>Product truly in a drum.</summary>
    /// <param name="drum">Its code.</param>
    /// <returns>Code of the product.</returns>
    public string DrumHolds(string drum) => _drums[drum].Product;

    /// <summary>True output of the pump on an output while it runs, L/h; 0 without a pump.</summary>
    /// <param name="output">Code of the output.</param>
    /// <returns>L/h.</returns>
    public double PumpLPerH(string output) => PumpFlow(_outputs[output]);

    /// <summary>True flow of the open bleed valve, L/h.</summary>
    public double BleedValveLPerH => _model.BleedLPerH * _bleedShare;

    /// <summary>Density of a product as the plant knows it.</summary>
    /// <param name="product">Its code.</param>
    /// <returns>kg/L; 1 for an unknown product.</returns>
    public double DensityOf(string product) => _products.TryGetValue(product, out var known) ? known.DensityKgPerL : 1;

    /// <summary>Drains the system and fills it with make-up water at once.</summary>
    public void Refill()
    {
        for (var i = 0; i < Count; i++)
        {
            _out[i] += _c[i] * _model.VolumeL;
            _in[i] += _makeUp[i] * _model.VolumeL;
            _c[i] = _makeUp[i];
        }

        _lostL += _model.VolumeL;
        _makeUpL += _model.VolumeL;
        DialL += _dialCounts ? _model.VolumeL : 0;
        CountedL += _pulseShare * _model.VolumeL;
    }

    /// <summary>Puts litres into a drum, or takes them out when negative.</summary>
    /// <param name="drum">Its code.</param>
    /// <param name="litres">Litres.</param>
    public void AddToDrum(string drum, double litres)
    {
        var state = _drums[drum];
        var added = Math.Max(-state.Litres, litres);
        state.Litres += added;
        state.AddedL += added;
    }

    /// <summary>Exchanges what a drum holds.</summary>
    /// <param name="drum">Its code.</param>
    /// <param name="product">Product in it now.</param>
    /// <param name="litres">Litres in it now.</param>
    public void SwapDrum(string drum, string product, double litres)
    {
        Hold(_drums[drum], product);
        AddToDrum(drum, litres - _drums[drum].Litres);
    }

    /// <summary>Cleans the conductivity probe: the fouling is gone, a calibration made while dirty stays.</summary>
    public void CleanProbe() => _fouling = 0;

    /// <summary>Calibrates the conductivity probe so that the display shows a value now.</summary>
    /// <param name="usPerCm">Value it is set to, µS/cm.</param>
    public void CalibrateProbe(double usPerCm) => _gain *= usPerCm / DisplayUsPerCm;

    /// <summary>Cleans and calibrates the ORP probe.</summary>
    public void CleanOrpProbe() => _orpError = Ramp.Constant(0);

    /// <summary>Restores the pump of an output to its rating.</summary>
    /// <param name="output">Code of the output.</param>
    public void RenewPump(string output) => _outputs[output].PumpShare = Ramp.Constant(1);

    /// <summary>A true pump delivers a little more or less than its plate says.</summary>
    /// <param name="output">Code of the output.</param>
    /// <param name="share">Share of the rating.</param>
    public void SetPumpBias(string output, double share) => _outputs[output].PumpBias = share;

    /// <summary>Repairs the meter: dial and pulses count again.</summary>
    public void RenewMeter()
    {
        _dialCounts = true;
        _pulseShare = 1;
    }

    /// <summary>Restores the bleed valve: whole flow while open, none while shut.</summary>
    public void RenewBleedValve()
    {
        _bleedShare = 1;
        _bleedPassesLPerH = 0;
    }

    /// <summary>Stops any leak or overflow.</summary>
    public void StopLeak()
    {
        _leakRamp = Ramp.Constant(0);
        EnterHourValues();
    }

    /// <summary>Gives the plant its story; entries before now are taken at once.</summary>
    /// <param name="entries">Dated entries in any order.</param>
    public void Schedule(IEnumerable<ScenarioEntry> entries)
    {
        _story.AddRange(entries);
        var sorted = _story.OrderBy(e => e.On).ToList();
        _story.Clear();
        _story.AddRange(sorted);
    }

    /// <summary>Runs on to a moment.</summary>
    /// <param name="utc">UTC, not before <see cref="Utc"/>; an earlier one changes nothing.</param>
    public void AdvanceTo(DateTime utc)
    {
        var target = HoursOf(DateTime.SpecifyKind(utc, DateTimeKind.Utc));
        while (_t < target)
        {
            if (_t >= _nextHour)
            {
                EnterHour();
            }

            Decide();
            var end = Math.Min(Math.Min(target, _nextHour), NextTimer());
            end = FirstCrossing(end);
            Step(end - _t);
            _t = end;
        }

        Decide();
    }

    private static bool Same(string a, string? b) => string.Equals(a, b, StringComparison.OrdinalIgnoreCase);

    private static double OrpOf(double halogen) => 650 + (52.115 * PortableMath.Log(Math.Max(halogen, 0.005) / 0.5));

    private static double HalogenAt(double orp) => 0.5 * PortableMath.Exp((orp - 650) / 52.115);

    private static double AlkalinityAt(double ph) => PortableMath.Exp((ph - 4.4) / 1.6 * Ln10);

    private double HoursOf(DateTime utc) => (utc - _start).Ticks / (double)TimeSpan.TicksPerHour;

    private DateTime LocalAt(double hours)
    {
        var utc = _start.AddTicks((long)Math.Round(hours * TimeSpan.TicksPerHour));
        return DateTime.SpecifyKind(utc + _zone.GetUtcOffset(utc), DateTimeKind.Unspecified);
    }

    private double Conductivity(double conductance, double cycles, double inhibitor) =>
        (conductance * (1 - (_model.ConductivityBend * (cycles - 1))))
        + (_model.InhibitorUsPerCmPerMgPerL * (inhibitor - _model.UsualInhibitorMgPerL));

    private void EnterHour()
    {
        var local = LocalAt(_t);
        var day = (int)(DateOnly.FromDateTime(local).DayNumber);
        if (day != _day)
        {
            EnterDay(day);
        }

        TakeStory(local);
        _fouling += _t > 0 ? _foulingPerHour : 0;
        var runs = OperationCalendar.Runs(_operation, local);
        if (runs != _running)
        {
            Note(runs ? PlantEventKind.FlowBack : PlantEventKind.FlowLost, "");
        }

        _running = runs;
        _evaporation = runs ? _model.HeatKw * _model.EvaporatedLPerKwh * _model.Load.At(local) * _weatherFactor : 0;
        var dayShare = ((day % 7) + (local.Hour / 24.0)) / 7;
        var week = _weekFrom + ((_weekTo - _weekFrom) * dayShare);
        // Strongest at the end of August: a parabola pair stands in for the sine, free of library functions.
        var year = ((local.DayOfYear + 32) % 365) / 365.0;
        var arch = year < 0.5 ? 1 - (16 * (year - 0.25) * (year - 0.25)) : (16 * (year - 0.75) * (year - 0.75)) - 1;
        var strength = Math.Max(0.5, 1 + week - (_model.SeasonShare * arch)) * _makeUpStrength.At(_t);
        for (var i = 1; i < Count; i++)
        {
            _makeUp[i] = _makeUpBase[i] * strength;
        }

        var calciumShare = _makeUpBase[(int)Substance.Calcium] > 0 ? _calcium.At(_t) / _makeUpBase[(int)Substance.Calcium] : 1;
        _makeUp[(int)Substance.Calcium] *= calciumShare;
        _makeUp[(int)Substance.CalciumKept] *= calciumShare;
        _makeUp[(int)Substance.AlkalinityKept] *= _makeUpBase[(int)Substance.AlkalinityKept] > 0 ? _alkalinity.At(_t) / _makeUpBase[(int)Substance.AlkalinityKept] : 1;
        EnterHourValues();
        _nextHour = Math.Floor(_t + 1e-9) + 1;
    }

    private void EnterHourValues() => _leak = _model.LeakOnlyWhileRunning && !_running ? 0 : _leakRamp.At(_t);

    private void EnterDay(int day)
    {
        _day = day;
        _weatherFactor = Math.Clamp(1 + (0.7 * (_weatherFactor - 1)) + (0.714 * _model.Load.WeatherShare * _weather.NextNormal()), 0.7, 1.3);
        _probeWander = (0.8 * _probeWander) + (0.6 * _model.ProbeShare * _probe.NextNormal());
        if (day % 7 == 0)
        {
            _weekFrom = _weekTo;
            _weekTo = (0.5 * _weekTo) + (0.866 * _model.WeekShare * _water.NextNormal());
        }
    }

    private void TakeStory(DateTime local)
    {
        for (; _nextStory < _story.Count && _story[_nextStory].On <= local; _nextStory++)
        {
            Take(_story[_nextStory]);
        }
    }

    private void Take(ScenarioEntry entry)
    {
        Ramp To(double now) => entry.Until is { } until
            ? new Ramp(_t, _t + (until - entry.On).TotalHours, now, entry.Value)
            : Ramp.Constant(entry.Value);

        switch (entry.Act)
        {
            case ScenarioAct.ProbeFouling: _foulingPerHour = entry.Value / 100 / 168; break;
            case ScenarioAct.OrpCoating: _orpError = To(_orpError.At(_t)); break;
            case ScenarioAct.ForceOn: _outputs[entry.Part!].Switch = SwitchState.ForcedOn; break;
            case ScenarioAct.ForceOff: _outputs[entry.Part!].Switch = SwitchState.ForcedOff; break;
            case ScenarioAct.Automatic: _outputs[entry.Part!].Switch = SwitchState.Automatic; break;
            case ScenarioAct.Pulses: _pulseShare = entry.Value; break;
            case ScenarioAct.Dial: _dialCounts = entry.Value > 0; break;
            case ScenarioAct.Leak: _leakRamp = To(_leakRamp.At(_t)); break;
            case ScenarioAct.SettingsReset: Settings = entry.Settings!; break;
            case ScenarioAct.PumpOutput:
                var output = _outputs[entry.Part!];
                output.PumpShare = To(output.PumpShare.At(_t));
                break;
            case ScenarioAct.MakeUpCalcium: _calcium = To(_calcium.At(_t)); break;
            case ScenarioAct.MakeUpAlkalinity: _alkalinity = To(_alkalinity.At(_t)); break;
            case ScenarioAct.DrumHolds: Hold(_drums[entry.Part!], entry.Text!); break;
            case ScenarioAct.ClockOff: ClockOffMin = entry.Value; break;
            case ScenarioAct.WeekOff: WeekOff = (int)entry.Value; break;
            case ScenarioAct.ProbeOffset: _gain *= entry.Value; break;
            case ScenarioAct.MakeUpStrength: _makeUpStrength = To(_makeUpStrength.At(_t)); break;
            case ScenarioAct.DepositAbove: _depositAbove = entry.Value; break;
            case ScenarioAct.FlowBridged: _flowBridged = entry.Value > 0; break;
            case ScenarioAct.BleedValve: _bleedShare = entry.Value; break;
            case ScenarioAct.BleedPasses: _bleedPassesLPerH = entry.Value; break;
            case ScenarioAct.Poured:
                Pour(entry.Text!, entry.Value);
                _poured.Add((Utc, entry.Text!, entry.Value));
                break;
            default: throw new InvalidOperationException($"No such act: {entry.Act}.");
        }
    }

    /// <summary>What site staff poured in since the start, in order.</summary>
    public IReadOnlyList<(DateTime Utc, string Product, double Litres)> Poured => _poured;

    /// <summary>Pours product into the basin by hand; it does not come out of a drum.</summary>
    /// <param name="product">Its code.</param>
    /// <param name="litres">Litres.</param>
    public void Pour(string product, double litres)
    {
        var known = _products[product];
        var mg = litres * known.DensityKgPerL * 1e6 * known.Share;
        _c[(int)known.Becomes] += mg / _model.VolumeL;
        _in[(int)known.Becomes] += mg;
        _fed[(int)known.Becomes] += mg;
    }

    private void Hold(DrumState drum, string product)
    {
        drum.Product = product;
        drum.Known = _products.GetValueOrDefault(product);
    }

    private double PumpFlow(OutputState output) =>
        output.Pump?.RatedLPerH is { } rated ? rated * output.PumpBias * output.PumpShare.At(_nextHour - 1) : output.FeederLPerH;

    /// <summary>Flow through the bleed valve, L/h: open, or passing while shut.</summary>
    private double BleedFlow() => _bleed is { On: true } ? _model.BleedLPerH * _bleedShare : _running ? _bleedPassesLPerH : 0;

    /// <summary>Advances every balance by <paramref name="dt"/> hours in which nothing switches.</summary>
    private void Step(double dt)
    {
        if (dt <= 0)
        {
            return;
        }

        var bleed = BleedFlow();
        var lost = (_running ? _model.DriftLPerH : 0) + _leak;
        var liquid = bleed + lost;
        var makeUp = _evaporation + liquid;
        CountHours(dt);
        FeedRates(dt);

        var v = _model.VolumeL;
        var washout = liquid / v;
        var sharedX = washout * dt;
        var sharedPhi2 = PortableMath.WashoutIntegral(sharedX);
        for (var i = 0; i < Count; i++)
        {
            var source = ((makeUp * _makeUp[i]) + _feed[i]) / v;
            if (source == 0 && _c[i] == 0)
            {
                continue;
            }

            var sink = _decay[i];
            var deposit = i == (int)Substance.Calcium ? DepositPerHour((makeUp, liquid)) : 0;
            if (deposit > 0)
            {
                sink += deposit;
                source += deposit * _depositAbove;
            }

            var a = washout + sink;
            var x = sink == 0 ? sharedX : a * dt;
            var phi2 = sink == 0 ? sharedPhi2 : PortableMath.WashoutIntegral(x);
            var slope = source - (a * _c[i]);
            var integral = (_c[i] * dt) + (slope * dt * dt * phi2);
            _c[i] += slope * dt * (1 - (x * phi2));
            _in[i] += ((makeUp * _makeUp[i]) + _feed[i]) * dt;
            _fed[i] += _feed[i] * dt;
            _out[i] += liquid * integral;
            _gone[i] += v * ((sink * integral) - (deposit > 0 ? deposit * _depositAbove * dt : 0));
        }

        _makeUpL += makeUp * dt;
        _evaporatedL += _evaporation * dt;
        _bledL += bleed * dt;
        _lostL += lost * dt;
        DialL += _dialCounts ? makeUp * dt : 0;
        CountedL += _pulseShare * makeUp * dt;
        var control = Kill(Substance.Biocide, 20) + Kill(Substance.SecondBiocide, 20) + Kill(Substance.Halogen, 0.4);
        _controlIndex += (Math.Min(1, control) - _controlIndex) * Math.Min(1, dt / 80);
    }

    private double Kill(Substance substance, double half) => _c[(int)substance] / (_c[(int)substance] + half);

    private void FeedRates(double dt)
    {
        Array.Clear(_feed);
        foreach (var output in _outputOrder)
        {
            if (!output.On || output.Drum is not { } drum || drum.UsableL <= 0)
            {
                continue;
            }

            var drawn = Math.Min(drum.UsableL, PumpFlow(output) * dt);
            drum.Litres -= drawn;
            drum.DrawnL += drawn;
            if (drum.Known is not { } product)
            {
                continue;
            }

            var mg = drawn * product.DensityKgPerL * 1e6 * product.Share;
            if (!_running)
            {
                _stranded[(int)product.Becomes] += mg;
                continue;
            }

            var mgPerHour = mg / dt;
            _feed[(int)product.Becomes] += mgPerHour;
            _feed[(int)Substance.Chloride] += mgPerHour * product.ChloridePerMg;
        }
    }
}
