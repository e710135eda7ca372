using LogBook.Domain.History;
using LogBook.Domain.Programmes;
using LogBook.Domain.Quantities;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Exchange;

/// <summary>The set-up part of <see cref="ExchangeCheck"/>.</summary>
internal sealed class SetUpCheck(FirmSetUp firm, IssueList issues)
{
    private readonly HashSet<string> _ruleCodes = firm.Rules.Select(r => r.Code).ToHashSet(StringComparer.OrdinalIgnoreCase);

    /// <summary>Checks the set-up of a document against the set-up as it will be.</summary>
    public void Check(ExchangeDocument document)
    {
        ForEach(document.Tests, "tests", (test, path) =>
        {
            if (TestCatalogue.Find(test.Code) is not null)
            {
                issues.Block(path + ".code", "code-taken", CheckTexts.Taken, test.Code);
            }
        });
        ForEach(document.Products, "products", CheckProduct);
        ForEach(document.Lots, "lots", (lot, path) => Test(lot.Test, path + ".test"));
        ForEach(document.Rules, "rules", CheckRule);
        ForEach(document.Sites, "sites", CheckSite);
        ForEach(document.Systems, "systems", CheckSystem);
    }

    private static void ForEach<T>(IReadOnlyList<T> items, string list, Action<T, string> check)
    {
        for (var i = 0; i < items.Count; i++)
        {
            check(items[i], $"{list}[{i}]");
        }
    }

    private static bool Same(string a, string b) => a.Equals(b, StringComparison.OrdinalIgnoreCase);

    private TestInfo? Test(string code, string path)
    {
        var test = TestCatalogue.Find(code, firm);
        if (test is null)
        {
            issues.Unknown(path, code, CheckTexts.ATest);
        }

        return test;
    }

    private void Unit(TestInfo? test, string unit, string path)
    {
        if (test is not null && !test.Units.Contains(unit, StringComparer.Ordinal))
        {
            issues.Block(path, "unit-mismatch", CheckTexts.Unit, unit, test.Code, string.Join(", ", test.Units));
        }
    }

    private void CheckProduct(Product product, string path)
    {
        if (product.Residual is { } residual)
        {
            Test(residual.Test, path + ".residual.test");
        }

        for (var i = 0; i < product.NeverWith.Count; i++)
        {
            var other = product.NeverWith[i];
            if (!firm.Products.ContainsKey(other) && !IsKind(other))
            {
                issues.Block($"{path}.neverWith[{i}]", "unknown-code", CheckTexts.NeverWith, other);
            }
        }
    }

    private static bool IsKind(string text) =>
        text is "inhibitor" or "biocide" or "biocide:oxidising" or "biocide:non-oxidising" or "dispersant" or "acid" or "antifoam" or "other";

    private void CheckRule(Rule rule, string path)
    {
        if (rule.To is { } to && to < rule.From)
        {
            issues.Block(path + ".to", "wrong-order", CheckTexts.Before, "to", Day(to), "from", Day(rule.From));
        }

        if (rule.Test is null && rule.Task is null && rule.OnEvent is null)
        {
            issues.Block(path, "required", CheckTexts.RuleNeeds);
        }

        if (rule.OnEvent is { } name && !EventNames.Contains(name))
        {
            issues.Unknown(path + ".onEvent", name, CheckTexts.AnEvent);
        }

        var test = rule.Test is { } code ? Test(code, path + ".test") : null;
        ForEach(rule.Bands, path + ".bands", (band, bandPath) =>
        {
            Unit(test, band.Unit, bandPath + ".unit");
            if (band.EveryDays is { } every && !(every < rule.EveryDays))
            {
                issues.Block(bandPath + ".everyDays", "not-shorter", CheckTexts.BandIsShorter, every);
            }
        });
        if (rule.RetestDays is [var first, var last] && last < first)
        {
            issues.Block(path + ".retestDays[1]", "wrong-order", CheckTexts.Before, "retestDays", last, "retestDays", first);
        }
    }

