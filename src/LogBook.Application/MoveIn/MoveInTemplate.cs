using ClosedXML.Excel;
using LogBook.Application.Workbooks;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;

namespace LogBook.Application.MoveIn;

/// <summary>A workbook to fill in, whose headings are understood without a question.</summary>
public static class MoveInTemplate
{
    private static readonly (string Test, string At, string Unit)[] Tests =
    [
        (TestCodes.Conductivity, SamplePoints.Tower, "uS/cm"), (TestCodes.Ph, SamplePoints.Tower, "[pH]"), (TestCodes.Chloride, SamplePoints.Tower, "mg/L"), (TestCodes.Calcium, SamplePoints.Tower, "mg/L"),
        (TestCodes.Alkalinity, SamplePoints.Tower, "mg/L"), (TestCodes.Inhibitor, SamplePoints.Tower, "mg/L"), (TestCodes.FreeHalogen, SamplePoints.Tower, "mg/L"), (TestCodes.DipSlide, SamplePoints.Tower, "[CFU]/mL"),
        (TestCodes.Conductivity, SamplePoints.MakeUp, "uS/cm"), (TestCodes.Chloride, SamplePoints.MakeUp, "mg/L"), (TestCodes.Calcium, SamplePoints.MakeUp, "mg/L"),
    ];

    /// <summary>Makes it, with the firm's sites and systems as first rows to go on from.</summary>
    public static byte[] Make(FirmSetUp firm, Language language)
    {
        ArgumentNullException.ThrowIfNull(firm);
        using var book = new XLWorkbook();
        var sheet = book.AddWorksheet(SheetText.Name(MoveInTexts.TemplateSheet.In(language)));
        SheetTable.Put(sheet.Cell(1, 1), MoveInTexts.TemplateNote.In(language));
        List<string> head =
        [
            MoveInTexts.Date.In(language), MoveInTexts.Time.In(language), MoveInTexts.Site.In(language), MoveInTexts.System.In(language), MoveInTexts.Technician.In(language),
            .. Tests.Select(test => $"{TestTexts.NameOf(test.Test).In(language)}, {(test.At == SamplePoints.MakeUp ? MoveInTexts.MakeUpWord : MoveInTexts.TowerWord).In(language)} ({Shown.Unit(test.Unit, language)})"),
            MoveInTexts.Notes.In(language),
        ];
        SheetTable.Write(sheet, 3, head, firm.Document.Systems.Select(system => (IReadOnlyList<object?>)[null, null, system.Site, system.Code]), freeze: false);
        sheet.SheetView.FreezeRows(3);
        using var buffer = new MemoryStream();
        book.SaveAs(buffer);
        return buffer.ToArray();
    }
}
