using System.Diagnostics;

namespace LogBook.Application.Tests.RecordPacks;

/// <summary>LibreOffice without a window: opens a workbook as people would and writes every sheet as CSV.</summary>
internal static class Office
{
    /// <summary>The sheets of a workbook by name, as rows of cells. A formula would show its result.</summary>
    public static async Task<IReadOnlyDictionary<string, IReadOnlyList<string[]>>> SheetsAsync(byte[] workbook)
    {
        var folder = Directory.CreateTempSubdirectory("logbook-office");
        try
        {
            await File.WriteAllBytesAsync(Path.Combine(folder.FullName, "book.xlsx"), workbook);

            // Field ",", text quoted, UTF-8, every cell as it is kept (not as it looks), all sheets.
            await RunAsync(
                "soffice", "-env:UserInstallation=file://" + Path.Combine(folder.FullName, "profile"), "--headless", "--convert-to", "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false,false,false,false,-1",
                "--outdir", folder.FullName, Path.Combine(folder.FullName, "book.xlsx"));
            return Directory.GetFiles(folder.FullName, "book-*.csv").ToDictionary(
                path => Path.GetFileNameWithoutExtension(path)["book-".Length..],
                path => (IReadOnlyList<string[]>)Rows(File.ReadAllText(path)),
                StringComparer.Ordinal);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    /// <summary>The text of a PDF.</summary>
    public static async Task<string> TextAsync(byte[] pdf)
    {
        var path = Path.Combine(Path.GetTempPath(), Guid.CreateVersion7().ToString("N") + ".pdf");
        await File.WriteAllBytesAsync(path, pdf);
        try
        {
            return await RunAsync("pdftotext", "-layout", "-enc", "UTF-8", path, "-");
        }
        finally
        {
            File.Delete(path);
        }
    }

    private static List<string[]> Rows(string csv)
    {
        using var parser = new CsvHelper.CsvParser(new StringReader(csv), new CsvHelper.Configuration.CsvConfiguration(System.Globalization.CultureInfo.InvariantCulture) { MaxFieldSize = 0 });
        var rows = new List<string[]>();
        while (parser.Read())
        {
            rows.Add(parser.Record!);
        }

        return rows;
    }

    private static async Task<string> RunAsync(string program, params string[] arguments)
    {
        var start = new ProcessStartInfo(program) { RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var argument in arguments)
        {
            start.ArgumentList.Add(argument);
        }

        using var process = Process.Start(start) ?? throw new InvalidOperationException($"{program} did not start.");
        var errors = process.StandardError.ReadToEndAsync();
        var text = await process.StandardOutput.ReadToEndAsync();
        await process.WaitForExitAsync();
        Assert.True(process.ExitCode == 0, await errors);
        return text;
    }
}