    private void CheckSite(Site site, string path)
    {
        if (!firm.Customers.ContainsKey(site.Customer))
        {
            issues.Unknown(path + ".customer", site.Customer, CheckTexts.ACustomer);
        }

        if (site.AssignedTo is { } person && !firm.People.ContainsKey(person))
        {
            issues.Unknown(path + ".assignedTo", person, CheckTexts.APerson);
        }

        if (!TimeZoneInfo.TryFindSystemTimeZoneById(site.TimeZone, out var zone) || !zone.HasIanaId)
        {
            issues.Block(path + ".timeZone", "unknown-time-zone", CheckTexts.TimeZone, site.TimeZone);
        }
    }

    private void CheckSystem(WaterSystem system, string path)
    {
        if (!firm.Sites.ContainsKey(system.Site))
        {
            issues.Unknown(path + ".site", system.Site, CheckTexts.ASite);
        }

        for (var i = 0; i < system.Rules.Count; i++)
        {
            if (!_ruleCodes.Contains(system.Rules[i]))
            {
                issues.Unknown($"{path}.rules[{i}]", system.Rules[i], CheckTexts.ARule);
            }
        }

        // A part that was renewed stands again under its code with the day it went in.
        ExchangeCheck.Unique(system.Probes, p => p.Code, path + ".probes", issues, p => $"{p.Code}\n{p.From:O}");
        ExchangeCheck.Unique(system.Outputs, o => o.Code, path + ".outputs", issues);
        ExchangeCheck.Unique(system.Meters, m => m.Code, path + ".meters", issues, m => $"{m.Code}\n{m.From:O}");
        ExchangeCheck.Unique(system.Drums, d => d.Code, path + ".drums", issues, d => $"{d.Code}\n{d.From:O}");
        ExchangeCheck.Unique(system.Pumps, p => p.Code, path + ".pumps", issues, p => $"{p.Code}\n{p.From:O}");
        ExchangeCheck.Unique(system.Programmes, p => Day(p.From), path + ".programmes", issues, field: "from");
        ForEach(system.Meters, path + ".meters", (meter, meterPath) => CheckMeter(meter, system, meterPath));
        ForEach(system.Drums, path + ".drums", CheckDrum);
        ForEach(system.Pumps, path + ".pumps", (pump, pumpPath) =>
        {
            Drum(system, pump.Drum, pumpPath + ".drum");
            Output(system, pump.Output, pumpPath + ".output");
        });
        ForEach(system.Programmes, path + ".programmes", (programme, programmePath) => CheckProgramme(programme, system, programmePath));
        if (system.Operation is { } operation)
        {
            ForEach(operation.Stops, path + ".operation.stops", (stop, stopPath) =>
            {
                if (stop.To < stop.From)
                {
                    issues.Block(stopPath + ".to", "wrong-order", CheckTexts.Before, "to", Day(stop.To), "from", Day(stop.From));
                }
            });
        }
    }

    private void CheckMeter(Meter meter, WaterSystem system, string path)
    {
        for (var i = 0; i < meter.Serves.Count; i++)
        {
            if (firm.System(system.Site, meter.Serves[i]) is null)
            {
                issues.Unknown($"{path}.serves[{i}]", meter.Serves[i], CheckTexts.ASystem);
            }
        }
    }

    private void CheckDrum(Drum drum, string path)
    {
        if (!firm.Products.ContainsKey(drum.Product))
        {
            issues.Unknown(path + ".product", drum.Product, CheckTexts.AProduct);
        }

        if (drum.Shape == DrumShape.Table && drum.Points.Count == 1)
        {
            issues.Block(path + ".points", "wrong-count", CheckTexts.TwoPoints);
        }

        for (var i = 1; i < drum.Points.Count; i++)
        {
            if (drum.Points[i].Count == 2 && drum.Points[i - 1].Count == 2 && (drum.Points[i][0] <= drum.Points[i - 1][0] || drum.Points[i][1] <= drum.Points[i - 1][1]))
            {
                issues.Block($"{path}.points[{i}]", "wrong-order", CheckTexts.Rising, i, drum.Points[i][0], drum.Points[i][1]);
            }
        }

        if (drum.UnusableL is { } unusable && drum.CapacityL is { } capacity && unusable >= capacity)
        {
            issues.Block(path + ".unusableL", "out-of-range", CheckTexts.MoreThan, "unusableL", unusable, "L", drum.Code, capacity);
        }
    }

