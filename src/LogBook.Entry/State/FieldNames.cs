using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;
using LogBook.Entry.Drafts;
using LogBook.Entry.Plans;
using LogBook.Entry.Texts;

namespace LogBook.Entry.State;

/// <summary>Names of the fields, the same at the field, in a message, and in the read-back.</summary>
public static class FieldNames
{
    private static readonly Dictionary<string, Text> Plain = new(StringComparer.Ordinal)
    {
        ["kind"] = EntryTexts.KindOfVisit,
        ["reason"] = EntryTexts.Reason,
        ["technician"] = EntryTexts.DoneBy,
        ["state"] = StepTexts.ActionState,
        ["arrived"] = EntryTexts.Arrived,
        ["left"] = EntryTexts.Left,
        ["cleaning"] = StepTexts.Cleaning,
        ["notes"] = EntryTexts.Notes,
        ["leaveOpen"] = EntryTexts.LeaveOpen,
        ["amendReason"] = EntryTexts.WhyAmended,
        ["running"] = EntryTexts.Running,
        ["inUse"] = EntryTexts.InUse,
        ["clockOffByMin"] = StepTexts.ClockOff,
        ["programmeWeek"] = StepTexts.PlanWeek,
        ["lot"] = StepTexts.Lot,
        ["instrument"] = StepTexts.Instrument,
        ["dilutionSample"] = StepTexts.DilutionSample,
        ["dilutionTotal"] = StepTexts.DilutionTotal,
        ["notQuantifiable"] = StepTexts.ModeNotQuantifiable,
        ["takenAt"] = StepTexts.TakenAt,
        ["resultAt"] = StepTexts.ResultAt,
        ["receivedAt"] = StepTexts.ReceivedAt,
        ["lab"] = StepTexts.Laboratory,
        ["labRef"] = StepTexts.LabRef,
        ["sampleId"] = StepTexts.SampleId,
        ["incubationDegC"] = StepTexts.IncubationTemperature,
        ["incubationHours"] = StepTexts.IncubationHours,
        ["handedTo"] = StepTexts.HandedTo,
        ["handedAt"] = StepTexts.HandedAt,
        ["method"] = StepTexts.Method,
        ["settledMin"] = StepTexts.Settling,
        ["calibrated"] = StepTexts.Calibrated,
        ["against"] = StepTexts.CalibrateAgainst,
        ["standardValue"] = StepTexts.StandardValue,
        ["standardLot"] = StepTexts.StandardLot,
        ["factorBefore"] = StepTexts.FactorBefore,
        ["factorAfter"] = StepTexts.FactorAfter,
        ["calibrationReason"] = StepTexts.WhyCalibrated,
        ["replaced"] = StepTexts.Replaced,
        ["oldFinal"] = StepTexts.OldFinal,
        ["newStart"] = StepTexts.NewStart,
        ["replacedOn"] = StepTexts.ReplacedOn,
        ["before"] = StepTexts.Before,
        ["after"] = StepTexts.After,
        ["addedL"] = StepTexts.Added,
        ["removedL"] = StepTexts.TakenOut,
        ["spareL"] = StepTexts.Spare,
        ["swapped"] = StepTexts.Swapped,
        ["productFound"] = StepTexts.ProductFound,
        ["litres"] = StepTexts.BucketLitres,
        ["seconds"] = StepTexts.Seconds,
        ["millilitres"] = StepTexts.DrawnMl,
        ["standing"] = StepTexts.Standing,
        ["about"] = StepTexts.About,
        ["severity"] = StepTexts.HowSoon,
        ["type"] = StepTexts.Event,
        ["of"] = StepTexts.Part,
        ["at"] = StepTexts.When,
        ["note"] = EntryTexts.Note,
        ["product"] = StepTexts.Product,
        ["amount"] = StepTexts.Amount,
        ["to"] = StepTexts.To,
        ["for"] = StepTexts.ActionAbout,
        ["owner"] = StepTexts.Owner,
        ["due"] = StepTexts.Due,
        ["consequence"] = StepTexts.Consequence,
        ["bottle"] = StepTexts.Bottle,
        ["point"] = StepTexts.SamplePoint,
        ["temperatureCel"] = StepTexts.SampleTemperature,
        ["residualMgPerL"] = StepTexts.SampleResidual,
        ["system"] = StepTexts.ForSystem,
        ["output"] = StepTexts.Part,
    };

