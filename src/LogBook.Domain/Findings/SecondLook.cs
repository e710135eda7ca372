using LogBook.Domain.Languages;
using LogBook.Domain.Rounds;

namespace LogBook.Domain.Findings;

/// <summary>Records of a person that want a second look; for a supervisor alone, in neutral words.</summary>
internal static class SecondLook
{
    /// <summary>Days for which a visit counts towards a second one.</summary>
    public const double RememberedDays = 365;

    private static readonly Text Says = new(
        "{0} of {1}: the record shows {2}. It wants a second look; there may be a good reason.",
        "{0} de {1}: el registro muestra {2}. Conviene revisarlo otra vez; puede haber una buena razón.",
        "{0} de {1}: o registro mostra {2}. Convém olhar de novo; pode haver um bom motivo.");

    private static readonly Text OneVisit = new("Visit", "Visita", "Visita");
    private static readonly Text Visits = new("{0} visits, the latest", "{0} visitas, la última", "{0} visitas, a última");
    private static readonly Text Where = new("{0}, {1}, {2}", "{0}, {1}, {2}", "{0}, {1}, {2}");
    private static readonly Text And = new("{0}; {1}", "{0}; {1}", "{0}; {1}");

    private static readonly Said[] Next =
    [
        Looks.Say("Ask how the visit went before anything else.", "Pregunte primero cómo fue la visita.", "Pergunte primeiro como foi a visita."),
        Looks.Say("Read the same registers and tests again soon.", "Lea pronto otra vez los mismos contadores y análisis.", "Leia logo de novo os mesmos registradores e testes."),
        Looks.Say("Look at photos and the site's own records of that day.", "Vea las fotos y los registros del sitio de ese día.", "Veja as fotos e os registros do local nesse dia."),
    ];

    public static Severity SeverityOf(int visits) => visits > 1 ? Severity.Plan : Severity.Watch;

    /// <summary>Words and figures.</summary>
    /// <param name="person">Code of the person.</param>
    /// <param name="visits">Visits with their signs, oldest first, at least one.</param>
    /// <param name="thresholds">Thresholds in force.</param>
    public static Indication Shown(string person, IReadOnlyList<(string Place, DateOnly Day, IReadOnlyList<SignClue> Signs)> visits, FindingThresholds thresholds)
    {
        _ = thresholds;
        var (place, day, signs) = visits[^1];
        var said = signs.Select(sign => new Said(SecondLookSigns.NameOf(sign.Code))).Aggregate((a, b) => new Said(And, a, b));
        return new Indication(
            SeverityOf(visits.Count),
            new Said(Says, visits.Count == 1 ? new Said(OneVisit) : new Said(Visits, (double)visits.Count), new Said(Where, person, place, day), said))
        {
            Evidence = [.. visits.TakeLast(3).SelectMany(visit => visit.Signs.Select(sign => new EvidenceFigure(SecondLookSigns.NameOf(sign.Code), sign.Value, sign.Unit, LimitHigh: sign.Limit)))],
            Suggests = [Looks.Reading],
            LookAtNext = Next,
        };
    }
}
