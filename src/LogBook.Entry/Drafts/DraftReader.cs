using LogBook.Domain.Exchange;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Quantities;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Entry.Drafts;

/// <summary>
/// Makes the visit of a draft. A record of an amended visit is the old record with the fields of the form put into it, so
/// that what the form does not show is carried along.
/// </summary>
internal sealed class DraftReader
{
    private readonly VisitDraft _draft;
    private readonly DraftTrace _trace;

    private DraftReader(VisitDraft draft, Language language)
    {
        _draft = draft;
        _trace = new DraftTrace(language);
    }

    public static DraftBuild Read(VisitDraft draft, Language language)
    {
        var reader = new DraftReader(draft, language);
        var visit = reader.ReadVisit();
        return new DraftBuild(visit, [.. reader._trace.Unread.DistinctBy(u => u.Key)], reader._trace.Unfinished, reader._trace.KeyByPath);
    }

    private Visit ReadVisit()
    {
        var top = new DraftGroup(_draft, DraftKey.Visit, string.Empty, _trace);
        var was = _draft.Amended;
        var visit = was ?? new Visit { Id = _draft.Id, Site = _draft.Site, Technician = _draft.Technician, Arrived = _draft.Arrived() };
        _ = top.Time("arrived", was?.Arrived);
        return visit with
        {
            Technician = top.Text("technician") ?? visit.Technician,
            Also = Also(was?.Also ?? []),
            Kind = top.Choice<VisitKind>("kind"),
            Reason = top.Text("reason"),
            Arrived = _draft.Arrived(),
            Left = top.Time("left", was?.Left),
            Cleaning = top.Text("cleaning"),
            Notes = string.Join('\n', new[] { top.Text("notes") }.Concat(Custody(null)).OfType<string>()) is { Length: > 0 } notes ? notes : null,
            Systems = Systems(was?.Systems ?? []),
            Photos = Photos(was?.Photos ?? []),
            Recommendations = List(DraftKey.Of(DraftKey.Visit, "recommendations"), "recommendations", was?.Recommendations ?? [], Recommendation, "text"),
            Samples = List(DraftKey.Of(DraftKey.Visit, "samples"), "samples", was?.Samples ?? [], Sample),
            Signatures = [.. Coded(DraftKey.Of(DraftKey.Visit, "signatures"), "signatures", was?.Signatures ?? [], s => s.By.ToString(), Signature)],
        };
    }

    // Also of a row whose words are missing yet: what somebody photographed is not lost with them.
    private List<Photo> Photos(IReadOnlyList<Photo> was)
    {
        var photos = was.ToList();
        foreach (var row in _draft.Rows(DraftKey.Of(DraftKey.Visit, "photos")))
        {
            var group = new DraftGroup(_draft, row, string.Empty, _trace);
            Add(photos, group, group.Text("of") ?? "tower");
        }

        foreach (var code in _draft.PartsUnder(DraftKey.Systems))
        {
            var list = DraftKey.Of(DraftKey.Systems, code, "observations");
            foreach (var row in _draft.Rows(list))
            {
                var group = new DraftGroup(_draft, row, string.Empty, _trace);
                Add(photos, group, $"{code}/observations/{group.Text("about") ?? "tower"}");
            }
        }

        return photos;
    }

    private static void Add(List<Photo> photos, DraftGroup group, string of)
    {
        if (group.Id("photo") is { } id && !photos.Exists(photo => photo.Id == id))
        {
            photos.Add(new Photo
            {
                Id = id,
                Of = of,
                Sha256 = group.Text("photoSha256"),
                TakenAt = Moment.TryParse(group.Text("photoTakenAt"), out var taken) ? taken : null,
            });
        }
    }

    // Those named before come first, in their order.
    private List<string> Also(IReadOnlyList<string> was)
    {
        var list = DraftKey.Of(DraftKey.Visit, "also");
        var chosen = _draft.PartsUnder(list).Where(code => _draft.Text(DraftKey.Under(list, code)) == "yes").ToList();
        return [.. was.Where(chosen.Contains), .. chosen.Except(was, StringComparer.Ordinal)];
    }

