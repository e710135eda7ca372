using System.Globalization;
using LogBook.Domain.Exchange;
using LogBook.Domain.Languages;
using LogBook.Domain.Quantities;
using LogBook.Domain.Visits;
using LogBook.Domain.Numbers;

namespace LogBook.Entry.Drafts;

/// <summary>Puts a visit into the fields of a draft, so that the form shows it for an amendment.</summary>
internal sealed class DraftWriter(VisitDraft draft)
{
    public static void Write(Visit visit, VisitDraft draft) => new DraftWriter(draft).Write(visit);

    /// <summary>Keys of readings: the same test from the same source again gets the next number.</summary>
    /// <param name="readings">Readings of one system, in their order.</param>
    /// <returns>One key each.</returns>
    public static IReadOnlyList<ReadingKey> KeysOf(IReadOnlyList<Reading> readings)
    {
        var seen = new Dictionary<(string, string, ReadingSource?), int>();
        var keys = new List<ReadingKey>();
        foreach (var reading in readings)
        {
            var same = (reading.At, reading.Test, reading.Source);
            seen[same] = seen.GetValueOrDefault(same) + 1;
            keys.Add(new ReadingKey(reading.At, reading.Test, reading.Source, seen[same]));
        }

        return keys;
    }

    private void Write(Visit visit)
    {
        const string top = DraftKey.Visit;
        Text(top, "kind", visit.Kind?.ToString());
        foreach (var person in visit.Also)
        {
            Text(top + "/also", person, "yes");
        }

        Text(top, "reason", visit.Reason);
        Time(top, "arrived", visit.Arrived);
        Time(top, "left", visit.Left);
        Text(top, "cleaning", visit.Cleaning);
        Text(top, "notes", visit.Notes);
        Rows(top + "/recommendations", visit.Recommendations, (key, r) =>
        {
            Text(key, "id", r.Id?.ToString("D"));
            Text(key, "text", r.Text);
            Text(key, "consequence", r.Consequence);
            Text(key, "state", r.State?.ToString());
        });
        Rows(top + "/samples", visit.Samples, (key, s) =>
        {
            Text(key, "bottle", s.Bottle);
            Text(key, "point", s.Point);
            Time(key, "takenAt", s.TakenAt);
            Number(key, "temperatureCel", s.TemperatureCel, UnitCodes.Celsius);
            Number(key, "residualMgPerL", s.ResidualMgPerL);
            Text(key, "lab", s.Lab);
            Text(key, "system", s.System);
        });
        foreach (var signature in visit.Signatures)
        {
            var key = DraftKey.Under(top, "signatures", signature.By.ToString());
            Text(key, "name", signature.Name);
            Text(key, "role", signature.Role);
            Text(key, "absentReason", signature.AbsentReason);
        }

        foreach (var system in visit.Systems)
        {
            Write(system, DraftKey.Of(DraftKey.Systems, system.System));
        }
    }

    private void Write(VisitedSystem system, string top)
    {
        Yes(top, "running", system.Running);
        Yes(top, "inUse", system.InUse);
        Number(top, "clockOffByMin", system.ClockOffByMin, UnitCodes.Minute);
        Number(top, "programmeWeek", system.ProgrammeWeek);
        foreach (var probe in system.Probes)
        {
            Write(probe, DraftKey.Under(top, "probes", probe.Probe ?? string.Empty));
        }

        foreach (var (key, reading) in KeysOf(system.Readings).Zip(system.Readings))
        {
            Write(reading, key.In(system.System));
            if (FollowsProbe(system, key, reading))
            {
                Text(key.In(system.System), "follows", "yes");
            }
        }

        WriteStock(system, top);
        WriteSettings(system, top);
        WriteLists(system, top);
        if (system.BleedTest is { } test)
        {
            Number(top + "/bleedTest", "litres", test.Litres, UnitCodes.Litre);
            Number(top + "/bleedTest", "seconds", test.Seconds);
        }

        if (system.MaOutput is { } current)
        {
            Number(top + "/maOutput", "found", current.Found, current.Unit);
        }
    }

    // Only a reading that says the same as its probe goes on following it; two that differ stay two.
    private static bool FollowsProbe(VisitedSystem system, ReadingKey key, Reading reading) =>
        key is { At: "tower", Number: 1, Source: ReadingSource.Controller or ReadingSource.Reference }
        && system.Probes.Any(p => TestOf(p) == key.Test && p.Unit == reading.Unit
            && (key.Source == ReadingSource.Controller ? p.AsFound : p.Reference) == reading.Value);

    private static string TestOf(ProbeReading probe) => probe.Of switch
    {
        Domain.Sites.ProbeKind.Ph => Domain.Programmes.TestCodes.Ph,
        Domain.Sites.ProbeKind.Orp => Domain.Programmes.TestCodes.Orp,
        _ => Domain.Programmes.TestCodes.Conductivity,
    };

