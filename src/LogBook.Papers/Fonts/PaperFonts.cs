using PdfSharp.Drawing;
using PdfSharp.Fonts;
using PdfSharp.Pdf;

namespace LogBook.Papers.Fonts;

/// <summary>Hands the embedded font to the PDF library, which otherwise looks for fonts of the machine.</summary>
internal sealed class PaperFonts : IFontResolver
{
    private const string Family = "LogBook Papers";
    private static readonly Lock Gate = new();
    private static bool _told;

    private PaperFonts()
    {
    }

    public static XFont Of(double points, bool bold)
    {
        Tell();
        return new XFont(Family, points, bold ? XFontStyleEx.Bold : XFontStyleEx.Regular, new XPdfFontOptions(PdfFontEncoding.Unicode, PdfFontEmbedding.EmbedCompleteFontFile));
    }

    public FontResolverInfo? ResolveTypeface(string familyName, bool isBold, bool isItalic) =>
        string.Equals(familyName, Family, StringComparison.OrdinalIgnoreCase) ? new FontResolverInfo(isBold ? "Bold" : "Regular") : null;

    public byte[]? GetFont(string faceName) => Read(faceName);

    internal static byte[] Read(string face)
    {
        using var stream = typeof(PaperFonts).Assembly.GetManifestResourceStream($"LogBook.Papers.LogBookPapers-{face}.ttf")
            ?? throw new InvalidOperationException($"The font {face} is not in the assembly.");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }

    // The library keeps its resolver for the whole process and refuses a second one.
    private static void Tell()
    {
        lock (Gate)
        {
            if (!_told)
            {
                GlobalFontSettings.FontResolver ??= new PaperFonts();
                _told = true;
            }
        }
    }
}