    private List<VisitedSystem> Systems(IReadOnlyList<VisitedSystem> was)
    {
        var systems = new List<VisitedSystem>();
        var handed = _draft.Rows(DraftKey.Of(DraftKey.Visit, "samples"))
            .Where(row => _draft.Text(DraftKey.Under(row, "handedTo")).Trim().Length > 0).Select(row => _draft.Text(DraftKey.Under(row, "system"))).Where(code => code.Length > 0);
        foreach (var code in was.Select(s => s.System).Union(_draft.PartsUnder(DraftKey.Systems), StringComparer.Ordinal).Union(handed, StringComparer.Ordinal))
        {
            var old = was.FirstOrDefault(s => s.System == code);
            var read = ReadSystem(code, $"systems[{systems.Count}]", old);
            if (old is not null || HasContent(read))
            {
                systems.Add(read);
            }
        }

        return systems;
    }

    private VisitedSystem ReadSystem(string code, string path, VisitedSystem? was)
    {
        var key = DraftKey.Of(DraftKey.Systems, code);
        var own = new DraftGroup(_draft, key, path, _trace);
        var bleedTest = new DraftGroup(_draft, DraftKey.Under(key, "bleedTest"), path + ".bleedTest", _trace);
        var current = new DraftGroup(_draft, DraftKey.Under(key, "maOutput"), path + ".maOutput", _trace);
        bleedTest.NoteHalf("litres", "seconds");
        string Under(string list) => DraftKey.Under(key, list);
        string At(string list) => path + "." + list;

        var probes = Coded(Under("probes"), At("probes"), was?.Probes ?? [], p => p.Probe ?? string.Empty, (group, probe, old) => ProbeOf(group, code, probe, old));
        var observations = List(Under("observations"), At("observations"), was?.Observations ?? [], Observation, "text");
        observations.AddRange(RangeReasons(Under("ranges")));
        observations.AddRange(Custody(code).Select(words => new Observation { About = "sample", Text = words }));
        return (was ?? new VisitedSystem { System = code }) with
        {
            Running = own.Yes("running"),
            InUse = own.Yes("inUse"),
            ClockOffByMin = own.Number("clockOffByMin"),
            ProgrammeWeek = own.Whole("programmeWeek"),
            Readings = Readings(code, At("readings"), was?.Readings ?? []),
            Probes = probes,
            Meters = Coded(Under("meters"), At("meters"), was?.Meters ?? [], m => m.Meter, Meter),
            Drums = Coded(Under("drums"), At("drums"), was?.Drums ?? [], d => d.Drum, Drum),
            HoursRun = Coded(Under("hoursRun"), At("hoursRun"), was?.HoursRun ?? [], h => h.Output, Hours, "hours"),
            Pumps = Coded(Under("pumps"), At("pumps"), was?.Pumps ?? [], p => p.Pump, Pump),
            Drawdowns = Coded(Under("drawdowns"), At("drawdowns"), was?.Drawdowns ?? [], d => d.Pump, DrawdownOf, "millilitres", "seconds"),
            BleedTest = LitresOf(bleedTest, "litres") is { } litres && bleedTest.Number("seconds") is { } seconds ? new BleedTest { Litres = litres, Seconds = seconds } : null,
            Switches = Coded(Under("switches"), At("switches"), was?.Switches ?? [], s => s.Output, Switch),
            Settings = Coded(Under("settings"), At("settings"), was?.Settings ?? [], s => s.Name, Setting),
            MaOutput = current.Number("found") is { } found ? new MaReading { Found = found, Unit = current.Unit("found") ?? "mA" } : null,
            Additions = List(Under("additions"), At("additions"), was?.Additions ?? [], AdditionOf, "product", "amount"),
            Events = List(Under("events"), At("events"), was?.Events ?? [], Event, "type"),
            Alarms = List(Under("alarms"), At("alarms"), was?.Alarms ?? [], Alarm, "text"),
            Observations = observations,
            Actions = List(Under("actions"), At("actions"), was?.Actions ?? [], Action, "text"),
        };
    }