    private void Write(Reading reading, string key)
    {
        Number(key, "value", reading.Value, reading.Unit, reading.Qualifier);
        Keep(key, "value", reading.FirstValue, reading.Confirmed);
        if (reading.Drops is not null)
        {
            Text(key, "mode", "drops");
            Number(key, "drops", reading.Drops, UnitCodes.Drops);
            Number(key, "perDrop", reading.PerDrop, reading.Unit);
            Keep(key, "drops", reading.FirstValue, reading.Confirmed);
        }

        Yes(key, "notQuantifiable", reading.NotQuantifiable);
        Text(key, "notTaken", reading.NotTaken);
        if (reading.NotTaken is not null || reading.NotQuantifiable is not null)
        {
            Text(key, "mode", reading.NotTaken is not null ? "notTaken" : "notQuantifiable");
        }

        if (reading is { Method: Plans.ReadingMode.Comparator, Value: not null })
        {
            Text(key, "mode", "comparator");
        }

        Number(key, "dilutionSample", reading.Dilution?.Sample, UnitCodes.Millilitre);
        Number(key, "dilutionTotal", reading.Dilution?.Total, UnitCodes.Millilitre);
        Text(key, "basis", reading.Basis);
        Text(key, "method", reading.Method);
        Text(key, "instrument", reading.Instrument);
        Text(key, "lot", reading.Lot);
        Time(key, "takenAt", reading.TakenAt);
        Time(key, "resultAt", reading.ResultAt);
        Time(key, "receivedAt", reading.ReceivedAt);
        Text(key, "lab", reading.Lab);
        Text(key, "labRef", reading.LabRef);
        Text(key, "sampleId", reading.SampleId);
        Number(key, "incubationDegC", reading.Incubation?.DegC, UnitCodes.Celsius);
        Number(key, "incubationHours", reading.Incubation?.Hours, UnitCodes.Hour);
    }

    private void Write(ProbeReading probe, string key)
    {
        Text(key, "of", probe.Of?.ToString());
        Number(key, "settledMin", probe.SettledMin, UnitCodes.Minute);
        Number(key, "asFound", probe.AsFound, probe.Unit);
        Number(key, "reference", probe.Reference, probe.Unit);
        Text(key, "instrument", probe.Instrument);
        Number(key, "afterCleaning", probe.AfterCleaning, probe.Unit);
        Number(key, "asLeft", probe.AsLeft, probe.Unit);
        Yes(key, "calibrated", probe.Calibrated);
        Text(key, "against", probe.Calibration?.Against?.ToString());
        Number(key, "standardValue", probe.Calibration?.StandardValue, probe.Unit);
        Text(key, "standardLot", probe.Calibration?.StandardLot);
        Number(key, "factorBefore", probe.Calibration?.FactorBefore);
        Number(key, "factorAfter", probe.Calibration?.FactorAfter);
        Text(key, "calibrationReason", probe.Calibration?.Reason);
    }

