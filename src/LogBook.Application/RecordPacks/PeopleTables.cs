using LogBook.Domain.Languages;

namespace LogBook.Application.RecordPacks;

/// <summary>Who worked with what: certificates, instruments and reagent lots.</summary>
internal static class PeopleTables
{
    public static RecordTable Certificates(RecordWords words)
    {
        var visits = words.Pack.Visits.Where(visit => visit.Counts).Select(visit => visit.Visit).ToList();
        var people = visits.SelectMany(visit => visit.Also.Prepend(visit.Technician)).Distinct(StringComparer.OrdinalIgnoreCase).Order(StringComparer.OrdinalIgnoreCase);
        return new RecordTable(
            RecordTexts.Certificates,
            [
                new(RecordTexts.Name, 2), new(RecordTexts.VisitsMade, 1, IsFigure: true), new(RecordTexts.Certificate, 2), new(RecordTexts.CertificateNumber, 1.5), new(RecordTexts.Expires, 1.2),
                new(RecordTexts.AfterExpiry, 1, IsFigure: true),
            ],
            [
                .. people.SelectMany(code =>
                {
                    var days = visits.Where(visit => visit.Also.Prepend(visit.Technician).Contains(code, StringComparer.OrdinalIgnoreCase)).Select(words.DayOf).ToList();
                    var certificates = words.Pack.Firm.People.TryGetValue(code, out var person) ? person.Certificates : [];
                    return certificates.Count == 0
                        ? [new RecordRow([words.Person(code), days.Count, words[RecordTexts.NoCertificate], "", null, null])]
                        : certificates.Select(certificate => new RecordRow(
                            [words.Person(code), days.Count, certificate.Name, certificate.Number ?? "", certificate.Expires, certificate.Expires is { } expires ? days.Count(day => day > expires) : null]));
                }),
            ],
            RecordTexts.CertificatesIntro);
    }

    public static RecordTable Instruments(RecordWords words)
    {
        var readings = words.Records().SelectMany(pair => pair.Record.Readings).ToList();
        var instruments = readings.Select(reading => reading.Instrument).Concat(words.Records().SelectMany(pair => pair.Record.Probes).Select(probe => probe.Instrument))
            .OfType<string>().Distinct(StringComparer.OrdinalIgnoreCase).Order(StringComparer.OrdinalIgnoreCase);
        var lots = readings.Select(reading => reading.Lot).OfType<string>().Distinct(StringComparer.OrdinalIgnoreCase).Order(StringComparer.OrdinalIgnoreCase);
        return new RecordTable(
            RecordTexts.Instruments,
            [
                new(RecordTexts.Instrument, 1.2), new(RecordTexts.Name, 2), new(RecordTexts.Serial, 1.3), new(RecordTexts.Uses, 0.9, IsFigure: true), new(RecordTexts.CheckedOn, 1.5),
                new(RecordTexts.Standard, 1.3, IsFigure: true), new(RecordTexts.Read, 1.3, IsFigure: true), new(RecordTexts.Expires, 1.1),
            ],
            [.. instruments.SelectMany(code => Instrument(words, code, readings.Count(reading => code.Equals(reading.Instrument, StringComparison.OrdinalIgnoreCase)))), .. lots.Select(code => Lot(words, code, readings.Count(reading => code.Equals(reading.Lot, StringComparison.OrdinalIgnoreCase))))]);
    }

    private static IEnumerable<RecordRow> Instrument(RecordWords words, string code, int uses)
    {
        var known = words.Pack.Firm.Instruments.GetValueOrDefault(code);
        var checks = known?.Checks.Where(check => words.DayOf(check.At.Utc) is var day && day >= words.Pack.From && day <= words.Pack.To).OrderBy(check => check.At.Utc).ToList() ?? [];
        return checks.Count == 0
            ? [new RecordRow([code, known?.Name ?? "", known?.Serial ?? "", uses, words[RecordTexts.NoCheck], "", "", null])]
            : checks.Select(check => new RecordRow(
                [code, known!.Name ?? "", known.Serial ?? "", uses, words.DayOf(check.At.Utc), Shown.Entered(check.Standard, check.Unit, words.Language), Shown.Entered(check.Read, check.Unit, words.Language), null]));
    }

    private static RecordRow Lot(RecordWords words, string code, int uses)
    {
        var lot = words.Pack.Firm.Lots.GetValueOrDefault(code);
        return new RecordRow([code, lot is null ? words[RecordTexts.Lot] : $"{words[RecordTexts.Lot]}, {words.Test(lot.Test)}", "", uses, null, "", "", lot?.Expires]);
    }
}
