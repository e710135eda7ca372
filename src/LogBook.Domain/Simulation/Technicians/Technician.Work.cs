using LogBook.Domain.Exchange;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Simulation.Technicians;

/// <content>The page a visit is written on.</content>
public sealed partial class Technician
{
    private sealed class Work(VisitOrder order, DateOnly day, bool fullWalk, Moment arrived)
    {
        public VisitOrder Order { get; } = order;

        public DateOnly Day { get; } = day;

        public bool FullWalk { get; } = fullWalk;

        public Moment Arrived { get; } = arrived;

        public double Display { get; set; }

        public double Reference { get; set; }

        public double ClockOff { get; set; }

        public int Week { get; set; }

        public List<Reading> Readings { get; } = [];

        public List<ProbeReading> Probes { get; } = [];

        public List<MeterReading> Meters { get; } = [];

        public List<DrumReading> Drums { get; } = [];

        public List<HoursReading> Hours { get; } = [];

        public List<PumpReading> Pumps { get; } = [];

        public List<Drawdown> Drawdowns { get; } = [];

        public List<SwitchReading> Switches { get; } = [];

        public List<SettingReading> Settings { get; } = [];

        public List<Addition> Additions { get; } = [];

        public List<VisitEvent> Events { get; } = [];

        public List<AlarmReading> Alarms { get; } = [];

        public List<Observation> Observations { get; } = [];

        public List<VisitAction> Actions { get; } = [];

        public BleedTest? BleedTest { get; set; }

        public void Add(string at, string test, ReadingSource source, double value, string unit, string? instrument = null, string? lot = null) =>
            Readings.Add(new Reading { At = at, Test = test, Source = source, Value = Math.Round(value, 3), Unit = unit, Instrument = instrument, Lot = lot });

        public Moment After(int minutes) => Moment.Of(new DateTimeOffset(Arrived.Utc).ToOffset(Arrived.Offset).AddMinutes(minutes));

        public string? LotOf(string test) => Order.Lots.GetValueOrDefault(test);

        public bool Has(TechnicianActKind kind) => Order.Acts.Any(a => a.Act == kind);

        public TechnicianAct? ActOf(TechnicianActKind kind) => Order.Acts.FirstOrDefault(a => a.Act == kind);

        public TechnicianAct? ActOf(TechnicianActKind kind, string part) =>
            Order.Acts.FirstOrDefault(a => a.Act == kind && string.Equals(a.Part, part, StringComparison.OrdinalIgnoreCase));

        public double OutlierOf(string test) => ActOf(TechnicianActKind.Outlier, test)?.Value ?? 1;

        public VisitedSystem ToRecord(string code, PlantSimulation plant) => new()
        {
            System = code,
            Running = plant.IsRunning,
            InUse = plant.IsRunning,
            ClockOffByMin = ClockOff,
            ProgrammeWeek = Week,
            Readings = Readings,
            Probes = Probes,
            Meters = Meters,
            Drums = Drums,
            HoursRun = Hours,
            Pumps = Pumps,
            Drawdowns = Drawdowns,
            BleedTest = BleedTest,
            Switches = Switches,
            Settings = Settings,
            Additions = Additions,
            Events = Events,
            Alarms = Alarms,
            Observations = Observations,
            Actions = Actions,
        };
    }
}
