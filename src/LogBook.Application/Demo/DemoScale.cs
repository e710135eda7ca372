using System.Globalization;
using LogBook.Domain.Exchange;
using LogBook.Domain.Simulation.Technicians;
using LogBook.Domain.Sites;

namespace LogBook.Application.Demo;

/// <summary>Larger invented firms in the shape of the demo sites, without their stories, to try imports and lists at size.</summary>
public static class DemoScale
{
    /// <summary>Generates a firm.</summary>
    /// <param name="systems">Number of towers, one to a site; at least 1.</param>
    /// <param name="years">Years of visits from July 2025; more than 0, parts of a year allowed.</param>
    /// <param name="seed">Seed; 0 means the demo firm's.</param>
    /// <returns>Set-up and visits.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Too few systems or years.</exception>
    public static ExchangeDocument Create(int systems, double years, ulong seed = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(systems, 1);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(years);
        var firm = DemoFiles.Firm() with { MeterFaults = [], Answers = [] };
        firm = firm with { LotsInUse = [.. firm.LotsInUse.Where(l => l.Factor == 1)] };

        // Sites visited more often than weekly would make up half of a firm of any size.
        var shapes = DemoFiles.Sites().Where(s => s.Visits.EveryDays >= 7).ToList();
        var technicians = firm.HandMeters.Keys.Order(StringComparer.Ordinal).ToList();
        var files = Enumerable.Range(0, systems).Select(i =>
        {
            var shape = shapes[i % shapes.Count];
            var code = string.Create(CultureInfo.InvariantCulture, $"{shape.Code[..3]}-{101 + i}");
            return shape with
            {
                Code = code,
                Name = string.Create(CultureInfo.InvariantCulture, $"{shape.Name} {101 + i}"),
                Customer = new Customer
                {
                    Code = code,
                    Name = shape.Customer.Name,
                    Contacts = [.. shape.Customer.Contacts.Select(c => c with { Email = $"office@{code.ToLowerInvariant()}.example" })],
                },
                Technician = technicians[i % technicians.Count],
                Visits = shape.Visits with { First = shape.Visits.First.AddDays(i / shapes.Count % 5) },
                Plant = shape.Plant with { MeterRenewed = null },
                Programmes = [],
                Story = [],
                Acts = [.. shape.Acts.Where(a => a.Act == TechnicianActKind.CleanSystem)],
                RecordOnly = [],
                Answers = [],
            };
        }).ToList();
        var last = new DateOnly(2025, 7, 1).AddDays((int)Math.Round(365.25 * years) - 1);
        return DemoFirm.Run(firm, files, seed == 0 ? DemoFirm.DefaultSeed : seed, last).Document;
    }
}
