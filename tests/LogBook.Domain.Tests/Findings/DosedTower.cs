using LogBook.Domain.Assessments;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Tests.Assessments;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Findings;

/// <summary>
/// The steady tower with a second drum: N-15 on Tuesdays and Fridays at 21:30, 19 min at 3 L/h = 0.95 L a dose, 100 mg/L in 10 m3.
/// Weekly visits on Mondays. A test says what ran.
/// </summary>
internal sealed class DosedTower
{
    public const double DoseL = 0.95;
    public const double DoseH = 19 / 60.0;

    private double _stock = 22;
    private double _hours = 10;
    private double _day = -7;

    public DosedTower()
    {
        Builder = new HistoryBuilder
        {
            VisitEveryDays = 7,
            Programme = programme => Change(programme with { Feeds = [.. programme.Feeds, Plan] }),
            System = system => System(system with
            {
                Outputs = [.. system.Outputs, new Output { Code = "biocide-1", Drives = OutputDrives.Feed }],
                Drums = [.. system.Drums, new Drum { Code = "D-B1", Product = "N-15", Shape = DrumShape.VerticalCylinder, CapacityL = 25, HeightCm = 40, UnusableL = 1 }],
                Pumps = [.. system.Pumps, new Pump { Code = "P-B1", Drum = "D-B1", Output = "biocide-1", RatedLPerH = 3 }],
            }),
        };
    }

    public HistoryBuilder Builder { get; }

    public Func<Programme, Programme> Change { get; set; } = programme => programme;

    public Func<WaterSystem, WaterSystem> System { get; set; } = system => system;

    public static Feed Plan { get; } = new()
    {
        Drum = "D-B1",
        Output = "biocide-1",
        Mode = FeedMode.DosePlan,
        TargetMgPerL = 100,
        Weeks = [1, 2, 3, 4],
        Days = [Weekday.Tuesday, Weekday.Friday],
        Starts = ["21:30"],
        RunMinutes = 19,
    };

    public DosedTower Weeks(int count, double doses = 2, double? litres = null, Func<VisitedSystem, VisitedSystem>? change = null)
    {
        for (var i = 0; i < count; i++)
        {
            _day += 7;
            if (_day > 0)
            {
                _hours += doses * DoseH;
                _stock = Math.Max(1, _stock - (litres ?? doses * DoseL));
            }

            var added = _stock is < 8 and > 1.01 ? 10.0 : 0;
            var (hours, level) = (Math.Round(_hours, 1), _stock / 25 * 40);
            Builder.Visit(_day, record =>
            {
                record = record with
                {
                    HoursRun = [.. record.HoursRun, new HoursReading { Output = "biocide-1", Hours = hours }],
                    Drums = [.. record.Drums, new DrumReading { Drum = "D-B1", Level = level, Unit = "cm", AddedL = added, ProductFound = "N-15" }],
                };
                return change is null ? record : change(record);
            });
            _stock += added;
        }

        return this;
    }

    public DosedTower EmptyDrum()
    {
        _stock = 1;
        return this;
    }

    public SystemAssessment Assess() => Builder.Assess();
}