    /// <summary>Name of a field.</summary>
    /// <param name="key">Key of the field.</param>
    /// <param name="site">Code of the site.</param>
    /// <param name="firm">Set-up of the firm.</param>
    /// <param name="language">Language asked for.</param>
    /// <returns>The name, as in "Chloride, make-up".</returns>
    public static string Of(string key, string site, FirmSetUp firm, Language language)
    {
        var parts = DraftKey.Parts(key);
        var field = parts[^1];
        if (parts[0] == DraftKey.Visit && parts.Count > 2 && parts[1] == "signatures")
        {
            return Signature(parts[2], field).In(language);
        }

        if (parts is [DraftKey.Visit, "also", var code])
        {
            return EntryTexts.With.In(language, firm.People.TryGetValue(code, out var person) ? person.Name : code);
        }

        if (parts is [DraftKey.Systems, _, "maOutput", _])
        {
            return StepTexts.MaOutput.In(language);
        }

        if (parts[0] != DraftKey.Systems || parts.Count < 5)
        {
            return parts.Count > 3 && field == "text" ? RowText(parts[^3]).In(language) : PlainOf(field).In(language);
        }

        return OfPart(parts[2], parts[3], field, firm.System(site, parts[1])?.Probes.FirstOrDefault(p => p.Code == parts[3])?.Of, firm).In(language);
    }

    /// <summary>Name of a test at its point.</summary>
    /// <param name="key">The test.</param>
    /// <param name="firm">Set-up of the firm.</param>
    /// <returns>As in "Chloride, make-up".</returns>
    public static Text OfTest(ReadingKey key, FirmSetUp firm)
    {
        var name = TestCatalogue.Find(key.Test, firm)?.Name ?? TestTexts.NameOf(key.Test);
        var atPoint = Join(name, TestTexts.NameOfPoint(key.At));
        return key.Number == 1 ? atPoint : new Text($"{atPoint.En} ({key.Number})", $"{atPoint.Es} ({key.Number})", $"{atPoint.Pt} ({key.Number})");
    }

