using System.Text;
using System.Text.Encodings.Web;
using LogBook.Application.Summaries;
using LogBook.Domain.Languages;
using LogBook.Domain.Summaries;

namespace LogBook.Application.Notices;

/// <summary>A short message to a person of the firm: a lead and some headed lists, as text and as HTML with the same words.</summary>
/// <param name="Subject">Subject.</param>
/// <param name="Text">Plain part.</param>
/// <param name="Html">HTML part.</param>
internal sealed record NoticeMail(string Subject, string Text, string Html)
{
    private const string Style = """
        body{margin:0;padding:16px;background:#ffffff;color:#1b1f23;font:16px/1.45 system-ui,"Segoe UI",Roboto,Arial,sans-serif}
        main{max-width:720px;margin:0 auto}h1{font-size:20px;margin:0 0 8px}h2{font-size:17px;margin:22px 0 6px}a{color:#0b5a7a}
        .small{font-size:14px;color:#3d474e}
        @media (prefers-color-scheme:dark){body{background:#14181b;color:#eef2f4}a{color:#6cc0e0}.small{color:#c3ccd1}}
        """;

    /// <summary>Puts a message together.</summary>
    /// <param name="subject">Subject; control characters are taken out.</param>
    /// <param name="lead">First paragraphs.</param>
    /// <param name="sections">Headed lists; empty ones are left out.</param>
    /// <param name="foot">Last paragraphs, in small print.</param>
    /// <param name="language">Language of all of it.</param>
    public static NoticeMail Of(string subject, IReadOnlyList<NoticeLine> lead, IReadOnlyList<(string Title, IReadOnlyList<NoticeLine> Lines)> sections, IReadOnlyList<string> foot, Language language)
    {
        var title = SummaryHeader.OneLine(subject);
        var text = new StringBuilder();
        var html = new StringBuilder(2048).Append("<!DOCTYPE html>\n<html lang=\"").Append(SummaryHtml.Code(language))
            .Append("\"><head><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width\"><meta name=\"color-scheme\" content=\"light dark\"><title>")
            .Append(Encoded(title)).Append("</title><style>").Append(Style).Append("</style></head><body><main><h1>").Append(Encoded(title)).Append("</h1>");
        foreach (var line in lead)
        {
            text.Append(line.Plain).Append("\n\n");
            html.Append("<p>").Append(line.Markup).Append("</p>");
        }

        foreach (var (heading, lines) in sections.Where(section => section.Lines.Count > 0))
        {
            text.Append(heading).Append('\n');
            html.Append("<h2>").Append(Encoded(heading)).Append("</h2><ul>");
            foreach (var line in lines)
            {
                text.Append("- ").Append(line.Plain).Append('\n');
                html.Append("<li>").Append(line.Markup).Append("</li>");
            }

            text.Append('\n');
            html.Append("</ul>");
        }

        foreach (var line in foot)
        {
            text.Append(line).Append('\n');
            html.Append("<p class=\"small\">").Append(Encoded(line)).Append("</p>");
        }

        return new NoticeMail(title, text.ToString(), html.Append("</main></body></html>").ToString());
    }

    internal static string Encoded(string text) => HtmlEncoder.Default.Encode(text);
}
