using LogBook.Domain.Visits;

namespace LogBook.Entry.Drafts;

/// <summary>What tells one test result of a system from another.</summary>
/// <param name="At">Sample point.</param>
/// <param name="Test">Code of the test.</param>
/// <param name="Source">Who or what says it.</param>
/// <param name="Number">1, or more where the same was read again.</param>
public sealed record ReadingKey(string At, string Test, ReadingSource? Source, int Number = 1)
{
    private const char Between = '|';

    /// <summary>The part of a draft's key.</summary>
    public string Part => string.Join(Between, At, Test, Source?.ToString() ?? string.Empty, Number.ToString(System.Globalization.CultureInfo.InvariantCulture));

    /// <summary>Reads the part of a draft's key.</summary>
    /// <param name="part">From <see cref="Part"/>.</param>
    /// <returns>The key, or null when it is none.</returns>
    public static ReadingKey? Parse(string part)
    {
        var pieces = part.Split(Between);
        return pieces.Length == 4 && int.TryParse(pieces[3], System.Globalization.CultureInfo.InvariantCulture, out var number)
            ? new ReadingKey(pieces[0], pieces[1], Enum.TryParse<ReadingSource>(pieces[2], out var source) ? source : null, number)
            : null;
    }

    /// <summary>Key of the whole result in a draft.</summary>
    /// <param name="system">Code of the system.</param>
    /// <returns>The key.</returns>
    public string In(string system) => DraftKey.Of(DraftKey.Systems, system, "readings", Part);
}
