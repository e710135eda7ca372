using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace LogBook.Domain.Exchange;

/// <summary>
/// A point in time as somebody wrote it (RFC 3339 with offset): the text is kept, comparisons are in UTC to the millisecond.
/// </summary>
/// <remarks><c>default</c> has no text and is not a time; required fields never hold it.</remarks>
[JsonConverter(typeof(MomentConverter))]
public readonly record struct Moment : IComparable<Moment>
{
    private Moment(string text, DateTime utc, TimeSpan offset)
    {
        Text = text;
        Utc = utc;
        Offset = offset;
    }

    /// <summary>The text as written.</summary>
    public string Text { get; }

    /// <summary>The same point in UTC, truncated to the millisecond.</summary>
    public DateTime Utc { get; }

    /// <summary>Offset from UTC as written.</summary>
    public TimeSpan Offset { get; }

    /// <summary>Wall time at the place where it was written.</summary>
    public DateTime Wall => DateTime.SpecifyKind(Utc + Offset, DateTimeKind.Unspecified);

    /// <summary>Makes a moment from a point in time, written with its offset and without needless fractions.</summary>
    /// <param name="time">Any point in time; truncated to the millisecond.</param>
    /// <returns>The moment.</returns>
    public static Moment Of(DateTimeOffset time)
    {
        var utc = Truncate(time.UtcDateTime);
        var shown = new DateTimeOffset(utc).ToOffset(time.Offset);
        var format = utc.Millisecond == 0 ? "yyyy-MM-dd'T'HH:mm:sszzz" : "yyyy-MM-dd'T'HH:mm:ss.fffzzz";
        return new Moment(shown.ToString(format, CultureInfo.InvariantCulture), utc, time.Offset);
    }

    /// <summary>Makes a moment from a UTC time.</summary>
    /// <param name="utc">A time of kind UTC.</param>
    /// <returns>The moment, written with offset +00:00.</returns>
    public static Moment OfUtc(DateTime utc) => Of(new DateTimeOffset(DateTime.SpecifyKind(utc, DateTimeKind.Utc)));

    /// <summary>Reads an RFC 3339 time with offset.</summary>
    /// <param name="text">Text as written.</param>
    /// <param name="moment">The moment, when the text is one.</param>
    /// <returns>Whether the text is an RFC 3339 time with offset.</returns>
    public static bool TryParse(string? text, out Moment moment)
    {
        moment = default;
        if (text is null || text.Length < 20 || (text[10] != 'T' && text[10] != 't' && text[10] != ' ')
            || !DateTimeOffset.TryParseExact(text.Replace('t', 'T').Replace(' ', 'T').Replace('z', 'Z'), Formats, CultureInfo.InvariantCulture, DateTimeStyles.None, out var time))
        {
            return false;
        }

        moment = new Moment(text, Truncate(time.UtcDateTime), time.Offset);
        return true;
    }

    /// <inheritdoc />
    public int CompareTo(Moment other) => Utc.CompareTo(other.Utc);

    /// <summary>Two moments are equal when they are the same point in time, however written.</summary>
    /// <param name="other">Another moment.</param>
    /// <returns>Whether both are the same point.</returns>
    public bool Equals(Moment other) => Utc == other.Utc;

    /// <inheritdoc />
    public override int GetHashCode() => Utc.GetHashCode();

    /// <inheritdoc />
    public override string ToString() => Text;

    /// <summary>Earlier than.</summary>
    public static bool operator <(Moment a, Moment b) => a.Utc < b.Utc;

    /// <summary>Later than.</summary>
    public static bool operator >(Moment a, Moment b) => a.Utc > b.Utc;

    /// <summary>Not later than.</summary>
    public static bool operator <=(Moment a, Moment b) => a.Utc <= b.Utc;

    /// <summary>Not earlier than.</summary>
    public static bool operator >=(Moment a, Moment b) => a.Utc >= b.Utc;

    private static readonly string[] Formats =
        ["yyyy-MM-dd'T'HH:mm:sszzz", "yyyy-MM-dd'T'HH:mm:ss'Z'", "yyyy-MM-dd'T'HH:mm:ss.FFFFFFFzzz", "yyyy-MM-dd'T'HH:mm:ss.FFFFFFF'Z'"];

    private static DateTime Truncate(DateTime utc) => new(utc.Ticks - (utc.Ticks % TimeSpan.TicksPerMillisecond), DateTimeKind.Utc);
}
