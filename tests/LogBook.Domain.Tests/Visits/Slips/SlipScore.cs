using System.Globalization;
using LogBook.Bank.Firms;
using LogBook.Bank.Runs;
using LogBook.Domain.History;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Programmes;
using LogBook.Domain.Simulation;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Visits.Slips;

/// <summary>How many slips are asked about, and how many true values.</summary>
internal sealed class SlipScore
{
    // The form is given the last visits of the site; the first ones of a site have nothing to compare with.
    private const int LookBack = 12;
    private const int Fewest = 4;

    private readonly Dictionary<(SlipKind Kind, string Field), (int Asked, int Made)> _slips = [];
    private readonly Dictionary<string, (int Asked, int Typed)> _true = new(StringComparer.Ordinal);
    private readonly List<string> _examples = [];

    public int Visits { get; private set; }

    public int Challenges { get; private set; }

    public int TrueValues => _true.Values.Sum(v => v.Typed);

    public int TrueAsked => _true.Values.Sum(v => v.Asked);

    public (int Asked, int Made) Powers => Sum(s => s.Kind is SlipKind.TimesTen or SlipKind.DividedByTen);

    public (int Asked, int Made) Rest => Sum(s => s.Kind is not (SlipKind.TimesTen or SlipKind.DividedByTen));

    public void Add(BankFirm firm, int slipsPerField)
    {
        var setUp = new FirmSetUp(firm.Document);
        foreach (var system in firm.Systems.Where(s => !s.Faults.Any(f => f.Invented is not null)))
        {
            var visits = SystemRun.Of(system, firm).Visits;
            for (var i = Fewest; i < visits.Count; i++)
            {
                var context = new VisitContext(setUp, [.. visits.Take(i).TakeLast(LookBack)]);
                Look(visits[i], setUp, context, SplitMix.For(system.Seed, FormattableString.Invariant($"slips {i}")), slipsPerField);
            }
        }
    }

    public string Report()
    {
        var lines = new List<string>
        {
            Line("x10 and /10 asked", Powers),
            Line("the rest asked", Rest),
            Line("true values asked", (TrueAsked, TrueValues)),
            string.Create(CultureInfo.InvariantCulture, $"challenges per honest visit {(double)Challenges / Visits:0.000} ({Challenges} in {Visits} visits)"),
        };
        lines.AddRange(_slips.GroupBy(s => s.Key.Kind).OrderBy(g => g.Key).Select(g => Line(g.Key.ToString(), (g.Sum(x => x.Value.Asked), g.Sum(x => x.Value.Made)))));
        foreach (var field in _true.Keys.Order(StringComparer.Ordinal))
        {
            var kinds = string.Join(' ', Enum.GetValues<SlipKind>().Select(k => _slips.TryGetValue((k, field), out var s) ? string.Create(CultureInfo.InvariantCulture, $"{k} {100.0 * s.Asked / s.Made:0}%/{s.Made}") : ""));
            lines.Add(Line(field + " true", _true[field]) + " | " + kinds);
        }

        return string.Join('\n', lines.Concat(_examples.Take(60)));
    }

    private static string Line(string what, (int Asked, int Made) count) =>
        string.Create(CultureInfo.InvariantCulture, $"{what}: {100.0 * count.Asked / Math.Max(1, count.Made):0.00} % ({count.Asked} of {count.Made})");

    private void Look(Visit visit, FirmSetUp setUp, VisitContext context, SplitMix random, int slipsPerField)
    {
        var fields = TypedFields.Of(visit, setUp);
        var before = VisitChecks.Check(visit, context);
        Visits++;
        Challenges += before.DistinctBy(i => NameOf(visit, i) + Point(visit, i)).Count();
        _examples.AddRange(before.Select(i => $"  {visit.Site} {visit.Arrived.Text} {i.Path}: {i.Message}"));
        var told = before.Select(i => i.Path).ToHashSet(StringComparer.Ordinal);
        var maker = new SlipMaker(random);
        for (var i = 0; i < fields.Count; i++)
        {
            var (asked, typed) = _true.GetValueOrDefault(fields[i].Name);
            _true[fields[i].Name] = (asked, typed + 1);
            for (var n = 0; n < slipsPerField; n++)
            {
                var kind = (SlipKind)random.NextBelow(Enum.GetValues<SlipKind>().Length);
                if (maker.Make(kind, fields, i) is { } slipped)
                {
                    var isAsked = VisitChecks.Check(slipped, context).Any(issue => !told.Contains(issue.Path));
                    var (a, m) = _slips.GetValueOrDefault((kind, fields[i].Name));
                    _slips[(kind, fields[i].Name)] = (a + (isAsked ? 1 : 0), m + 1);
                }
            }
        }

        foreach (var issue in before.DistinctBy(i => NameOf(visit, i) + Point(visit, i)))
        {
            var name = NameOf(visit, issue);
            var (asked, typed) = _true.GetValueOrDefault(name);
            _true[name] = (asked + 1, typed);
        }
    }

    // The two waters, two drums and two outputs are fields of their own; a probe's display and the reading that repeats it are one.
    private static string Point(Visit visit, Issue issue)
    {
        var parts = issue.Path.Split('.', '[', ']');
        var index = int.Parse(parts[4], CultureInfo.InvariantCulture);
        return parts[3] switch
        {
            "readings" => visit.Systems[0].Readings[index].At,
            "probes" => SamplePoints.Tower,
            _ => parts[4],
        };
    }

    private static string NameOf(Visit visit, Issue issue)
    {
        var parts = issue.Path.Split('.', '[', ']');
        var index = int.Parse(parts[4], CultureInfo.InvariantCulture);
        var record = visit.Systems[0];
        return parts[3] switch
        {
            "readings" when record.Readings[index] is { Source: ReadingSource.Controller, Test: var test } => $"probes {test} as found",
            "readings" when record.Readings[index] is { Source: ReadingSource.Reference, At: "tower", Test: var test } => $"probes {test} reference",
            "readings" => $"readings {record.Readings[index].Test}",
            "drums" => issue.Path.EndsWith("addedL", StringComparison.Ordinal) ? "drums added" : "drums level",
            "hoursRun" => "hours",
            "probes" when parts[^1] is "asFound" or "reference" =>
                $"probes {(record.Probes[index].Of ?? ProbeKind.Conductivity).ToString().ToLowerInvariant()} {(parts[^1] == "asFound" ? "as found" : "reference")}",
            "meters" => "meters " + parts[^1],
            var list => list + " " + parts[^1],
        };
    }

    private (int Asked, int Made) Sum(Func<(SlipKind Kind, string Field), bool> which)
    {
        var chosen = _slips.Where(s => which(s.Key)).ToList();
        return (chosen.Sum(s => s.Value.Asked), chosen.Sum(s => s.Value.Made));
    }
}
