using LogBook.Domain.Estimates;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Settings;

/// <summary>What changed after a day, by what it concerns. Read from the later programmes and visits, the set-up's own dates and its change record.</summary>
internal sealed class LaterChanges
{
    private static readonly Text ProgrammeSays = new("programme from {0} asks {1}", "el programa desde {0} pide {1}", "o programa desde {0} pede {1}");
    private static readonly Text SettingSays = new("left at {1} on {0}", "se dejó en {1} el {0}", "deixado em {1} em {0}");
    private static readonly Text PumpFrom = new("pump {1} renewed on {0}", "bomba {1} renovada el {0}", "bomba {1} trocada em {0}");
    private static readonly Text PumpRated = new("pump {1}: {2} L/h on file instead of {3} since {0}", "bomba {1}: {2} L/h en la ficha en lugar de {3} desde {0}", "bomba {1}: {2} L/h no cadastro em vez de {3} desde {0}");
    private static readonly Text StrokeSays = new("pump {1}: stroke {2} % instead of {3} % since {0}", "bomba {1}: carrera {2} % en lugar de {3} % desde {0}", "bomba {1}: curso {2} % em vez de {3} % desde {0}");
    private static readonly Text SpeedSays = new("pump {1}: speed {2} % instead of {3} % since {0}", "bomba {1}: velocidad {2} % en lugar de {3} % desde {0}", "bomba {1}: velocidade {2} % em vez de {3} % desde {0}");
    private static readonly Text DrumFrom = new("drum {1} renewed on {0}, now {2}", "bidón {1} renovado el {0}, ahora {2}", "bombona {1} trocada em {0}, agora {2}");
    private static readonly Text DrumProduct = new("drum {1}: {2} instead of {3} since {0}", "bidón {1}: {2} en lugar de {3} desde {0}", "bombona {1}: {2} em vez de {3} desde {0}");
    private static readonly Text LabelSays = new("label of {1} changed on file on {0}: read the label on the drum", "la etiqueta de {1} cambió en la ficha el {0}: lea la etiqueta del bidón", "o rótulo de {1} mudou no cadastro em {0}: leia o rótulo da bombona");
    private static readonly Text ValveSays = new("bleed valve renewed on {0}", "válvula de purga renovada el {0}", "válvula de purga trocada em {0}");
    private static readonly Text ValveFlow = new("bleed valve: {1} L/h on file instead of {2} since {0}", "válvula de purga: {1} L/h en la ficha en lugar de {2} desde {0}", "válvula de purga: {1} L/h no cadastro em vez de {2} desde {0}");
    private static readonly Text ProbeSays = new("probe renewed on {0}", "sonda renovada el {0}", "sonda trocada em {0}");
    private static readonly Text ProbeOfSays = new("{1} probe renewed on {0}", "sonda de {1} renovada el {0}", "sonda de {1} trocada em {0}");
    private static readonly Text MeterSays = new("water meter {1} renewed or changed on {0}", "contador de agua {1} renovado o cambiado el {0}", "hidrômetro {1} trocado ou alterado em {0}");

    private static readonly Dictionary<ProbeKind, Text> ProbeNames = new()
    {
        [ProbeKind.Conductivity] = new("conductivity", "conductividad", "condutividade"),
        [ProbeKind.Ph] = new("pH", "pH", "pH"),
        [ProbeKind.Orp] = new("ORP", "ORP", "ORP"),
    };

    private readonly SystemHistory _history;
    private readonly DateOnly _on;
    private readonly IReadOnlyList<SetUpChange> _changes;
    private readonly List<(DateOnly Day, SystemVisit Visit)> _visits;

    public LaterChanges(SystemHistory history, DateOnly on, IReadOnlyList<SetUpChange> changes)
    {
        (_history, _on) = (history, on);
        _changes = [.. changes.Where(change => change.On > on)];
        _visits = [.. history.Visits.Select(visit => (Day: history.DayOf(visit.At), Visit: visit)).Where(pair => pair.Day > on)];
    }

    /// <summary>Later programmes that ask for something else, and later visits that left something else.</summary>
    public IReadOnlyList<LaterChange> OfSetting(ControllerSetting setting)
    {
        var changes = new List<LaterChange>();
        var last = setting;
        foreach (var programme in _history.Programmes.Where(programme => programme.From > _on))
        {
            var asked = ProgrammeSettings.Of(programme, _history.System).FirstOrDefault(one => one.Name.Equals(setting.Name, StringComparison.OrdinalIgnoreCase));
            if (asked is not null && !SettingAgreement.Agrees(last, asked.Value, asked.Unit, null))
            {
                changes.Add(new LaterChange(LaterChangeKind.Programme, programme.From, new Said(ProgrammeSays, programme.From, SettingValues.Of(asked.Name, asked.Value, asked.Unit))));
                last = asked;
            }
        }

        last = setting;
        foreach (var (day, visit) in _visits)
        {
            var reading = visit.Record.Settings.LastOrDefault(one => one.Name.Equals(setting.Name, StringComparison.OrdinalIgnoreCase) && one.NotRead != true);
            if ((reading?.Left ?? reading?.Found) is not { IsNone: false } left)
            {
                continue;
            }

            var unit = reading!.Unit ?? SettingNames.UnitOf(setting.Name, _history.ProgrammeOn(day)) ?? setting.Unit;
            if (!SettingAgreement.Agrees(last, left, unit, reading.Step))
            {
                changes.Add(new LaterChange(LaterChangeKind.Setting, day, new Said(SettingSays, day, SettingValues.Of(setting.Name, left, unit))));
                last = new ControllerSetting(setting.Name, left, unit);
            }
        }

        return [.. changes.OrderBy(change => change.On)];
    }

