using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;
using LogBook.Entry.Drafts;

namespace LogBook.Browser.Tests.Jobs;

/// <summary>What the technician types at the due site, step by step.</summary>
public static class TypedVisit
{
    private static readonly string Top = DraftKey.Of(DraftKey.Systems, "CT-1");

    /// <summary>The controller as found. The display stands 2.6 % under the hand meter.</summary>
    public static IReadOnlyList<(string Key, string Text)> Controller { get; } =
    [
        (Of("probes", "C1", "asFound"), "1200"),
        (Of("clockOffByMin"), "3"),
        (Of("maOutput", "found"), "11.68"),
        (Of("hoursRun", "bleed", "hours"), "535"),
        (Of("hoursRun", "inhibitor", "hours"), "34.8"),
        (Of("hoursRun", "biocide-1", "hours"), "10"),
        (Of("settings", "setPointUsPerCm", "found"), "1350"),
        (Of("settings", "differentialUsPerCm", "found"), "27"),
    ];

    /// <summary>The hand meter beside the probe.</summary>
    public static IReadOnlyList<(string Key, string Text)> Reference { get; } =
    [
        (Of("probes", "C1", "settledMin"), "6"),
        (Of("probes", "C1", "reference"), "1232"),
    ];

    /// <summary>Water tests; pH is above its range of 7.5 to 9.</summary>
    public static IReadOnlyList<(string Key, string Text)> Water { get; } =
    [
        (Result(SamplePoints.MakeUp, TestCodes.Conductivity, ReadingSource.Reference), "300"),
        (Result(SamplePoints.MakeUp, TestCodes.Chloride), "23"),
        (Result(SamplePoints.MakeUp, TestCodes.Calcium), "82"),
        (Result(SamplePoints.MakeUp, TestCodes.Alkalinity), "75"),
        (Result(SamplePoints.Tower, TestCodes.Ph), "9.3"),
        (Result(SamplePoints.Tower, TestCodes.Inhibitor), "100"),
        (Result(SamplePoints.Tower, TestCodes.Chloride), "103.5"),
        (Result(SamplePoints.Tower, TestCodes.Calcium), "365"),
        (Result(SamplePoints.Tower, TestCodes.Alkalinity), "320"),
        (Result(SamplePoints.Tower, TestCodes.Iron), "0.4"),
        (Result(SamplePoints.Tower, TestCodes.Temperature), "27"),
    ];

    /// <summary>Counters and drums; 25 L of inhibitor are filled in.</summary>
    public static IReadOnlyList<(string Key, string Text)> Stock { get; } =
    [
        (Of("meters", "MU", "dial"), "3180000"),
        (Of("meters", "MU", "total"), "2980000"),
        (Of("drums", "D-INH", "level"), "31.5"),
        (Of("drums", "D-INH", "addedL"), "25"),
        (Of("drums", "D-INH", "spareL"), "25"),
        (Of("drums", "D-B1", "level"), "27"),
        (Of("drums", "D-B1", "spareL"), "25"),
        (Of("pumps", "P-INH", "strokeFound"), "60"),
        (Of("pumps", "P-INH", "speedFound"), "100"),
        (Of("pumps", "P-B1", "strokeFound"), "80"),
        (Of("pumps", "P-B1", "speedFound"), "100"),
    ];

    /// <summary>Key of a part of the tower.</summary>
    public static string Of(params string[] parts) => DraftKey.Under(Top, parts);

    /// <summary>Key of the value of a test.</summary>
    public static string Result(string at, string test, ReadingSource? source = null) => DraftKey.Under(new ReadingKey(at, test, source).In("CT-1"), "value");
}
