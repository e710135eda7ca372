using LogBook.Application.Reviews;
using LogBook.Domain.Findings;
using LogBook.Domain.Languages;

namespace LogBook.Application.Notices;

/// <summary>Words of the notices.</summary>
internal static class NoticeWords
{
    private static readonly Text Why = new(
        "You get this because you chose it under Account in LogBook; you can end it there.",
        "Recibe este mensaje porque así lo eligió en Cuenta de LogBook; allí puede dejar de recibirlo.",
        "Você recebe esta mensagem porque a escolheu em Conta no LogBook; lá pode deixar de recebê-la.");
    private static readonly Text Open = new("Open it in LogBook", "Abrirlo en LogBook", "Abrir no LogBook");
    private static readonly Text DigestSubject = new("What the day brings, {0}", "Lo que trae el día, {0}", "O que o dia traz, {0}");
    private static readonly Text NewFindings = new("New since yesterday", "Nuevo desde ayer", "Novo desde ontem");
    private static readonly Text More = new("and {0} more", "y {0} más", "e mais {0}");
    private static readonly Text StillOpen = new("Open: {0}", "Abiertos: {0}", "Abertas: {0}");
    private static readonly Text Due = new("Due today or before, by the most urgent clock of each site", "Vence hoy o ya venció, por el plazo más urgente de cada sitio", "Vence hoje ou já venceu, pelo prazo mais urgente de cada local");
    private static readonly Text DueToday = new("{0} (ends today)", "{0} (acaba hoy)", "{0} (acaba hoje)");
    private static readonly Text Late = new("{0} ({1} days over)", "{0} ({1} días de retraso)", "{0} ({1} dias de atraso)");
    private static readonly Text LateOne = new("{0} (1 day over)", "{0} (1 día de retraso)", "{0} (1 dia de atraso)");
    private static readonly Text FurtherClocks = new("{0}; further clocks that have ended or end today: {1}", "{0}; otros plazos vencidos o que vencen hoy: {1}", "{0}; outros prazos vencidos ou que vencem hoje: {1}");
    private static readonly Text ForYou = new("Waiting for you", "Esperan por usted", "Esperam por você");
    private static readonly Text ToReview = new("Visits to review: {0}", "Visitas por revisar: {0}", "Visitas a revisar: {0}");
    private static readonly Text Conflicts = new("Visits that came twice with other content: {0}", "Visitas que llegaron dos veces con otro contenido: {0}", "Visitas que chegaram duas vezes com outro conteúdo: {0}");
    private static readonly Text MailStuck = new("Messages to customers that were given up: {0}", "Mensajes a clientes que se abandonaron: {0}", "Mensagens a clientes que foram abandonadas: {0}");

    public static NoticeMail AtOnce(Finding finding, FindingKey key, string? siteName, string address, Language language)
    {
        var place = siteName is null ? FindingTexts.OfFirm.In(language) : $"{key.Site} {siteName}";
        var link = Link(address, $"/attention/finding?{key.Query()}");
        return NoticeMail.Of(
            $"{FindingTexts.NameOf(finding.Severity).In(language)} · {place}: {FindingTexts.NameOf(finding.Kind).In(language)}",
            [new NoticeLine(finding.Text), .. link is null ? Array.Empty<NoticeLine>() : [new NoticeLine(Open.In(language), link)]],
            [
                (FindingTexts.Suggests.In(language), [.. finding.Suggests.Select(suggestion => new NoticeLine(suggestion.Text))]),
                (FindingTexts.LookNext.In(language), [.. finding.LookAtNext.Select(step => new NoticeLine(step))]),
            ],
            [FindingTexts.NotAVerdict.In(language), Why.In(language)],
            language);
    }

    public static NoticeMail Digest(DigestContent content, string address, Language language)
    {
        var fresh = content.New.Take(DigestContent.MostNew)
            .Select(one => new NoticeLine($"{FindingTexts.NameOf(one.Finding.Severity).In(language)} · {one.Key.Site ?? FindingTexts.OfFirm.In(language)} · {one.Finding.Text}", Link(address, $"/attention/finding?{one.Key.Query()}")))
            .ToList();
        if (content.New.Count > DigestContent.MostNew)
        {
            fresh.Add(new NoticeLine(More.In(language, content.New.Count - DigestContent.MostNew), Link(address, "/attention")));
        }

        var waiting = new List<NoticeLine>();
        void Count(Text words, int count, string path)
        {
            if (count > 0)
            {
                waiting.Add(new NoticeLine(words.In(language, count), Link(address, path)));
            }
        }

        Count(ToReview, content.ToReview, "/review");
        Count(Conflicts, content.Conflicts, "/visits/conflicts");
        Count(MailStuck, content.MailStuck, "/mail?open=true");
        var open = string.Join(" · ", new (Severity Severity, int Count)[] { (Severity.Act, content.Open.Act), (Severity.Plan, content.Open.Plan), (Severity.Watch, content.Open.Watch) }
            .Where(pair => pair.Count > 0).Select(pair => $"{FindingTexts.NameOf(pair.Severity).In(language)} {pair.Count}"));
        return NoticeMail.Of(
            DigestSubject.In(language, Shown.Day(content.Day, language)),
            open.Length == 0 ? [] : [new NoticeLine(StillOpen.In(language, open), Link(address, "/attention"))],
            [
                (NewFindings.In(language), fresh),
                (Due.In(language), [
                    .. content.Due.Select(site => new NoticeLine(Of(site, language), Link(address, $"/sites/{Uri.EscapeDataString(site.Code)}/clocks"))),
                ]),
                (ForYou.In(language), waiting),
            ],
            [Why.In(language)],
            language);
    }

    private static string Of(DigestSite site, Language language)
    {
        var most = $"{site.Code} {site.Name}: {site.Clocks[0].Words.In(language)}";
        var told = site.DaysOver switch { 0 => DueToday.In(language, most), 1 => LateOne.In(language, most), var days => Late.In(language, most, days) };
        return site.Clocks.Count == 1 ? told : FurtherClocks.In(language, told, site.Clocks.Count - 1);
    }

    private static string? Link(string address, string path) => address.Length == 0 ? null : address.TrimEnd('/') + path;
}
