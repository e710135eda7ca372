using LogBook.Capture.Visits;
using LogBook.Domain.Summaries;
using LogBook.Entry.Summaries;
using Microsoft.AspNetCore.Components.WebAssembly.Services;

namespace LogBook.Capture.Summaries;

/// <summary>Makes the PDF of a summary on the device. What it needs is on the device with everything else, but is loaded only when the first one is asked for.</summary>
/// <param name="loader">Loads the parts.</param>
internal sealed class SummaryPdf(LazyAssemblyLoader loader)
{
    // As named in the project file; a name that is not there fails at once, in every test that makes a PDF.
    private static readonly string[] Parts =
    [
        "LogBook.Papers.wasm", "PdfSharp.wasm", "PdfSharp.System.wasm", "PdfSharp.Shared.wasm",
    ];

    private bool _isLoaded;

    /// <summary>Makes the PDF and hands it to the browser.</summary>
    /// <returns>Name of the file; null when it could not be made.</returns>
    public async Task<string?> SaveAsync(VisitSummary summary, Desk desk, TimeProvider clock)
    {
        if (!_isLoaded)
        {
            await loader.LoadAssembliesAsync(Parts);
            _isLoaded = true;
        }

        var name = FileName(summary);
        await desk.SaveFileAsync(name, "application/pdf", SummaryPaper.Make(summary, SheetTexts.NotClosed.In(summary.Language), clock.GetUtcNow().UtcDateTime));
        return name;
    }

    private static string FileName(VisitSummary summary) =>
        string.Concat($"{SummaryTexts.Title.In(summary.Language)} {summary.SiteCode} {summary.Day}".Select(c => char.IsLetterOrDigit(c) ? c : '-')) + ".pdf";
}