    private static bool HasContent(VisitedSystem s) =>
        s.Running is not null || s.InUse is not null || s.ClockOffByMin is not null || s.ProgrammeWeek is not null || s.BleedTest is not null || s.MaOutput is not null
        || s.Readings.Count + s.Probes.Count + s.Meters.Count + s.Drums.Count + s.HoursRun.Count + s.Pumps.Count + s.Drawdowns.Count + s.Switches.Count
        + s.Settings.Count + s.Additions.Count + s.Events.Count + s.Alarms.Count + s.Observations.Count + s.Actions.Count > 0;

    // Records of a list that has no codes: rows of the form, numbered; those of an amended visit come first, in their order.
    private List<T> List<T>(string list, string path, IReadOnlyList<T> was, Func<DraftGroup, T?, T?> read, params IReadOnlyList<string> needed)
        where T : class
    {
        var records = new List<T>();
        foreach (var part in _draft.PartsUnder(list))
        {
            var row = DraftKey.Under(list, part);
            var group = new DraftGroup(_draft, row, $"{path}[{records.Count}]", _trace);
            if (group.IsRemoved)
            {
                continue;
            }

            var old = int.TryParse(_draft.Text(DraftKey.Under(row, "row")), System.Globalization.CultureInfo.InvariantCulture, out var index) && index < was.Count ? was[index] : null;
            if (read(group, old) is { } record)
            {
                records.Add(record);
            }
            else
            {
                group.NoteUnfinished(needed);
            }
        }

        return records;
    }

    private List<T> Coded<T>(string list, string path, IReadOnlyList<T> was, Func<T, string> code, Func<DraftGroup, string, T?, T?> read, params IReadOnlyList<string> needed)
        where T : class
    {
        var records = new List<T>();
        foreach (var part in was.Select(code).Union(_draft.PartsUnder(list), StringComparer.Ordinal))
        {
            var key = DraftKey.Under(list, part);
            var group = new DraftGroup(_draft, key, $"{path}[{records.Count}]", _trace);
            if (group.IsRemoved)
            {
                continue;
            }

            if (read(group, part, was.FirstOrDefault(r => code(r) == part)) is { } record)
            {
                _trace.Note($"{path}[{records.Count}]", key);
                records.Add(record);
            }
            else
            {
                group.NoteUnfinished(needed);
            }
        }

        return records;
    }

    private List<Reading> Readings(string system, string path, IReadOnlyList<Reading> was)
    {
        var list = DraftKey.Of(DraftKey.Systems, system, "readings");
        var keys = DraftWriter.KeysOf(was);
        var old = keys.Zip(was).ToDictionary(pair => pair.First, pair => pair.Second);
        var probeKeys = _draft.PartsUnder(DraftKey.Of(DraftKey.Systems, system, "probes"));
        var fromProbes = probeKeys.SelectMany(probe => ProbeReadingKeys(system, probe).Select(pair => (pair.Key, pair.Field, Probe: probe))).ToList();
        var readings = new List<Reading>();
        foreach (var part in keys.Select(k => k.Part).Union(_draft.PartsUnder(list), StringComparer.Ordinal).Union(fromProbes.Select(p => p.Key.Part), StringComparer.Ordinal))
        {
            if (ReadingKey.Parse(part) is not { } key)
            {
                continue;
            }

            var itemPath = $"{path}[{readings.Count}]";
            var group = new DraftGroup(_draft, DraftKey.Under(list, part), itemPath, _trace);
            if (group.IsRemoved)
            {
                continue;
            }

            var before = old.GetValueOrDefault(key);
            var probe = fromProbes.Find(p => p.Key.Part == part);
            var follows = probe.Key is not null && (group.Text("value") is null || group.Text("follows") is not null);
            var record = follows ? FollowProbe(key, before, DraftKey.Of(DraftKey.Systems, system, "probes", probe.Probe), probe.Field, itemPath) : ReadingOf(group, key, before);
            if (record is not null)
            {
                _trace.Note(itemPath, group.Key);
                readings.Add(record);
            }
            else
            {
                group.NoteUnfinished(NeededOf(group));
            }
        }

        return readings;
    }

