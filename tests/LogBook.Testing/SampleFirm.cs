using LogBook.Domain.Exchange;
using LogBook.Domain.Visits;

namespace LogBook.Testing;

/// <summary>Two customers of the invented firm with one site each, and visits to them.</summary>
public static class SampleFirm
{
    /// <summary>The set-up as a document of the exchange format.</summary>
    public static Stream SetUp() => typeof(SampleFirm).Assembly.GetManifestResourceStream("set-up.json")!;

    /// <summary>A routine visit with the readings that most tests need.</summary>
    /// <param name="site">Code of the site.</param>
    /// <param name="arrived">Arrival, RFC 3339.</param>
    /// <param name="inhibitor">Inhibitor found, mg/L.</param>
    /// <param name="bleedSwitch">Position in which the bleed's switch was left.</param>
    public static Visit Visit(string site = "YAF-1", string arrived = "2025-03-03T09:05:00+00:00", double inhibitor = 95, SwitchPosition bleedSwitch = SwitchPosition.Automatic)
    {
        var at = Moment(arrived);
        return new Visit
        {
            Id = Guid.CreateVersion7(new DateTimeOffset(at.Utc, TimeSpan.Zero)),
            Site = site,
            Technician = "RYA",
            Kind = VisitKind.Routine,
            Arrived = at,
            Left = Domain.Exchange.Moment.OfUtc(at.Utc.AddHours(1)),
            EnteredAt = Domain.Exchange.Moment.OfUtc(at.Utc.AddMinutes(50)),
            Systems =
            [
                new VisitedSystem
                {
                    System = "CT-1",
                    Running = true,
                    InUse = true,
                    Readings =
                    [
                        new Reading { At = "tower", Test = "conductivity", Source = ReadingSource.Controller, Value = 1350, Unit = "uS/cm" },
                        new Reading { At = "tower", Test = "conductivity", Source = ReadingSource.Reference, Instrument = "HM-1", Value = 1361, Unit = "uS/cm" },
                        new Reading { At = "make-up", Test = "conductivity", Source = ReadingSource.Reference, Instrument = "HM-1", Value = 301, Unit = "uS/cm" },
                        new Reading { At = "tower", Test = "chloride", Drops = 21, PerDrop = 5, Unit = "mg/L" },
                        new Reading { At = "tower", Test = "inhibitor", Value = inhibitor, Unit = "mg/L", Lot = "IN-0412" },
                    ],
                    Switches = [new SwitchReading { Output = "bleed", Found = bleedSwitch, Left = bleedSwitch }],
                },
            ],
        };
    }

    /// <summary>An amendment of a visit.</summary>
    public static Visit Amended(Visit visit, double inhibitor, string reason = "misread") => visit with
    {
        Version = (visit.Version ?? 1) + 1,
        Amends = visit.Version ?? 1,
        AmendedBy = "RYA",
        AmendedAt = Domain.Exchange.Moment.OfUtc(visit.Arrived.Utc.AddDays(1)),
        Reason = reason,
        Systems = [visit.Systems[0] with { Readings = [.. visit.Systems[0].Readings.Select(r => r.Test == "inhibitor" ? r with { Value = inhibitor } : r)] }],
    };

    private static Moment Moment(string text) => Domain.Exchange.Moment.TryParse(text, out var moment) ? moment : throw new ArgumentException("No time.", nameof(text));
}