    private void WriteStock(VisitedSystem system, string top)
    {
        foreach (var meter in system.Meters)
        {
            var key = DraftKey.Under(top, "meters", meter.Meter);
            Number(key, "dial", meter.Dial);
            Keep(key, "dial", meter.FirstDial, meter.FirstDial == meter.Dial);
            Number(key, "total", meter.Total);
            Keep(key, "total", meter.FirstTotal, meter.FirstTotal == meter.Total);
            Yes(key, "replaced", meter.Replaced);
            Yes(key, "reset", meter.Reset);
            Number(key, "oldFinal", meter.OldFinal);
            Number(key, "newStart", meter.NewStart);
            Text(key, "replacedOn", meter.ReplacedOn?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
            Number(key, "before", meter.Before);
            Number(key, "after", meter.After);
        }

        foreach (var drum in system.Drums)
        {
            var key = DraftKey.Under(top, "drums", drum.Drum);
            Number(key, "level", drum.Level, drum.Unit);
            Keep(key, "level", drum.FirstLevel, drum.FirstLevel == drum.Level);
            Number(key, "left", drum.Left, drum.Unit);
            Number(key, "addedL", drum.AddedL, UnitCodes.Litre);
            Number(key, "removedL", drum.RemovedL, UnitCodes.Litre);
            Number(key, "spareL", drum.SpareL, UnitCodes.Litre);
            Yes(key, "swapped", drum.Swapped);
            Text(key, "lot", drum.Lot);
            Text(key, "productFound", drum.ProductFound);
        }

        foreach (var hours in system.HoursRun)
        {
            var key = DraftKey.Under(top, "hoursRun", hours.Output);
            Number(key, "hours", hours.Hours, UnitCodes.Hour);
            Keep(key, "hours", hours.FirstHours, hours.FirstHours == hours.Hours);
            Yes(key, "reset", hours.Reset);
            Number(key, "before", hours.Before, UnitCodes.Hour);
            Number(key, "after", hours.After, UnitCodes.Hour);
        }

        foreach (var pump in system.Pumps)
        {
            var key = DraftKey.Under(top, "pumps", pump.Pump);
            Number(key, "strokeFound", pump.StrokeFound, UnitCodes.Percent);
            Number(key, "strokeLeft", pump.StrokeLeft, UnitCodes.Percent);
            Number(key, "speedFound", pump.SpeedFound, UnitCodes.Percent);
            Number(key, "speedLeft", pump.SpeedLeft, UnitCodes.Percent);
        }

        foreach (var drawdown in system.Drawdowns)
        {
            var key = DraftKey.Under(top, "drawdowns", drawdown.Pump);
            Number(key, "millilitres", drawdown.Millilitres, UnitCodes.Millilitre);
            Number(key, "seconds", drawdown.Seconds);
        }
    }

    private void WriteSettings(VisitedSystem system, string top)
    {
        foreach (var position in system.Switches)
        {
            var key = DraftKey.Under(top, "switches", position.Output);
            Text(key, "found", position.Found?.ToString());
            Text(key, "left", position.Left?.ToString());
            Text(key, "reason", position.Reason);
        }

        foreach (var setting in system.Settings)
        {
            var key = DraftKey.Under(top, "settings", setting.Name);
            Value(key, "found", setting.Found, setting.Unit);
            Value(key, "left", setting.Left, setting.Unit);
            Yes(key, "notRead", setting.NotRead);
            Text(key, "reason", setting.Reason);
            Text(key, "unit", setting.Unit);
        }
    }

    private void WriteLists(VisitedSystem system, string top)
    {
        Rows(top + "/additions", system.Additions, (key, a) =>
        {
            Text(key, "product", a.Product);
            Number(key, "amount", a.Amount, a.Unit);
            Text(key, "to", a.To);
            Time(key, "at", a.At);
            Text(key, "reason", a.Reason);
        });
        Rows(top + "/events", system.Events, (key, e) =>
        {
            Text(key, "type", e.Type.ToString());
            Text(key, "of", e.Of);
            Time(key, "at", e.At);
            Number(key, "litres", e.Litres, UnitCodes.Litre);
            Text(key, "by", e.By);
            Text(key, "note", e.Note);
        });
        Rows(top + "/alarms", system.Alarms, (key, a) =>
        {
            Text(key, "text", a.Text);
            Text(key, "output", a.Output);
            Yes(key, "standing", a.Standing);
        });
        Rows(top + "/observations", system.Observations, (key, o) =>
        {
            Text(key, "about", o.About);
            Text(key, "text", o.Text);
            Text(key, "severity", o.Severity?.ToString());
        });
        Rows(top + "/actions", system.Actions, (key, a) =>
        {
            Text(key, "id", a.Id?.ToString("D"));
            Text(key, "for", a.For);
            Text(key, "text", a.Text);
            Text(key, "owner", a.Owner);
            Text(key, "due", a.Due?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
            Text(key, "state", a.State?.ToString());
        });
    }

    // "row" ties a row of the form to the record it came from, counted from 0.
    private void Rows<T>(string list, IReadOnlyList<T> records, Action<string, T> write)
    {
        for (var i = 0; i < records.Count; i++)
        {
            var row = draft.AddRow(list);
            Text(row, "row", i.ToString(CultureInfo.InvariantCulture));
            write(row, records[i]);
        }
    }

    private void Text(string key, string name, string? text)
    {
        if (!string.IsNullOrEmpty(text))
        {
            draft.SetText(DraftKey.Under(key, name), text);
        }
    }

    private void Yes(string key, string name, bool? value) => Text(key, name, value switch
    {
        true => "yes",
        false => "no",
        _ => null,
    });

    private void Time(string key, string name, Moment? moment) => Text(key, name, moment is { Text: not null } time ? SiteTime.Write(time) : null);

    private void Value(string key, string name, SettingValue? value, string? unit)
    {
        if (value?.Number is { } number)
        {
            Number(key, name, number, unit ?? string.Empty);
        }
        else
        {
            Text(key, name, value?.ToString());
        }
    }

    private void Number(string key, string name, double? value, string? unit = null, string? qualifier = null)
    {
        if (value is not { } number)
        {
            return;
        }

        var text = qualifier + number.ToString("0.###############", CultureInfo.InvariantCulture);
        var reading = NumberEntry.Parse(text, Language.English);
        draft.Set(DraftKey.Under(key, name), new DraftField { Text = text, Unit = unit, Choice = reading.Kind == NumberReadingKind.Ask ? number : null });
    }

    private void Keep(string key, string name, double? first, bool? confirmed)
    {
        if (draft.Field(DraftKey.Under(key, name)) is { } field)
        {
            draft.Set(DraftKey.Under(key, name), field with { First = first, Confirmed = confirmed == true });
        }
    }
}