    // A probe's display and its reference are typed once; the visit repeats them as readings of the recirculating water.
    private IEnumerable<(ReadingKey Key, string Field)> ProbeReadingKeys(string system, string probe)
    {
        var group = DraftKey.Of(DraftKey.Systems, system, "probes", probe);
        var test = TestOf(_draft.Text(DraftKey.Under(group, "of")));
        if (test is not null && _draft.Text(DraftKey.Under(group, "at")) is "" or SamplePoints.Tower)
        {
            yield return (new ReadingKey(SamplePoints.Tower, test!, ReadingSource.Controller), "asFound");
            yield return (new ReadingKey(SamplePoints.Tower, test!, ReadingSource.Reference), "reference");
        }
    }

    private Reading? FollowProbe(ReadingKey key, Reading? was, string probe, string field, string path)
    {
        var group = new DraftGroup(_draft, probe, path, _trace);
        if (group.Number(field, "value") is not { } value || (group.Unit(field) ?? group.Unit("asFound")) is not { } unit)
        {
            return null;
        }

        return (was ?? new Reading { At = key.At, Test = key.Test, Source = key.Source, Unit = unit }) with
        {
            Value = value,
            Unit = unit,
            Instrument = key.Source == ReadingSource.Reference ? group.Text("instrument") : was?.Instrument,
            FirstValue = group.First(field) ?? was?.FirstValue,
            Confirmed = group.Confirmed(field) ?? (was?.Value == value ? was.Confirmed : null),
        };
    }

    private static IReadOnlyList<string> NeededOf(DraftGroup group) => group.Text("mode") switch
    {
        "drops" => ["drops", "perDrop"],
        "notTaken" => ["notTaken"],
        _ => ["value"],
    };

    private static Reading? ReadingOf(DraftGroup group, ReadingKey key, Reading? was)
    {
        var mode = group.Text("mode");
        var dropsWanted = mode == "drops";
        var notQuantifiable = mode == "notQuantifiable";
        var notTaken = mode == "notTaken" ? group.Text("notTaken") : null;
        var value = mode is null or "number" or "comparator" or "drops" ? group.Number("value") : null;
        _ = dropsWanted ? group.Number("drops", "value") : null;
        var drops = dropsWanted ? group.Number("drops") : null;
        var perDrop = dropsWanted ? group.Number("perDrop") : null;
        var counted = drops is not null && perDrop is not null;
        if (value is null && !counted && !notQuantifiable && notTaken is null)
        {
            return null;
        }

        var unit = (dropsWanted ? group.Unit("perDrop") : null) ?? group.Unit("value") ?? was?.Unit ?? group.Unit("notTaken") ?? string.Empty;
        group.Locate("unit", dropsWanted ? "perDrop" : "value");
        var dilution = group.Number("dilutionSample") is { } sample && group.Number("dilutionTotal") is { } total ? new Dilution { Sample = sample, Total = total } : null;
        group.NoteHalf("dilutionSample", "dilutionTotal");
        var none = notQuantifiable || notTaken is not null;
        return (was ?? new Reading { At = key.At, Test = key.Test, Source = key.Source, Unit = unit }) with
        {
            Value = none || counted ? null : value,
            Drops = none ? null : drops,
            PerDrop = none ? null : perDrop,
            Unit = unit,
            Qualifier = none ? null : group.Qualifier("value"),
            NotQuantifiable = notQuantifiable ? true : null,
            NotTaken = notTaken,
            Basis = group.Text("basis"),
            Method = group.Text("method"),
            Instrument = group.Text("instrument"),
            Lot = group.Text("lot"),
            Dilution = dilution,
            FirstValue = group.First(counted ? "drops" : "value"),
            Confirmed = group.Confirmed(counted ? "drops" : "value"),
            TakenAt = group.Time("takenAt", was?.TakenAt),
            ResultAt = group.Time("resultAt", was?.ResultAt),
            ReceivedAt = group.Time("receivedAt", was?.ReceivedAt),
            Lab = group.Text("lab"),
            LabRef = group.Text("labRef"),
            SampleId = group.Text("sampleId"),
            Incubation = group.Number("incubationDegC") is var degC && group.Number("incubationHours") is var hours && (degC ?? hours) is not null
                ? (was?.Incubation ?? new Incubation()) with { DegC = degC, Hours = hours }
                : null,
        };
    }

