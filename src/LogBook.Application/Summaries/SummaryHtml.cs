using System.Text;
using System.Text.Encodings.Web;
using LogBook.Domain.Languages;
using LogBook.Domain.Summaries;

namespace LogBook.Application.Summaries;

/// <summary>
/// The visit summary as one HTML document for mail: no remote parts, styles inline where mail programs need them, one column
/// from 320 px on, dark colours where the reader's program asks for them.
/// </summary>
public static class SummaryHtml
{
    private const string Style = """
        body{margin:0;padding:16px;background:#ffffff;color:#1b1f23;font:16px/1.45 system-ui,"Segoe UI",Roboto,Arial,sans-serif}
        main{max-width:720px;margin:0 auto}
        h1{font-size:22px;margin:0 0 8px}h2{font-size:18px;margin:28px 0 8px;border-bottom:2px solid #0b5a7a;padding-bottom:4px}h3{font-size:16px;margin:18px 0 6px}
        dl{margin:0}dt{font-weight:600;margin-top:6px}dd{margin:0}
        table{border-collapse:collapse;width:100%}th,td{text-align:left;vertical-align:top;padding:6px 8px 6px 0;border-bottom:1px solid #c9d1d6}
        .out{font-weight:700}.note{border-left:4px solid #0b5a7a;padding:6px 10px;margin:10px 0;background:#eef4f7}
        .small{font-size:14px;color:#3d474e}
        @media (max-width:480px){table,tbody,tr,td{display:block}thead{display:none}tr{border-bottom:1px solid #c9d1d6;padding:6px 0}td{border:0;padding:1px 0}}
        @media (prefers-color-scheme:dark){body{background:#14181b;color:#eef2f4}h2{border-color:#6cc0e0}th,td,tr{border-color:#46525a}.note{background:#1e2a31;border-color:#6cc0e0}.small{color:#c3ccd1}}
        """;

    public static string Render(VisitSummary summary)
    {
        var html = new StringBuilder(8192);
        var language = summary.Language;
        void Put(string markup) => html.Append(markup);
        void Element(string name, string content, string? cssClass = null) =>
            html.Append('<').Append(name).Append(cssClass is null ? string.Empty : $" class=\"{cssClass}\"").Append('>').Append(Encoded(content)).Append("</").Append(name).Append('>');
        void Items(IEnumerable<string> items)
        {
            Put("<ul>");
            foreach (var item in items)
            {
                Element("li", item);
            }

            Put("</ul>");
        }

        Put($"<!DOCTYPE html>\n<html lang=\"{Code(language)}\"><head><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width\"><meta name=\"color-scheme\" content=\"light dark\">");
        Element("title", SummaryHeader.Subject(summary));
        Put("<style>" + Style + "</style></head><body><main>");
        Element("h1", SummaryTexts.Title.In(language));
        Element("p", summary.Firm, "small");
        Put("<dl>");
        foreach (var (name, value) in SummaryHeader.Of(summary))
        {
            Element("dt", name);
            Element("dd", value);
        }

        Put("</dl>");
        foreach (var notice in SummaryHeader.Notices(summary))
        {
            Element("p", notice, "note");
        }

        Element("h2", SummaryTexts.WeNeed.In(language));
        if (summary.Needs.Count == 0)
        {
            Element("p", SummaryTexts.NothingNeeded.In(language));
        }
        else
        {
            Put("<ul>");
            foreach (var need in summary.Needs)
            {
                Put("<li>");
                Element("strong", need.What);
                if (need.Due is not null)
                {
                    Put(" – " + Encoded(need.Due));
                }

                if (need.Consequence is not null)
                {
                    Put("<br>" + Encoded(SummaryTexts.Otherwise.In(language, need.Consequence)));
                }

                Put("</li>");
            }

            Put("</ul>");
        }

        foreach (var system in summary.Systems)
        {
            Element("h2", SummaryTexts.WeFound.In(language) + ": " + system.Name);
            if (system.Volume is not null)
            {
                Element("p", SummaryTexts.Volume.In(language) + ": " + system.Volume, "small");
            }

            if (system.Found.Count == 0)
            {
                Element("p", SummaryTexts.NothingFound.In(language));
            }
            else
            {
                Put("<ul>");
                foreach (var finding in system.Found)
                {
                    Put("<li>");
                    Element("strong", finding.Urgency);
                    Put(": " + Encoded(finding.Text) + "</li>");
                }

                Put("</ul>");
            }

            if (system.Seen.Count > 0)
            {
                Items(system.Seen.Select(seen => SummaryTexts.Seen.In(language, seen)));
            }

            if (system.Results.Count > 0)
            {
                Put("<table><thead><tr>");
                foreach (var heading in new[] { SummaryTexts.Test, SummaryTexts.Result, SummaryTexts.Range, SummaryTexts.Standing })
                {
                    Put("<th scope=\"col\">" + Encoded(heading.In(language)) + "</th>");
                }

                Put("</tr></thead><tbody>");
                foreach (var result in system.Results)
                {
                    Put("<tr>");
                    Element("td", result.Test);
                    Element("td", result.Result, result.IsOutside ? "out" : null);
                    Element("td", result.Range);
                    Element("td", result.Standing, result.IsOutside ? "out" : null);
                    Put("</tr>");
                }

                Put("</tbody></table>");
            }

            if (system.Figures.Count > 0)
            {
                Element("h3", SummaryTexts.Worked.In(language));
                Put("<table><tbody>");
                foreach (var figure in system.Figures)
                {
                    Put("<tr>");
                    Element("td", figure.Name);
                    Element("td", figure.Value);
                    Put("</tr>");
                }

                Put("</tbody></table>");
                Element("p", SummaryTexts.WorkedNote.In(language), "small");
            }

            Element("h2", SummaryTexts.WeDid.In(language) + ": " + system.Name);
            Items(system.Done.DefaultIfEmpty(SummaryTexts.NothingDone.In(language)));
        }

        foreach (var caution in summary.Cautions)
        {
            Element("p", caution, "note");
        }

        foreach (var signature in summary.Signatures)
        {
            Element("p", signature, "small");
        }

        Element("p", SummaryTexts.Reference.In(language, summary.VisitId, summary.Version), "small");
        Put("</main></body></html>\n");
        return html.ToString();
    }

    private static string Encoded(string text) => HtmlEncoder.Default.Encode(text);

    internal static string Code(Language language) => language switch
    {
        Language.Spanish => "es",
        Language.Portuguese => "pt",
        _ => "en",
    };
}
