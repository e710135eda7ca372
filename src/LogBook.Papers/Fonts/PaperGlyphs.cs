using System.Buffers.Binary;

namespace LogBook.Papers.Fonts;

/// <summary>Which characters the font has, read from its own table (cmap, format 4).</summary>
internal static class PaperGlyphs
{
    private static readonly Lazy<HashSet<char>> Known = new(Load);

    public static bool Has(char letter) => Known.Value.Contains(letter);

    private static HashSet<char> Load()
    {
        ReadOnlySpan<byte> font = PaperFonts.Read("Regular");
        var cmap = font[Table(font, "cmap")..];
        var found = new HashSet<char>();
        for (var index = 0; index < U16(cmap, 2); index++)
        {
            var part = cmap[(int)BinaryPrimitives.ReadUInt32BigEndian(cmap[(8 + (8 * index))..])..];
            if (U16(part, 0) == 4)
            {
                AddSegments(part, found);
            }
        }

        return found;
    }

    private static void AddSegments(ReadOnlySpan<byte> part, HashSet<char> found)
    {
        var segments = U16(part, 6) / 2;
        for (var segment = 0; segment < segments; segment++)
        {
            var last = U16(part, 14 + (2 * segment));
            var first = U16(part, 16 + (2 * segments) + (2 * segment));
            for (var code = first; code <= last && code < 0xFFFF; code++)
            {
                found.Add((char)code);
            }
        }
    }

    private static int Table(ReadOnlySpan<byte> font, string name)
    {
        for (var index = 0; index < U16(font, 4); index++)
        {
            var entry = font[(12 + (16 * index))..];
            if (entry[..4].SequenceEqual(System.Text.Encoding.ASCII.GetBytes(name)))
            {
                return (int)BinaryPrimitives.ReadUInt32BigEndian(entry[8..]);
            }
        }

        throw new InvalidOperationException($"The font has no table {name}.");
    }

    private static int U16(ReadOnlySpan<byte> bytes, int at) => BinaryPrimitives.ReadUInt16BigEndian(bytes[at..]);
}