    private ProbeReading? ProbeOf(DraftGroup g, string system, string code, ProbeReading? was)
    {
        var probe = Probe(g, code, was);
        if (probe is null)
        {
            // The reference of the recirculating water is a reading of its own.
            g.NoteUnfinished(["asFound"], ProbeReadingKeys(system, code).Any() ? ["of", "reference"] : ["of"]);
        }

        return probe;
    }

    private static ProbeReading? Probe(DraftGroup g, string code, ProbeReading? was)
    {
        if (g.Number("asFound") is not { } asFound || (g.Unit("asFound") ?? was?.Unit) is not { } unit)
        {
            _ = g.Number("reference");
            return null;
        }

        var calibrated = g.Yes("calibrated");
        return (was ?? new ProbeReading { AsFound = asFound, Unit = unit, Probe = code }) with
        {
            Of = was is null ? g.Choice<ProbeKind>("of") : was.Of,
            SettledMin = g.Number("settledMin"),
            AsFound = asFound,
            Reference = g.Number("reference"),
            Instrument = g.Text("instrument"),
            AfterCleaning = g.Number("afterCleaning"),
            AsLeft = g.Number("asLeft"),
            Calibrated = calibrated,
            Calibration = calibrated == true ? Calibration(g, was?.Calibration) : null,
            Unit = unit,
        };
    }

    private static ProbeCalibration Calibration(DraftGroup g, ProbeCalibration? was) => (was ?? new ProbeCalibration()) with
    {
        Against = g.Choice<CalibrationAgainst>("against"),
        StandardValue = g.Number("standardValue"),
        StandardLot = g.Text("standardLot"),
        FactorBefore = g.Number("factorBefore"),
        FactorAfter = g.Number("factorAfter"),
        Reason = g.Text("calibrationReason"),
    };

    private static MeterReading? Meter(DraftGroup g, string code, MeterReading? was)
    {
        var read = (was ?? new MeterReading { Meter = code }) with
        {
            Dial = g.Number("dial"),
            Total = g.Number("total"),
            Replaced = g.Yes("replaced"),
            Reset = g.Yes("reset"),
            OldFinal = g.Number("oldFinal"),
            NewStart = g.Number("newStart"),
            ReplacedOn = g.Day("replacedOn"),
            Before = g.Number("before"),
            After = g.Number("after"),
            FirstDial = g.First("dial"),
            FirstTotal = g.First("total"),
        };
        return was is null && read == new MeterReading { Meter = code } ? null : read;
    }

    private static DrumReading? Drum(DraftGroup g, string code, DrumReading? was)
    {
        var level = g.Number("level");
        var read = (was ?? new DrumReading { Drum = code }) with
        {
            Level = level,
            Left = g.Number("left"),
            AddedL = LitresOf(g, "addedL"),
            RemovedL = LitresOf(g, "removedL"),
            SpareL = LitresOf(g, "spareL"),
            Swapped = g.Yes("swapped"),
            Lot = g.Text("lot"),
            ProductFound = g.Text("productFound"),
            FirstLevel = g.First("level"),
        };
        return was is null && read == new DrumReading { Drum = code } ? null : read with { Unit = g.Unit("level") ?? was?.Unit };
    }