    private void CheckProgramme(Programme programme, WaterSystem system, string path)
    {
        if (programme.WeekOneFrom is { DayOfWeek: not DayOfWeek.Monday } monday)
        {
            issues.Block(path + ".weekOneFrom", "wrong-date", CheckTexts.Monday, Day(monday));
        }

        ForEach(programme.Ranges, path + ".ranges", (range, rangePath) =>
        {
            if (!IsPoint(system, range.At))
            {
                issues.Unknown(rangePath + ".at", range.At, CheckTexts.APoint);
            }

            Unit(Test(range.Test, rangePath + ".test"), range.Unit, rangePath + ".unit");
            if (range.Low is null && range.High is null)
            {
                issues.Block(rangePath, "required", CheckTexts.NoEnd);
            }
            else if (range.High < range.Low)
            {
                issues.Block(rangePath + ".high", "wrong-order", CheckTexts.LowHigh, range.High, range.Low);
            }
        });
        ForEach(programme.Feeds, path + ".feeds", (feed, feedPath) => CheckFeed(feed, programme, system, feedPath));
    }

    private void CheckFeed(Feed feed, Programme programme, WaterSystem system, string path)
    {
        if (Drum(system, feed.Drum, path + ".drum") && feed.Output is null && feed.Mode is not (FeedMode.ByHand or FeedMode.Feeder))
        {
            // A renewed pump stands twice under one code: it is one pump.
            var pumps = system.Pumps.Where(p => Same(p.Drum, feed.Drum)).Select(p => p.Code).Distinct(StringComparer.OrdinalIgnoreCase).Count();
            if (pumps != 1)
            {
                issues.Block(path + ".output", "required", CheckTexts.OutputNeeded, feed.Drum, pumps);
            }
        }

        if (feed.Output is { } output)
        {
            Output(system, output, path + ".output");
        }

        for (var i = 0; i < feed.WaitsFor.Count; i++)
        {
            Output(system, feed.WaitsFor[i], $"{path}.waitsFor[{i}]");
        }

        var weeks = programme.PlanWeeks ?? 4;
        for (var i = 0; i < feed.Weeks.Count; i++)
        {
            if (feed.Weeks[i] > weeks)
            {
                issues.Block($"{path}.weeks[{i}]", "out-of-range", CheckTexts.Week, "weeks", feed.Weeks[i], weeks);
            }
        }

        IReadOnlyList<string> units = feed.Mode switch
        {
            FeedMode.ByOrp => [UnitCodes.Millivolt],
            FeedMode.ByPh => [UnitCodes.Ph],
            FeedMode.ByResidual => UnitCodes.Of(UnitDimension.Concentration),
            _ => [],
        };
        if (feed.Unit is { } unit && units.Count > 0 && !units.Contains(unit, StringComparer.Ordinal))
        {
            issues.Block(path + ".unit", "unit-mismatch", CheckTexts.Unit, unit, CheckTexts.ThisFeed, string.Join(", ", units));
        }
    }

    /// <summary>Whether a text is a standard sample point or one of the system's.</summary>
    internal static bool IsPoint(WaterSystem? system, string at) =>
        at is SamplePoints.MakeUp or SamplePoints.Tower or SamplePoints.Bleed or SamplePoints.Softened or SamplePoints.Raw
        || (system?.SamplePoints.Contains(at, StringComparer.OrdinalIgnoreCase) ?? false);

    private bool Drum(WaterSystem system, string code, string path)
    {
        if (system.Drums.Any(d => Same(d.Code, code)))
        {
            return true;
        }

        issues.Unknown(path, code, CheckTexts.ADrum);
        return false;
    }

    private void Output(WaterSystem system, string code, string path)
    {
        if (!system.Outputs.Any(o => Same(o.Code, code)))
        {
            issues.Unknown(path, code, CheckTexts.AnOutput);
        }
    }

    private static string Day(DateOnly day) => day.ToString("O", System.Globalization.CultureInfo.InvariantCulture);
}
