namespace LogBook.Domain.Simulation.Technicians;

/// <summary>Version 7 identities that depend on nothing but a moment and a generator.</summary>
public static class VisitIds
{
    /// <summary>An identity.</summary>
    /// <param name="utc">Its moment, UTC; the first 48 bits are its Unix milliseconds (RFC 9562, 5.7).</param>
    /// <param name="random">Source of the other bits.</param>
    /// <returns>A Guid of version 7.</returns>
    public static Guid Of(DateTime utc, SplitMix random)
    {
        ArgumentNullException.ThrowIfNull(random);
        var milliseconds = (ulong)((utc - DateTime.UnixEpoch).Ticks / TimeSpan.TicksPerMillisecond);
        var a = random.NextBits();
        var b = random.NextBits();
        Span<byte> bytes = stackalloc byte[16];
        for (var i = 0; i < 6; i++)
        {
            bytes[i] = (byte)(milliseconds >> (8 * (5 - i)));
        }

        bytes[6] = (byte)(0x70 | (a & 0x0F));
        bytes[7] = (byte)(a >> 8);
        for (var i = 8; i < 16; i++)
        {
            bytes[i] = (byte)(b >> (8 * (i - 8)));
        }

        bytes[8] = (byte)(0x80 | (bytes[8] & 0x3F));
        return new Guid(bytes, bigEndian: true);
    }
}