    private static double? LitresOf(DraftGroup g, string name) =>
        g.Number(name) is { } amount ? VolumeEntry.Litres(amount, g.PlainUnit(name)) : null;

    private static HoursReading? Hours(DraftGroup g, string code, HoursReading? was) => g.Number("hours") is not { } hours ? null : (was ?? new HoursReading { Output = code, Hours = hours }) with
    {
        Hours = hours,
        Reset = g.Yes("reset"),
        Before = g.Number("before"),
        After = g.Number("after"),
        FirstHours = g.First("hours"),
    };

    private static PumpReading? Pump(DraftGroup g, string code, PumpReading? was)
    {
        var read = (was ?? new PumpReading { Pump = code }) with
        {
            StrokeFound = g.Number("strokeFound"),
            StrokeLeft = g.Number("strokeLeft"),
            SpeedFound = g.Number("speedFound"),
            SpeedLeft = g.Number("speedLeft"),
        };
        return was is null && read == new PumpReading { Pump = code } ? null : read;
    }

    private static Drawdown? DrawdownOf(DraftGroup g, string code, Drawdown? was) =>
        g.Number("millilitres") is { } millilitres && g.Number("seconds") is { } seconds ? new Drawdown { Pump = code, Millilitres = millilitres, Seconds = seconds } : null;

    private static SwitchReading? Switch(DraftGroup g, string code, SwitchReading? was)
    {
        var read = (was ?? new SwitchReading { Output = code }) with
        {
            Found = g.Choice<SwitchPosition>("found"),
            Left = g.Choice<SwitchPosition>("left"),
            Reason = g.Text("reason"),
        };
        return was is null && read == new SwitchReading { Output = code } ? null : read;
    }

    private static SettingReading? Setting(DraftGroup g, string name, SettingReading? was)
    {
        var read = (was ?? new SettingReading { Name = name }) with
        {
            Found = Value(g, "found"),
            Left = Value(g, "left"),
            NotRead = g.Yes("notRead") == true ? true : null,
            Reason = g.Text("reason"),
            Unit = g.Text("unit") ?? was?.Unit,
        };
        return was is null && read == new SettingReading { Name = name } ? null : read;
    }

    private static SettingValue? Value(DraftGroup g, string name)
    {
        if (g.Text(name) is not { } text)
        {
            return null;
        }

        if (!g.IsNumber(name) || text == "none")
        {
            return SettingValue.Of(text);
        }

        return g.Number(name) is { } number ? SettingValue.Of(number) : null;
    }

    private static Addition? AdditionOf(DraftGroup g, Addition? was) =>
        g.Text("product") is { } product && g.Number("amount") is { } amount
            ? (was ?? new Addition { Product = product, Amount = amount, Unit = string.Empty }) with
            {
                Product = product,
                Amount = amount,
                Unit = g.Unit("amount") ?? was?.Unit ?? "L",
                To = g.Text("to"),
                At = g.Time("at", was?.At),
                Reason = g.Text("reason"),
            }
            : null;

    private static VisitEvent? Event(DraftGroup g, VisitEvent? was) => g.Choice<EventType>("type") is { } type
        ? (was ?? new VisitEvent { Type = type }) with
        {
            Type = type,
            Of = g.Text("of"),
            At = g.Time("at", was?.At),
            Litres = LitresOf(g, "litres"),
            By = g.Text("by"),
            Note = g.Text("note"),
        }
        : null;

    private static AlarmReading? Alarm(DraftGroup g, AlarmReading? was) => g.Text("text") is { } text
        ? (was ?? new AlarmReading { Text = text }) with { Text = text, Output = g.Text("output"), Standing = g.Yes("standing") }
        : null;

