using LogBook.Domain.Estimates;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Findings;

/// <summary>A plant runs again after a stop, and no disinfection and no sample stand on record since.</summary>
/// <remarks>
/// Only what is recorded counts, and only a laboratory's sample (colony count or Legionella, its result may be pending): a dip slide at the
/// visit is routine, not proof of a restart. Never folded.
/// </remarks>
public sealed class RestartUnproved : IReadsCounts
{
    private static readonly Text Says = new(
        "Running again since {0} after a stop of {1} (limit {2}, {3}), and neither a disinfection nor a sample is on record since.",
        "En marcha desde el {0} tras una parada de {1} (límite {2}, {3}), y no consta ni desinfección ni muestra desde entonces.",
        "Em funcionamento desde {0} após parada de {1} (limite {2}, {3}), e não consta desinfecção nem amostra desde então.");

    private static readonly Text Stopped = new("length of the stop", "duración de la parada", "duração da parada");

    private static readonly Said[] Next =
    [
        Looks.Say("Ask who started it and what was done; record it with its date.", "Pregunte quién la arrancó y qué se hizo; regístrelo con su fecha.", "Pergunte quem a ligou e o que foi feito; registre com a data."),
        Looks.Say("Disinfect and sample as the plan of the site and the authority ask.", "Desinfecte y tome muestra según el plan del sitio y la autoridad.", "Desinfete e colete amostra conforme o plano do local e a autoridade."),
        Looks.Say("Near the running tower: fans off where practical, fitted respirator if mist cannot be avoided.", "Cerca de la torre en marcha: ventiladores parados si es posible, respirador ajustado si no se evita la niebla.", "Perto da torre em marcha: ventiladores desligados se possível, respirador ajustado se a névoa não puder ser evitada."),
    ];

    /// <inheritdoc />
    public string Kind => FindingKinds.RestartUnproved;

    /// <inheritdoc />
    public IEnumerable<Verdict> Judge(VisitFacts visit, FindingThresholds thresholds)
    {
        if (Restart.Before(visit) is not { } restart || restart.Days <= thresholds.RestartDays.Value || IsProved(visit, restart))
        {
            yield return Verdict.Clear();
            yield break;
        }

        yield return Verdict.Found(null, new Indication(
            Severity.Act,
            new Said(
                Says,
                visit.History.DayOf(restart.RestartedUtc),
                new Amount(Math.Round(restart.Days), "d"),
                new Amount(thresholds.RestartDays.Value, "d"),
                thresholds.RestartDays.Basis))
        {
            Evidence = [new EvidenceFigure(Stopped, restart.Days, "d", LimitHigh: thresholds.RestartDays.Value)],
            LookAtNext = Next,
        });
    }

    // A disinfection belongs to the restart from the stop on; a sample tells of the running plant alone.
    private static bool IsProved(VisitFacts visit, Restart restart) => visit.Back()
        .TakeWhile(v => v.Visit.At >= restart.StoppedUtc.AddDays(-1))
        .Any(v => v.Record.Events.Any(e => e.Type == EventType.Disinfected && (e.At ?? v.Visit.Visit.Arrived).Utc >= restart.StoppedUtc)
            || v.Record.Readings.Any(reading => IsSample(reading) && (reading.TakenAt ?? v.Visit.Visit.Arrived).Utc >= restart.RestartedUtc)
            || v.Visit.Visit.Samples.Any(sample => (sample.System is null || sample.System.Equals(v.Record.System, StringComparison.OrdinalIgnoreCase))
                && (sample.TakenAt ?? v.Visit.Visit.Arrived).Utc >= restart.RestartedUtc));

    private static bool IsSample(Reading reading) =>
        reading.Test is TestCodes.Legionella or TestCodes.ColonyCount && (reading.NotTaken is null or SystemVisit.ResultPending);
}
