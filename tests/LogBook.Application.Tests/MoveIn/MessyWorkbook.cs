using System.Globalization;
using ClosedXML.Excel;

namespace LogBook.Application.Tests.MoveIn;

/// <summary>
/// Three years of a firm's own spreadsheet, with the habits of such files: a merged title, two heading rows, days written in five ways, decimal
/// commas, units in headings, "&lt;0.1", "n/a", a row twice, totals, words between, and a second sheet on which columns move half-way.
/// </summary>
internal sealed class MessyWorkbook
{
    private static readonly string[] Spanish = ["enero", "febrero", "marzo", "abril", "mayo", "junio", "julio", "agosto", "septiembre", "octubre", "noviembre", "diciembre"];

    /// <summary>What the file says, as somebody knows who wrote it: day, site, what, number, unit, qualifier or word.</summary>
    public List<(DateOnly Day, string Site, string What, double? Number, string Sign)> Truth { get; } = [];

    /// <summary>Cells of which nobody but a person can know what they mean, by sheet and address.</summary>
    public HashSet<string> Doubtful { get; } = [];

    public byte[] Bytes { get; }

    public MessyWorkbook()
    {
        using var book = new XLWorkbook();
        College(book.AddWorksheet("YAF-1"));
        Mouldings(book.AddWorksheet("Mould tower 2024"));
        book.AddWorksheet("Contacts").Cell(1, 1).SetValue("Call the estates office before ten.");
        using var buffer = new MemoryStream();
        book.SaveAs(buffer);
        Bytes = buffer.ToArray();
    }

    private void College(IXLWorksheet sheet)
    {
        sheet.Cell(1, 1).SetValue("Yaffleford College - tower log 2022 to 2025");
        sheet.Range(1, 1, 1, 11).Merge();
        sheet.Cell(3, 1).SetValue("Visit");
        sheet.Range(3, 1, 3, 2).Merge();
        sheet.Cell(3, 3).SetValue("Tower water");
        sheet.Range(3, 3, 3, 7).Merge();
        sheet.Cell(3, 8).SetValue("Make-up water");
        sheet.Range(3, 8, 3, 9).Merge();
        sheet.Cell(3, 10).SetValue("Stock");
        sheet.Cell(3, 11).SetValue("Office");
        string[] head = ["Date", "By", "Conductivity (µS/cm)", "pH", "Chloride mg/L", "Inhibitor (ppm)", "Free chlorine (mg/L)", "Conductivity (µS/cm)", "Chloride mg/L", "Inhibitor drum level (cm)", "Remarks"];
        for (var column = 0; column < head.Length; column++)
        {
            sheet.Cell(4, column + 1).SetValue(head[column]);
        }

        var row = 5;
        for (var month = 0; month < 36; month++)
        {
            var day = new DateOnly(2022, 4, 1).AddMonths(month).AddDays(3 + (month % 20));
            Day(sheet.Cell(row, 1), day, month);
            sheet.Cell(row, 2).SetValue(month % 2 == 0 ? "RYA" : "r. yaffle");
            Put(sheet.Cell(row, 3), day, "tower conductivity uS/cm", 1300 + (month % 7 * 10));
            if (month == 9)
            {
                // A thousand with a point, or one and a bit: no other number of the column tells.
                sheet.Cell(row, 3).SetValue("1.320");
                Doubtful.Add("YAF-1 " + sheet.Cell(row, 3).Address);
                Replace(day, "tower conductivity uS/cm", 1320);
            }

            if (month == 20)
            {
                // A digit too much.
                sheet.Cell(row, 3).SetValue(13200d);
                Doubtful.Add("YAF-1 " + sheet.Cell(row, 3).Address);
                Replace(day, "tower conductivity uS/cm", 13200);
            }

            sheet.Cell(row, 4).SetValue((8.0 + (month % 4 * 0.1)).ToString("0.0", CultureInfo.InvariantCulture).Replace('.', ','));
            Truth.Add((day, "YAF-1", "tower pH [pH]", Math.Round(8.0 + (month % 4 * 0.1), 1), ""));
            Put(sheet.Cell(row, 5), day, "tower chloride mg/L", 100 + (month % 5));
            if (month % 9 == 4)
            {
                sheet.Cell(row, 6).SetValue("n/a");
                Truth.Add((day, "YAF-1", "tower inhibitor mg/L", null, "n/a"));
            }
            else
            {
                sheet.Cell(row, 6).SetValue((90 + (month % 6)).ToString(CultureInfo.InvariantCulture) + " ppm");
                Truth.Add((day, "YAF-1", "tower inhibitor mg/L", 90 + (month % 6), ""));
            }

            sheet.Cell(row, 7).SetValue(month % 3 == 0 ? "<0.1" : "0,2");
            Truth.Add((day, "YAF-1", "tower free-halogen mg/L", month % 3 == 0 ? 0.1 : 0.2, month % 3 == 0 ? "<" : ""));
            Put(sheet.Cell(row, 8), day, "make-up conductivity uS/cm", 300 + (month % 3));
            Put(sheet.Cell(row, 9), day, "make-up chloride mg/L", 24);
            Put(sheet.Cell(row, 10), day, "drum D-INH cm", 55 - month);
            sheet.Cell(row, 11).SetValue(month == 2 ? "=fan belt changed" : "");
            row++;
            if (month == 11)
            {
                // The row again, as copied by a slip.
                sheet.Range(row - 1, 1, row - 1, 11).CopyTo(sheet.Cell(row, 1));
                row++;
                sheet.Cell(row++, 1).SetValue("closed for Easter");
            }

            if (month % 12 == 11)
            {
                sheet.Cell(row, 1).SetValue("Average");
                sheet.Cell(row, 3).SetValue(1325d);
                sheet.Cell(row, 5).SetValue(102d);
                row += 2;
            }
        }
    }