    private static Observation? Observation(DraftGroup g, Observation? was) => g.Text("text") is { } text
        ? (was ?? new Observation { About = string.Empty, Text = text }) with { About = g.Text("about") ?? "tower", Text = text, Severity = g.Choice<Domain.Findings.Severity>("severity") }
        : null;

    // Why a value outside its range is left without an action is an observation about that test.
    private IEnumerable<Observation> RangeReasons(string list) => _draft.PartsUnder(list)
        .Select(part => (About: part, Reason: _draft.Text(DraftKey.Under(list, part, "reason")).Trim()))
        .Where(pair => pair.Reason.Length > 0)
        .Select(pair => new Observation { About = pair.About, Text = pair.Reason });

    // The format has no field for who took a bottle on: it is told as an observation about its system, or with the notes.
    private IEnumerable<string> Custody(string? system)
    {
        foreach (var row in _draft.Rows(DraftKey.Of(DraftKey.Visit, "samples")))
        {
            string Of(string name) => _draft.Text(DraftKey.Under(row, name)).Trim();
            if (Of("handedTo").Length > 0 && Of("system") == (system ?? string.Empty))
            {
                var at = _draft.ReadMoment(Of("handedAt"), null, null) is { } moment ? Shown.DayAndTime(moment.Wall, _trace.Language) : string.Empty;
                yield return Texts.StepTexts.Custody.In(_trace.Language, Of("bottle"), Of("handedTo"), at).TrimEnd(' ', ',');
            }
        }
    }

    private static VisitAction? Action(DraftGroup g, VisitAction? was) => g.Text("text") is { } text
        ? (was ?? new VisitAction { Text = text, Id = g.Id("id") }) with
        {
            For = g.Text("for"),
            Text = text,
            Owner = g.Text("owner"),
            Due = g.Day("due"),
            State = g.Choice<ActionState>("state"),
        }
        : null;

    private static Recommendation? Recommendation(DraftGroup g, Recommendation? was) => g.Text("text") is { } text
        ? (was ?? new Recommendation { Text = text, Id = g.Id("id") }) with { Text = text, Consequence = g.Text("consequence"), State = g.Choice<RecommendationState>("state") }
        : null;

    private static Sample? Sample(DraftGroup g, Sample? was)
    {
        var read = (was ?? new Sample()) with
        {
            Bottle = g.Text("bottle"),
            Point = g.Text("point"),
            TakenAt = g.Time("takenAt", was?.TakenAt),
            TemperatureCel = g.Number("temperatureCel") is { } temperature ? Celsius(temperature, g.PlainUnit("temperatureCel")) : null,
            ResidualMgPerL = g.Number("residualMgPerL"),
            Lab = g.Text("lab"),
            System = g.Text("system"),
        };
        return was is null && read == new Sample() ? null : read;
    }

    private static Signature? Signature(DraftGroup g, string by, Signature? was)
    {
        if (!Enum.TryParse<SignedBy>(by, out var signer))
        {
            return null;
        }

        var read = (was ?? new Signature { By = signer }) with { Name = g.Text("name"), Role = g.Text("role"), AbsentReason = g.Text("absentReason") };
        return was is null && read == new Signature { By = signer } ? null : read;
    }

    private static double? Celsius(double temperature, string? unit) =>
        unit is null or "" or UnitCodes.Celsius ? temperature : Units.Convert(temperature, unit, UnitCodes.Celsius) is { HasValue: true } converted ? Math.Round(converted.Value, 2) : null;

    private static string? TestOf(string probeKind) => probeKind switch
    {
        "" or nameof(ProbeKind.Conductivity) => TestCodes.Conductivity,
        nameof(ProbeKind.Ph) => TestCodes.Ph,
        nameof(ProbeKind.Orp) => TestCodes.Orp,
        _ => null,
    };
}
