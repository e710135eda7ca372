using LogBook.Domain.Findings;

namespace LogBook.Application.Demo;

/// <summary>Runs the engine over a demo firm and holds its headlines against the answers.</summary>
public static class ReplayScore
{
    /// <summary>Kinds about an instrument, a lot or a person: whether the site of the visit is healthy says nothing about them.</summary>
    private static readonly string[] RoundWide = [FindingKinds.InstrumentShift, FindingKinds.LotShift, FindingKinds.SecondLook];

    /// <summary>Kinds that fall due by themselves on a healthy site too.</summary>
    private static readonly string[] TrueDues = [FindingKinds.ClockDue];

    /// <summary>Scores the engine as it is.</summary>
    /// <param name="firm">A generated firm.</param>
    /// <param name="seed">Its seed, for the reader.</param>
    /// <returns>What was found, when, and what was said wrongly.</returns>
    public static ReplayReport Of(DemoFirmResult firm, ulong seed)
    {
        ArgumentNullException.ThrowIfNull(firm);
        return Of(firm, Headlines.Of(firm.Document, DemoFirm.LastDay), seed);
    }

    /// <summary>Scores headlines.</summary>
    internal static ReplayReport Of(DemoFirmResult firm, IReadOnlyList<Headline> headlines, ulong seed)
    {
        var lines = firm.Answers.Lines;
        var stories = lines.Where(l => l.Kinds.Count > 0).Select(l => Line(l, headlines)).ToList();
        return new ReplayReport
        {
            Seed = seed,
            Lines = stories,
            Control = [.. lines.Where(l => l.MostPlanOrAct is not null).Select(l => Control(l, headlines))],
            HealthyYears = firm.Document.Sites.Sum(s => HealthyDays(firm, s.Code)) / 365.25,
            FalseFlags = [.. headlines.Where(h => h.IsNew && !TrueDues.Contains(h.Kind) && IsFalse(firm, h))],
        };
    }

    private static ReplayLine Line(DemoAnswer answer, IReadOnlyList<Headline> headlines)
    {
        bool IsRight(Headline h) => answer.Kinds.Contains(h.Kind)
            && (answer.Site is null || h.Site == answer.Site)
            && (!answer.About.TryGetValue(h.Kind, out var code) || h.About.Split(' ').Contains(code, StringComparer.OrdinalIgnoreCase));

        // What stood before the trouble began was not about it.
        var right = headlines.FirstOrDefault(h => IsRight(h) && h.From >= answer.Onset);
        var sites = answer.Site is { } own ? [own] : answer.Sites;
        return new ReplayLine
        {
            Story = answer.Story,
            Site = answer.Site,
            Accepted = answer.Kinds,
            Onset = answer.Onset,
            Latest = answer.Latest,
            Found = right,
            First = headlines.FirstOrDefault(h => (h.Site is null ? answer.Site is null : sites.Contains(h.Site)) && h.From >= answer.Onset && !TrueDues.Contains(h.Kind)),
            Forbidden = [.. answer.Forbidden.SelectMany(f => Wrong(f, sites, headlines))],
        };
    }

    private static IEnumerable<Headline> Wrong(DemoForbidden forbidden, IReadOnlyList<string> sites, IReadOnlyList<Headline> headlines)
    {
        var concerned = forbidden.Sites.Count > 0 ? forbidden.Sites : sites;
        foreach (var headline in headlines.Where(h => forbidden.Kinds.Contains(h.Kind) && h.Site is { } site && concerned.Contains(site)))
        {
            var from = headline.From > forbidden.From ? headline.From : forbidden.From;
            var until = headline.Until < forbidden.Until.AddDays(1) ? headline.Until : forbidden.Until.AddDays(1);
            var beside = headlines.Where(h => h.Site == headline.Site && forbidden.UnlessWith.Contains(h.Kind)).ToList();
            for (var day = from; day < until; day = day.AddDays(1))
            {
                if (!beside.Exists(h => h.From <= day && h.Until > day))
                {
                    yield return headline with { From = day };
                    break;
                }
            }
        }
    }

    private static ReplayControl Control(DemoAnswer answer, IReadOnlyList<Headline> headlines) => new()
    {
        Site = answer.Site!,
        Most = answer.MostPlanOrAct!.Value,
        Flags = [.. headlines.Where(h => h.Site == answer.Site && h.IsNew && !TrueDues.Contains(h.Kind))],
    };

    private static int HealthyDays(DemoFirmResult firm, string site)
    {
        var first = DateOnly.FromDateTime(firm.Document.Visits.Where(v => v.Site == site).Min(v => v.Arrived.Utc));
        var days = 0;
        for (var day = first; day <= DemoFirm.LastDay; day = day.AddDays(1))
        {
            days += IsHealthy(firm, site, day) ? 1 : 0;
        }

        return days;
    }

    private static bool IsFalse(DemoFirmResult firm, Headline headline) => RoundWide.Contains(headline.Kind) || headline.Site is null
        ? !firm.Answers.Lines.Any(l => l.Kinds.Contains(headline.Kind) && headline.From >= l.Onset)
        : IsHealthy(firm, headline.Site, headline.From);

    /// <summary>Nothing is wrong at the site on the day: no story has begun that is not over.</summary>
    private static bool IsHealthy(DemoFirmResult firm, string site, DateOnly day)
    {
        foreach (var story in firm.Answers.Lines.Where(l => l.Kinds.Count > 0 && (l.Site == site || l.Sites.Contains(site))).GroupBy(l => l.Story))
        {
            var over = story.Max(l => l.Over) ?? DateOnly.MaxValue;
            if (day >= story.Min(l => l.Onset) && day <= over)
            {
                return false;
            }
        }

        return true;
    }
}