    private static Said OfPart(string list, string code, string field, Domain.Sites.ProbeKind? of, FirmSetUp firm) => (list, field) switch
    {
        ("readings", "value") when ReadingKey.Parse(code) is { } key => new Said(OfTest(key, firm)),
        ("readings", "drops") when ReadingKey.Parse(code) is { } key => new Said(StepTexts.DropsOf, OfTest(key, firm)),
        ("readings", "perDrop") when ReadingKey.Parse(code) is { } key => new Said(StepTexts.PerDrop, OfTest(key, firm)),
        ("readings", "notTaken") when ReadingKey.Parse(code) is { } key => new Said(StepTexts.WhyNotTaken, OfTest(key, firm)),
        ("readings", "mode") when ReadingKey.Parse(code) is { } key => new Said(StepTexts.HowRead, OfTest(key, firm)),
        ("readings", _) when ReadingKey.Parse(code) is { } key => new Said(Join(OfTest(key, firm), PlainOf(field).Wording)),
        ("probes", "asFound") => new Said(StepTexts.ProbeAsFound, code, ProbeName(of)),
        ("probes", "reference") => new Said(StepTexts.ReferenceReading, ProbeName(of)),
        ("probes", "afterCleaning") => new Said(StepTexts.AfterCleaning, ProbeName(of)),
        ("probes", "asLeft") => new Said(StepTexts.ProbeAsLeft, ProbeName(of)),
        ("probes", "instrument") => new Said(StepTexts.HandMeter),
        ("meters", "dial") => new Said(StepTexts.Dial, code),
        ("meters", "total") => new Said(StepTexts.Total, code),
        ("meters", "reset") => new Said(StepTexts.TotalReset),
        ("drums", "level") => new Said(StepTexts.DrumLevel, code),
        ("drums", "left") => new Said(Join(Same(code), StepTexts.LevelLeft)),
        ("drums", "lot") => new Said(StepTexts.DeliveredLot),
        ("drums", _) => new Said(Join(Same(code), PlainOf(field).Wording)),
        ("hoursRun", "hours") => new Said(StepTexts.HoursRun, code),
        ("hoursRun", "reset") => new Said(StepTexts.WasReset),
        ("pumps", "strokeFound") => new Said(Join(Same(code), new Said(StepTexts.Stroke, StepTexts.AsFound))),
        ("pumps", "strokeLeft") => new Said(Join(Same(code), new Said(StepTexts.Stroke, StepTexts.AsLeft))),
        ("pumps", "speedFound") => new Said(Join(Same(code), new Said(StepTexts.Speed, StepTexts.AsFound))),
        ("pumps", "speedLeft") => new Said(Join(Same(code), new Said(StepTexts.Speed, StepTexts.AsLeft))),
        ("switches", "found") => new Said(Join(Same(code), StepTexts.AsFound)),
        ("switches", "left") => new Said(Join(Same(code), StepTexts.AsLeft)),
        ("switches", _) => new Said(Join(Same(code), EntryTexts.Reason)),
        ("settings", "found") => new Said(StepTexts.SettingFound, VisitTexts.NameOfSetting(code)),
        ("settings", "left") => new Said(StepTexts.SettingLeft, VisitTexts.NameOfSetting(code)),
        ("settings", "reason") => new Said(StepTexts.WhyChanged, VisitTexts.NameOfSetting(code)),
        ("leftOpen", _) when Enum.TryParse<EntryStep>(code, out var step) => new Said(Join(WordsOf.Step(step), EntryTexts.LeaveOpen)),
        ("ranges", _) => new Said(StepTexts.OrReason, RangeName(code, firm)),
        ("additions", "reason") => new Said(EntryTexts.Reason),
        ("events", "litres") => new Said(StepTexts.EventVolume),
        (_, "text") => RowText(list),
        _ => PlainOf(field),
    };

    private static Text RangeName(string about, FirmSetUp firm)
    {
        var slash = about.IndexOf('/', StringComparison.Ordinal);
        return slash > 0 ? OfTest(new ReadingKey(about[..slash], about[(slash + 1)..], null), firm) : Same(about);
    }

    private static Text ProbeName(Domain.Sites.ProbeKind? of) => TestTexts.NameOf(of switch
    {
        Domain.Sites.ProbeKind.Ph => TestCodes.Ph,
        Domain.Sites.ProbeKind.Orp => TestCodes.Orp,
        _ => TestCodes.Conductivity,
    });

    private static Said RowText(string list) => new(list switch
    {
        "alarms" => StepTexts.Alarm,
        "observations" => StepTexts.WhatSeen,
        "actions" => StepTexts.Action,
        "recommendations" => StepTexts.Recommendation,
        _ => EntryTexts.Note,
    });

    private static Text Signature(string by, string field) => (by, field) switch
    {
        (nameof(SignedBy.Technician), "name") => StepTexts.TechnicianSignature,
        (_, "name") => StepTexts.CustomerSignature,
        (_, "role") => StepTexts.CustomerRole,
        _ => StepTexts.WhyUnsigned,
    };

    private static Said PlainOf(string field) => new(Plain.GetValueOrDefault(field, Same(field)));

    private static Text Join(Text first, Text second) => new($"{first.En}, {second.En}", $"{first.Es}, {second.Es}", $"{first.Pt}, {second.Pt}");

    private static Text Join(Text first, Said second) => Join(first, new Text(second.In(Language.English), second.In(Language.Spanish), second.In(Language.Portuguese)));

    private static Text Same(string text) => new(text, text, text);
}
