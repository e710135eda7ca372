using LogBook.Domain.Exchange;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Quantities;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Visits;

/// <summary>
/// What a visit names must be in the set-up, and what it says must be possible there: the blocking checks that go beyond
/// the form of one object. They run on import and on every entry.
/// </summary>
internal sealed class VisitReferenceCheck(FirmSetUp firm, IssueList issues)
{
    /// <summary>A level is refused beyond this part of the drum's height or volume: gauges overread a little at the brim.</summary>
    private const double Brim = 1.02;

    private TimeZoneInfo? _zone;

    /// <summary>Checks one visit.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="prefix">Beginning of the paths: "visits[3]." or nothing.</param>
    public void Check(Visit visit, string prefix)
    {
        if (!firm.Sites.ContainsKey(visit.Site))
        {
            issues.Unknown(prefix + "site", visit.Site, CheckTexts.ASite);
        }

        _zone = firm.Sites.TryGetValue(visit.Site, out var site) && TimeZoneInfo.TryFindSystemTimeZoneById(site.TimeZone, out var zone) ? zone : null;
        Person(visit.Technician, prefix + "technician");
        for (var i = 0; i < visit.Also.Count; i++)
        {
            Person(visit.Also[i], $"{prefix}also[{i}]");
        }

        NotBefore(visit.Left, prefix + "left", visit.Arrived, "arrived", "left-before-arrived");
        if (visit.Kind == VisitKind.Stopped && string.IsNullOrWhiteSpace(visit.Reason))
        {
            issues.Block(prefix + "reason", "required", CheckTexts.StoppedNeeds);
        }

        CheckAmendment(visit, prefix);
        ExchangeCheck.Unique(visit.Systems, s => s.System, prefix + "systems", issues, field: "system");
        ExchangeCheck.Unique(visit.Photos, p => p.Id.ToString("D"), prefix + "photos", issues, field: "id");
        for (var i = 0; i < visit.Systems.Count; i++)
        {
            CheckSystem(visit, visit.Systems[i], $"{prefix}systems[{i}].");
        }

        for (var i = 0; i < visit.Samples.Count; i++)
        {
            if (visit.Samples[i].System is { } code && firm.Sites.ContainsKey(visit.Site) && firm.System(visit.Site, code) is null)
            {
                issues.Unknown($"{prefix}samples[{i}].system", code, CheckTexts.ASystem);
            }
        }
    }

    private static bool Same(string a, string b) => a.Equals(b, StringComparison.OrdinalIgnoreCase);

    private void CheckAmendment(Visit visit, string prefix)
    {
        var version = visit.Version ?? 1;
        if (version == 1)
        {
            if (visit.Amends is not null)
            {
                issues.Block(prefix + "version", "wrong-version", CheckTexts.VersionNeeded, version);
            }

            return;
        }

        Needed(visit.Amends is null, "amends");
        Needed(string.IsNullOrWhiteSpace(visit.AmendedBy), "amendedBy");
        Needed(visit.AmendedAt is null, "amendedAt");
        Needed(string.IsNullOrWhiteSpace(visit.Reason), "reason");
        if (visit.Amends >= version)
        {
            issues.Block(prefix + "amends", "wrong-version", CheckTexts.AmendsLater, visit.Amends, version);
        }

        if (!string.IsNullOrWhiteSpace(visit.AmendedBy))
        {
            Person(visit.AmendedBy, prefix + "amendedBy");
        }

        NotBefore(visit.AmendedAt, prefix + "amendedAt", visit.Arrived, "arrived", "wrong-order");

        void Needed(bool isMissing, string field)
        {
            if (isMissing)
            {
                issues.Block(prefix + field, "required", CheckTexts.AmendmentNeeds, field, version);
            }
        }
    }