    private void Mouldings(IXLWorksheet sheet)
    {
        string[] first = ["Date", "Tower pH", "Make-up meter (gal)", "Tower cond. (µS/cm)"];
        string[] moved = ["Date", "Make-up meter (gal)", "Tower cond. (µS/cm)", "Tower pH"];
        var row = 1;
        for (var visit = 0; visit < 12; visit++)
        {
            if (visit is 0 or 6)
            {
                for (var column = 0; column < first.Length; column++)
                {
                    sheet.Cell(row, column + 1).SetValue((visit == 0 ? first : moved)[column]);
                }

                row++;
            }

            // Day and month of the same year below 13: the whole column has two meanings.
            var day = new DateOnly(2024, visit + 1, 5 + (visit % 4));
            sheet.Cell(row, 1).SetValue(day.ToString("d/M/yyyy", CultureInfo.InvariantCulture));
            if (day.Day != day.Month)
            {
                Doubtful.Add("Mould tower 2024 " + sheet.Cell(row, 1).Address);
            }

            var (ph, meter, conductivity) = visit < 6 ? (2, 3, 4) : (4, 2, 3);
            sheet.Cell(row, ph).SetValue(8.1);
            sheet.Cell(row, meter).SetValue(10_000d + (visit * 500));
            sheet.Cell(row, conductivity).SetValue(1600d + visit);
            Doubtful.Add("Mould tower 2024 " + sheet.Cell(row, meter).Address);
            Truth.Add((day, "PLU-1", "tower pH [pH]", 8.1, ""));
            Truth.Add((day, "PLU-1", "meter MU", Math.Round((10_000d + (visit * 500)) * 3.785411784, 6), ""));
            Truth.Add((day, "PLU-1", "tower conductivity uS/cm", 1600 + visit, ""));
            row++;
        }
    }

    private static void Day(IXLCell cell, DateOnly day, int month)
    {
        switch (month % 5)
        {
            case 0:
                cell.SetValue(day.ToDateTime(TimeOnly.MinValue));
                break;
            case 1:
                cell.SetValue(day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
                break;
            case 2:
                cell.SetValue(day.ToString("dd/MM/yyyy", CultureInfo.InvariantCulture));
                break;
            case 3:
                cell.SetValue(day.ToString("d MMM yyyy", CultureInfo.InvariantCulture));
                break;
            default:
                cell.SetValue($"{day.Day} de {Spanish[day.Month - 1]} de {day.Year}");
                break;
        }
    }

    private void Put(IXLCell cell, DateOnly day, string what, double number)
    {
        cell.SetValue(number);
        Truth.Add((day, "YAF-1", what, number, ""));
    }

    private void Replace(DateOnly day, string what, double number)
    {
        Truth.RemoveAll(known => known.Day == day && known.What == what && known.Site == "YAF-1");
        Truth.Add((day, "YAF-1", what, number, ""));
    }
}
