using System.Diagnostics;

namespace LogBook.Papers.Tests;

/// <summary>Reads a PDF back with a program that knows nothing of the one that wrote it (poppler-utils).</summary>
internal static class PdfText
{
    /// <summary>The text of each page, laid out as on the page.</summary>
    public static async Task<string[]> PagesAsync(byte[] pdf)
    {
        var text = await RunAsync("pdftotext", pdf, "-layout", "-enc", "UTF-8");
        return text.Split('\f')[..^1];
    }

    /// <summary>What the file says about its fonts.</summary>
    public static Task<string> FontsAsync(byte[] pdf) => RunAsync("pdffonts", pdf);

    private static async Task<string> RunAsync(string program, byte[] pdf, params string[] options)
    {
        var path = Path.Combine(Path.GetTempPath(), Guid.NewGuid().ToString("N") + ".pdf");
        await File.WriteAllBytesAsync(path, pdf);
        try
        {
            var start = new ProcessStartInfo(program) { RedirectStandardOutput = true, RedirectStandardError = true };
            foreach (var option in options)
            {
                start.ArgumentList.Add(option);
            }

            start.ArgumentList.Add(path);
            if (program == "pdftotext")
            {
                start.ArgumentList.Add("-");
            }

            using var process = Process.Start(start) ?? throw new InvalidOperationException($"{program} did not start.");
            var errors = process.StandardError.ReadToEndAsync();
            var text = await process.StandardOutput.ReadToEndAsync();
            await process.WaitForExitAsync();
            Assert.True(process.ExitCode == 0, await errors);
            Assert.Equal("", await errors);
            return text;
        }
        finally
        {
            File.Delete(path);
        }
    }
}