    /// <summary>Changes of valve and conductivity probe.</summary>
    public IReadOnlyList<LaterChange> OfPurpose(SettingPurpose purpose)
    {
        if (purpose is not (SettingPurpose.Bleed or SettingPurpose.Limits))
        {
            return [];
        }

        var changes = new List<LaterChange>();
        foreach (var (day, visit) in _visits)
        {
            changes.AddRange(visit.Record.Events.Where(one => one.Type == EventType.ValveRenewed).Select(_ => new LaterChange(LaterChangeKind.Valve, day, new Said(ValveSays, day))));
            changes.AddRange(Probes(day, visit, ProbeKind.Conductivity));
        }

        foreach (var change in _changes)
        {
            if (change is { SystemBefore.BleedValveLPerH: { } before, SystemAfter.BleedValveLPerH: { } after } && before != after)
            {
                changes.Add(new LaterChange(LaterChangeKind.Valve, change.On, new Said(ValveFlow, change.On, after, before)));
            }
        }

        return InOrder(changes);
    }

    /// <summary>Changes of pump, stroke, drum, product, label and meter behind an output, and of the probe its feed is controlled by.</summary>
    public IReadOnlyList<LaterChange> OfOutput(string output)
    {
        var changes = new List<LaterChange>();
        var pumps = _history.System.Pumps.Where(pump => FeedParts.Same(pump.Output, output)).ToList();
        var drums = pumps.Select(pump => pump.Drum).Distinct(StringComparer.OrdinalIgnoreCase).ToList();
        foreach (var pump in pumps.Where(pump => pump.From > _on))
        {
            changes.Add(new LaterChange(LaterChangeKind.Pump, pump.From!.Value, new Said(PumpFrom, pump.From.Value, pump.Code)));
        }

        foreach (var drum in _history.System.Drums.Where(drum => drums.Contains(drum.Code, StringComparer.OrdinalIgnoreCase) && drum.From > _on))
        {
            changes.Add(new LaterChange(LaterChangeKind.Drum, drum.From!.Value, new Said(DrumFrom, drum.From.Value, drum.Code, NameOf(drum.Product))));
        }

        foreach (var pump in pumps.Select(pump => pump.Code).Distinct(StringComparer.OrdinalIgnoreCase))
        {
            Strokes(changes, pump);
            foreach (var (day, visit) in _visits.Where(pair => pair.Visit.Record.Events.Any(one => one.Type == EventType.PumpRenewed && FeedParts.Same(one.Of, pump))))
            {
                changes.Add(new LaterChange(LaterChangeKind.Pump, day, new Said(PumpFrom, day, pump)));
            }
        }

        var probes = _history.Programmes.SelectMany(programme => programme.Feeds.Where(feed => FeedParts.Same(ProgrammeSettings.OutputOf(feed, _history.System), output)))
            .Select(feed => feed.Mode switch { FeedMode.ByOrp => ProbeKind.Orp, FeedMode.ByPh => ProbeKind.Ph, _ => (ProbeKind?)null })
            .OfType<ProbeKind>().Distinct().ToList();
        changes.AddRange(_visits.SelectMany(pair => probes.SelectMany(kind => Probes(pair.Day, pair.Visit, kind))));
        Products(changes, drums);
        OfSetUp(changes, output, drums);
        changes.AddRange(_history.System.Meters.Where(meter => meter.Measures == MeterMeasures.MakeUp && meter.From > _on).Select(meter => Meter(meter.Code, meter.From!.Value)));
        return InOrder(changes);
    }

    // An event that names no probe, or one that is not on file, may be any of them: it stands wherever it can matter.
    private IEnumerable<LaterChange> Probes(DateOnly day, SystemVisit visit, ProbeKind kind)
    {
        foreach (var renewed in visit.Record.Events.Where(one => one.Type == EventType.ProbeRenewed))
        {
            var known = _history.System.Probes.FirstOrDefault(probe => FeedParts.Same(probe.Code, renewed.Of));
            if (known is null)
            {
                yield return new LaterChange(LaterChangeKind.Probe, day, new Said(ProbeSays, day));
            }
            else if (known.Of == kind)
            {
                yield return new LaterChange(LaterChangeKind.Probe, day, new Said(ProbeOfSays, day, ProbeNames[kind]));
            }
        }
    }