    private void CheckSystem(Visit visit, VisitedSystem record, string path)
    {
        var system = firm.System(visit.Site, record.System);
        if (system is null && firm.Sites.ContainsKey(visit.Site))
        {
            issues.Unknown(path + "system", record.System, CheckTexts.ASystem);
        }

        for (var i = 0; i < record.Readings.Count; i++)
        {
            CheckReading(record.Readings[i], system, $"{path}readings[{i}].");
        }

        for (var i = 0; i < record.Additions.Count; i++)
        {
            if (!firm.Products.ContainsKey(record.Additions[i].Product))
            {
                issues.Unknown($"{path}additions[{i}].product", record.Additions[i].Product, CheckTexts.AProduct);
            }
        }

        if (system is null)
        {
            // Without the system every part of it would be unknown too: one message is enough.
            return;
        }

        for (var i = 0; i < record.Probes.Count; i++)
        {
            CheckProbe(record.Probes[i], system, $"{path}probes[{i}].");
        }

        for (var i = 0; i < record.Meters.Count; i++)
        {
            CheckMeter(record.Meters[i], system, visit, $"{path}meters[{i}].");
        }

        for (var i = 0; i < record.Drums.Count; i++)
        {
            CheckDrum(record.Drums[i], system, visit, $"{path}drums[{i}].");
        }

        ExchangeCheck.Unique(record.Meters, m => m.Meter, path + "meters", issues, field: "meter");
        ExchangeCheck.Unique(record.Drums, d => d.Drum, path + "drums", issues, field: "drum");
        ExchangeCheck.Unique(record.HoursRun, h => h.Output, path + "hoursRun", issues, field: "output");
        ExchangeCheck.Unique(record.Switches, s => s.Output, path + "switches", issues, field: "output");
        Codes(record.HoursRun, h => h.Output, system.Outputs.Select(o => o.Code), path + "hoursRun", "output", CheckTexts.AnOutput);
        Codes(record.Switches, s => s.Output, system.Outputs.Select(o => o.Code), path + "switches", "output", CheckTexts.AnOutput);
        Codes(record.Alarms, a => a.Output, system.Outputs.Select(o => o.Code), path + "alarms", "output", CheckTexts.AnOutput);
        Codes(record.Pumps, p => p.Pump, system.Pumps.Select(p => p.Code), path + "pumps", "pump", CheckTexts.APump);
        Codes(record.Drawdowns, d => d.Pump, system.Pumps.Select(p => p.Code), path + "drawdowns", "pump", CheckTexts.APump);
    }

    private void Codes<T>(IReadOnlyList<T> items, Func<T, string?> code, IEnumerable<string> known, string list, string field, Languages.Text expected)
    {
        if (items.Count == 0)
        {
            return;
        }

        var codes = known.ToHashSet(StringComparer.OrdinalIgnoreCase);
        for (var i = 0; i < items.Count; i++)
        {
            if (code(items[i]) is { } one && !codes.Contains(one))
            {
                issues.Unknown($"{list}[{i}].{field}", one, expected);
            }
        }
    }

    private void CheckReading(Reading reading, WaterSystem? system, string path)
    {
        if (!SetUpCheck.IsPoint(system, reading.At) && system is not null)
        {
            issues.Unknown(path + "at", reading.At, CheckTexts.APoint);
        }

        var test = TestCatalogue.Find(reading.Test, firm);
        if (test is null)
        {
            issues.Unknown(path + "test", reading.Test, CheckTexts.ATest);
        }
        else if (!test.Units.Contains(reading.Unit, StringComparer.Ordinal))
        {
            issues.Block(path + "unit", "unit-mismatch", CheckTexts.Unit, reading.Unit, test.Code, string.Join(", ", test.Units));
        }

        if (reading.Value is { } value && value < 0 && test is { MayBeNegative: false })
        {
            issues.Block(path + "value", "negative", CheckTexts.Negative, "value", value, test.Code);
        }

        Instrument(reading.Instrument, path + "instrument");
        NotBefore(reading.ResultAt, path + "resultAt", reading.TakenAt, "takenAt", "result-before-taken");
        NotBefore(reading.ReceivedAt, path + "receivedAt", reading.TakenAt, "takenAt", "received-before-taken");
    }

    private void CheckProbe(ProbeReading reading, WaterSystem system, string path)
    {
        var of = reading.Of ?? ProbeKind.Conductivity;
        if (reading.Probe is { } code)
        {
            var probe = system.Probes.FirstOrDefault(p => Same(p.Code, code));
            if (probe is null)
            {
                issues.Unknown(path + "probe", code, CheckTexts.AProbe);
            }
            else if (reading.Of is { } said && said != probe.Of)
            {
                issues.Block(path + "of", "probe-kind", CheckTexts.ProbeOf, TestOf(said), TestOf(probe.Of), code);
            }

            of = probe?.Of ?? of;
        }
        else
        {
            var count = system.Probes.Where(p => p.Of == of).Select(p => p.Code).Distinct(StringComparer.OrdinalIgnoreCase).Count();
            if (count != 1)
            {
                issues.Block(path + "probe", "required", CheckTexts.ProbeNeeded, count, TestOf(of));
            }
        }

        var test = TestCatalogue.Find(TestOf(of))!;
        if (!test.Units.Contains(reading.Unit, StringComparer.Ordinal))
        {
            issues.Block(path + "unit", "unit-mismatch", CheckTexts.Unit, reading.Unit, test.Code, string.Join(", ", test.Units));
        }

        if (of != ProbeKind.Orp)
        {
            NotNegative(reading.AsFound, path + "asFound", test.Code);
            NotNegative(reading.Reference, path + "reference", test.Code);
            NotNegative(reading.AfterCleaning, path + "afterCleaning", test.Code);
            NotNegative(reading.AsLeft, path + "asLeft", test.Code);
        }

        Instrument(reading.Instrument, path + "instrument");
    }

    private static string TestOf(ProbeKind kind) => kind switch
    {
        ProbeKind.Ph => TestCodes.Ph,
        ProbeKind.Orp => TestCodes.Orp,
        _ => TestCodes.Conductivity,
    };

