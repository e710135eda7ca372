using LogBook.Application.Data;
using LogBook.Application.Reviews;
using LogBook.Domain.Findings;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Web.Components;
using LogBook.Web.Features.Attention;
using LogBook.Web.Features.Records;
using LogBook.Web.Features.SetUp;
using LogBook.Web.Features.Shelf;

namespace LogBook.Web.Features;

/// <summary>Where the cause of a finding can be looked at: the one place that knows which record belongs to which kind.</summary>
public static class FindingLinks
{
    /// <summary>Records to open next; empty where Site history is the place to look.</summary>
    /// <param name="key">The finding.</param>
    /// <param name="mayKeepSetUp">Whether the reader may open records of the set-up.</param>
    /// <param name="visit">Visit at which the finding was first seen: a record opens at its row.</param>
    public static IReadOnlyList<(string Address, Text Name)> Of(FindingKey key, bool mayKeepSetUp, Guid? visit = null)
    {
        if (key.Site is not { } site)
        {
            return [.. OfFirm(key, mayKeepSetUp)];
        }

        var places = new List<(string, Text)>();
        if (key.System is { } system)
        {
            switch (key.Kind)
            {
                case FindingKinds.ProbeReadsOff or FindingKinds.ProbeDrifting or FindingKinds.ProbeFouled or FindingKinds.ConductivityOut:
                    places.Add((ReadingLinks.Probes(site, system, visit, PartOf(key, "probe")), RecordTexts.Probe));
                    break;
                case FindingKinds.ResidualLow or FindingKinds.ResidualHigh or FindingKinds.BiocideLapse when visit is { } tested && FollowsADisplay(key):
                    places.Add((ReadingLinks.ByDisplay(site, system, tested), RecordTexts.Followed));
                    break;
                case FindingKinds.WaterLoss:
                    // The register alone shows no loss that the controller hides: the bleed's hours do.
                    if (visit is { } seen)
                    {
                        places.Add((ReadingLinks.Balance(site, system, key.FirstSeen, seen), RecordTexts.Balance));
                    }

                    places.Add((ReadingLinks.Meters(site, system, visit), RecordTexts.Meter));
                    break;
                case FindingKinds.MeterStopped or FindingKinds.MeterBackwards or FindingKinds.PulsesLost:
                    places.Add((ReadingLinks.Meters(site, system, visit, PartOf(key, "meter")), RecordTexts.Meter));
                    break;
                case FindingKinds.PumpOutput or FindingKinds.FeedLow or FindingKinds.FeedHigh or FindingKinds.OverfedThenEmpty or FindingKinds.WrongProduct:
                    places.Add((ReadingLinks.Pumps(site, system, visit, PartOf(key, "pump")), RecordTexts.Pump));
                    break;
            }
        }

        if (key.Kind is FindingKinds.ClockDue or FindingKinds.MicrobiologyHigh or FindingKinds.RestartUnproved or FindingKinds.SummaryUndelivered)
        {
            places.Add((ReadingLinks.ClocksOf(site), FrameTexts.Clocks));
        }

        if (key.Kind is FindingKinds.RunsOut or FindingKinds.StockUnexplained)
        {
            places.Add((ReadingLinks.ShelfOf(site), FrameTexts.Shelf));
        }

        if (key.Kind is FindingKinds.MakeUpChanged or FindingKinds.Depositing)
        {
            places.Add((ReadingLinks.MakeUpOf(site), ShelfTexts.MakeUp));
        }

        return places;
    }

    // Oxidisers are the products that feeds by ORP or residual hold.
    private static bool FollowsADisplay(FindingKey key) =>
        key.Kind == FindingKinds.BiocideLapse || PartOf(key, "test") is { } test && (test.Equals(TestCodes.FreeHalogen, StringComparison.OrdinalIgnoreCase) || test.Equals(TestCodes.TotalHalogen, StringComparison.OrdinalIgnoreCase));

    private static string? PartOf(FindingKey key, string name) =>
        key.About.Split(' ', StringSplitOptions.RemoveEmptyEntries).FirstOrDefault(part => part.StartsWith(name + ":", StringComparison.Ordinal))?[(name.Length + 1)..];

    // About a hand meter, a reagent lot or somebody's records: what it is about stands in the subject.
    private static IEnumerable<(string Address, Text Name)> OfFirm(FindingKey key, bool mayKeepSetUp)
    {
        foreach (var (name, code) in key.About.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(part => part.Split(':', 2)).Where(part => part.Length == 2).Select(part => (part[0], part[1])))
        {
            switch (name)
            {
                case "person":
                    yield return (ReadingLinks.VisitsBy(code), AttentionTexts.VisitsOfPerson);
                    break;
                case "instrument" when mayKeepSetUp:
                    yield return (SetUpLinks.Record(SetUpKind.Instrument, code), AttentionTexts.Instrument);
                    break;
                case "lot" when mayKeepSetUp:
                    yield return (SetUpLinks.Record(SetUpKind.Lot, code), AttentionTexts.Lot);
                    break;
            }
        }
    }
}