    private static LaterChange Meter(string code, DateOnly on) => new(LaterChangeKind.Meter, on, new Said(MeterSays, on, code));

    // Stroke and speed as last left on or before the day, against what later visits left.
    private void Strokes(List<LaterChange> changes, string pump)
    {
        double? stroke = null, speed = null;
        foreach (var visit in _history.Visits)
        {
            var day = _history.DayOf(visit.At);
            if (visit.Record.Pumps.LastOrDefault(reading => FeedParts.Same(reading.Pump, pump)) is not { } reading)
            {
                continue;
            }

            Follow(ref stroke, reading.StrokeLeft ?? reading.StrokeFound, StrokeSays, day);
            Follow(ref speed, reading.SpeedLeft ?? reading.SpeedFound, SpeedSays, day);
        }

        void Follow(ref double? last, double? now, Text says, DateOnly day)
        {
            if (now is not { } left)
            {
                return;
            }

            if (day > _on && last is { } before && before != left)
            {
                changes.Add(new LaterChange(LaterChangeKind.Stroke, day, new Said(says, day, pump, left, before)));
            }

            last = left;
        }
    }

    // The product found in the drum: another one than before is told even where nobody changed the set-up.
    private void Products(List<LaterChange> changes, List<string> drums)
    {
        foreach (var drum in drums)
        {
            string? last = null;
            foreach (var visit in _history.Visits)
            {
                var found = visit.Record.Drums.LastOrDefault(reading => FeedParts.Same(reading.Drum, drum))?.ProductFound;
                if (found is null)
                {
                    continue;
                }

                var day = _history.DayOf(visit.At);
                if (day > _on && last is not null && !FeedParts.Same(found, last))
                {
                    changes.Add(new LaterChange(LaterChangeKind.Drum, day, new Said(DrumProduct, day, drum, NameOf(found), NameOf(last))));
                }

                last = found;
            }
        }
    }

    private void OfSetUp(List<LaterChange> changes, string output, List<string> drums)
    {
        var products = _history.System.Drums.Where(drum => drums.Contains(drum.Code, StringComparer.OrdinalIgnoreCase)).Select(drum => drum.Product).ToList();
        foreach (var change in _changes)
        {
            if (change is { ProductBefore: { } old, ProductAfter: { } now } && products.Contains(now.Code, StringComparer.OrdinalIgnoreCase) && LabelDiffers(old, now))
            {
                changes.Add(new LaterChange(LaterChangeKind.Label, change.On, new Said(LabelSays, change.On, now.Name)));
            }

            if (change is not { SystemBefore: { } before, SystemAfter: { } after })
            {
                continue;
            }

            foreach (var pump in after.Pumps.Where(pump => FeedParts.Same(pump.Output, output)))
            {
                var known = before.Pumps.FirstOrDefault(one => FeedParts.Same(one.Code, pump.Code) && one.From == pump.From);
                if (known is { RatedLPerH: { } was } && pump.RatedLPerH is { } rated && was != rated)
                {
                    changes.Add(new LaterChange(LaterChangeKind.Pump, change.On, new Said(PumpRated, change.On, pump.Code, rated, was)));
                }
            }

            foreach (var drum in after.Drums.Where(drum => drums.Contains(drum.Code, StringComparer.OrdinalIgnoreCase)))
            {
                var known = before.Drums.FirstOrDefault(one => FeedParts.Same(one.Code, drum.Code) && one.From == drum.From);
                if (known is not null && !FeedParts.Same(known.Product, drum.Product))
                {
                    changes.Add(new LaterChange(LaterChangeKind.Drum, change.On, new Said(DrumProduct, change.On, drum.Code, NameOf(drum.Product), NameOf(known.Product))));
                }
            }

            foreach (var meter in after.Meters.Where(meter => meter.Measures == MeterMeasures.MakeUp))
            {
                var known = before.Meters.FirstOrDefault(one => FeedParts.Same(one.Code, meter.Code) && one.From == meter.From);
                if (known is not null && (known.LitresPerPulse != meter.LitresPerPulse || known.PulsesPerLitre != meter.PulsesPerLitre))
                {
                    changes.Add(Meter(meter.Code, change.On));
                }
            }
        }
    }

    private static bool LabelDiffers(Product before, Product after) =>
        (before.DensityKgPerL, before.LabelMaxMgPerL, before.LabelMaxWeekMgPerL, before.LabelGapHours, before.LabelContactHours, before.Registration)
        != (after.DensityKgPerL, after.LabelMaxMgPerL, after.LabelMaxWeekMgPerL, after.LabelGapHours, after.LabelContactHours, after.Registration);

    private string NameOf(string product) => _history.Firm.Products.GetValueOrDefault(product)?.Name ?? product;

    private static IReadOnlyList<LaterChange> InOrder(List<LaterChange> changes) => [.. changes.DistinctBy(change => (change.Kind, change.On, change.Says.In(Language.English))).OrderBy(change => change.On)];
}