    private void CheckMeter(MeterReading reading, WaterSystem system, Visit visit, string path)
    {
        var meter = SetUpParts.MeterOn(system, reading.Meter, visit.Arrived);
        if (meter is null)
        {
            issues.Unknown(path + "meter", reading.Meter, CheckTexts.AMeter);
            return;
        }

        // The dial is entered as it shows, before any multiplier.
        Register(reading.Dial, meter.Digits, meter.Code, path + "dial");
        Register(reading.NewStart, meter.Digits, meter.Code, path + "newStart");
        if (meter.TotalDigits is { } digits)
        {
            Register(reading.Total, digits, meter.Code, path + "total");
        }
    }

    private void Register(double? value, int digits, string meter, string path)
    {
        var end = Math.Pow(10, digits);
        if (value >= end)
        {
            issues.Block(path, "out-of-range", CheckTexts.RegisterTooLarge, VisitFieldTexts.NameOf(path), value, end, meter);
        }
    }

    private void CheckDrum(DrumReading reading, WaterSystem system, Visit visit, string path)
    {
        if (reading.ProductFound is { } product && !firm.Products.ContainsKey(product))
        {
            issues.Unknown(path + "productFound", product, CheckTexts.AProduct);
        }

        var drum = SetUpParts.DrumOn(system, reading.Drum, visit.Arrived);
        if (drum is null)
        {
            issues.Unknown(path + "drum", reading.Drum, CheckTexts.ADrum);
            return;
        }

        if (drum.CapacityL is { } capacity)
        {
            AtMost(reading.AddedL, capacity * Brim, capacity, UnitCodes.Litre, drum.Code, path + "addedL");
            AtMost(reading.RemovedL, capacity * Brim, capacity, UnitCodes.Litre, drum.Code, path + "removedL");
        }

        if (reading.Unit is not { } unit || Needs(drum, unit) is not null)
        {
            if (reading.Unit is not null)
            {
                issues.Block(path + "unit", "unit-mismatch", CheckTexts.NeedsDrum, reading.Unit, Needs(drum, reading.Unit), drum.Code);
            }

            return;
        }

        if (DrumLimits.Highest(drum, unit, firm.Products.GetValueOrDefault(drum.Product)) is { } highest)
        {
            AtMost(reading.Level, highest * Brim, highest, unit, drum.Code, path + "level");
            AtMost(reading.Left, highest * Brim, highest, unit, drum.Code, path + "left");
        }
    }

    /// <summary>Field of the drum that a unit of level needs and does not find.</summary>
    private static string? Needs(Drum drum, string unit) => UnitCodes.DimensionOf(unit) switch
    {
        UnitDimension.Mass when drum.TareKg is null => "tareKg",
        UnitDimension.Percent when drum.CapacityL is null && drum.Shape != DrumShape.Table => "capacityL",
        UnitDimension.Length when drum.Shape == DrumShape.ByWeight => "heightCm",
        _ => null,
    };

    private void AtMost(double? value, double limit, double shown, string unit, string drum, string path)
    {
        if (value > limit)
        {
            issues.Block(path, "beyond-capacity", CheckTexts.MoreThan, VisitFieldTexts.NameOf(path), value, unit, drum, Math.Round(shown, 1));
        }
    }

    private void Person(string code, string path)
    {
        if (!firm.People.ContainsKey(code))
        {
            issues.Unknown(path, code, CheckTexts.APerson);
        }
    }

    private void Instrument(string? code, string path)
    {
        if (code is not null && !firm.Instruments.ContainsKey(code))
        {
            issues.Unknown(path, code, CheckTexts.AnInstrument);
        }
    }

    private void NotNegative(double? value, string path, string test)
    {
        if (value < 0)
        {
            issues.Block(path, "negative", CheckTexts.Negative, IssueList.Leaf(path), value, test);
        }
    }

    private void NotBefore(Moment? later, string path, Moment? earlier, string earlierName, string code)
    {
        if (later is not { } end || earlier is not { } start || end >= start)
        {
            return;
        }

        // Both are told by one clock, that of the site: with their own offsets the earlier could read as the later.
        var (wallOfEnd, wallOfStart) = (Wall(end), Wall(start));
        var isSameMinute = Shown.DayAndTime(wallOfEnd, issues.Language) == Shown.DayAndTime(wallOfStart, issues.Language);
        issues.Block(path, code, CheckTexts.Before, VisitFieldTexts.NameOf(path), Said(wallOfEnd), VisitFieldTexts.NameOf(earlierName), Said(wallOfStart));

        DateTime Wall(Moment moment) => _zone is null ? moment.Wall : TimeZoneInfo.ConvertTimeFromUtc(moment.Utc, _zone);
        string Said(DateTime wall) => isSameMinute ? Shown.DayAndSecond(wall, issues.Language) : Shown.DayAndTime(wall, issues.Language);
    }
}
