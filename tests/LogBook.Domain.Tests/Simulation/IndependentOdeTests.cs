using System.Globalization;
using LogBook.Domain.Programmes;
using LogBook.Domain.Simulation;
using LogBook.Domain.Sites;
using Xunit;

namespace LogBook.Domain.Tests.Simulation;

/// <summary>Two weeks of a tower against a general-purpose integrator with event location: independent_ode.py, whose output is independent_ode.csv.</summary>
public class IndependentOdeTests
{
    private static readonly DateTime Start = new(2025, 7, 1, 0, 0, 0, DateTimeKind.Utc);

    private static readonly List<string[]> Rows =
    [
        .. File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "Simulation", "independent_ode.csv")).Skip(1).Select(line => line.Split(',')),
    ];

    [Fact]
    public void Levels_EverySixHours_AgreeWithTheIntegrator()
    {
        var plant = Plant();
        var rows = Rows.Where(r => r[0] == "level").ToList();

        Assert.Equal(56, rows.Count);
        foreach (var row in rows)
        {
            plant.AdvanceTo(Start.AddHours(Number(row[1])));
            Agrees(row, 2, plant.Cycles);
            Agrees(row, 3, plant.ConductivityUsPerCm);
            Agrees(row, 4, plant.Of(Substance.Chloride));
            Agrees(row, 5, plant.Of(Substance.Calcium));
            Agrees(row, 6, plant.Of(Substance.Inhibitor));
            Agrees(row, 7, plant.Of(Substance.Biocide));
        }
    }

    [Fact]
    public void Switchings_OfBleedAndDoses_AgreeWithTheIntegrator()
    {
        var plant = Plant();
        plant.KeepsLog = true;
        plant.AdvanceTo(Start.AddDays(14));
        var events = plant.Log.Where(e => e.What is PlantEventKind.BleedOpened or PlantEventKind.BleedShut or PlantEventKind.BleedDownStarted
            or PlantEventKind.DoseStarted or PlantEventKind.DoseEnded or PlantEventKind.HoldEnded).ToList();
        var expected = Rows.Where(r => r[0] != "level").ToList();

        Assert.True(expected.Count > 250);
        Assert.Equal(expected.Select(r => r[0]).Order(), events.Select(e => e.What.ToString()).Order());
        foreach (var kind in expected.GroupBy(r => r[0]))
        {
            var mine = events.Where(e => e.What.ToString() == kind.Key).Select(e => (e.Utc - Start).TotalHours);
            Assert.All(kind.Zip(mine), pair => Assert.True(Math.Abs(Number(pair.First[1]) - pair.Second) < 1e-5, $"{kind.Key}: {pair.First[1]} and {pair.Second}"));
        }
    }

    private static void Agrees(string[] row, int column, double actual)
    {
        var expected = Number(row[column]);
        Assert.True(Math.Abs(actual - expected) <= 1e-6 * Math.Max(1, expected), $"hour {row[1]}, column {column}: {expected} and {actual}");
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static PlantSimulation Plant()
    {
        var college = SimulatedCollege.System;
        var system = college with { Pumps = [college.Pumps[0] with { RatedLPerH = 0.0893 }, college.Pumps[1]] };
        var model = SimulatedCollege.Model with { DriftLPerH = 5, SeasonShare = 0, WeekShare = 0, ProbeShare = 0, Load = new LoadProfile { WeatherShare = 0 } };
        var programme = SimulatedCollege.Programme with
        {
            DisplayAverageSeconds = null,
            Feeds = [new Feed { Drum = "D-INH", Output = "inhibitor", Mode = FeedMode.AlongsideBleed }, SimulatedCollege.Programme.Feeds[1]],
        };
        return new PlantSimulation(model, system, programme, TimeZoneInfo.FindSystemTimeZoneById("Europe/London"), Start, 1);
    }
}
