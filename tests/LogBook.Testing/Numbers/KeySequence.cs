using LogBook.Domain.Numbers;

namespace LogBook.Testing.Numbers;

/// <summary>Keys pressed one after the other in a number box, and what must come of them.</summary>
/// <param name="Keys">As pressed; "&lt;-" is the key that deletes.</param>
/// <param name="Said">The reading in words of <see cref="KeySequences.Said"/>; null where <paramref name="Meant"/> tells.</param>
/// <param name="Meant">The number a person means by them: understood as it, or asked about with it among the choices.</param>
public sealed record KeySequence(string Keys, string? Said, double? Meant)
{
    /// <summary>The key that deletes the one before.</summary>
    public const string Delete = "<-";

    /// <summary>The text that stands in the box afterwards.</summary>
    public string Text
    {
        get
        {
            var text = string.Empty;
            foreach (var part in Strokes)
            {
                text = part != Delete ? text + part : text.Length > 0 ? text[..^1] : text;
            }

            return text;
        }
    }

    /// <summary>The keys, one by one.</summary>
    public IEnumerable<string> Strokes
    {
        get
        {
            for (var i = 0; i < Keys.Length; i++)
            {
                var deletes = Keys.AsSpan(i).StartsWith(Delete, StringComparison.Ordinal);
                yield return deletes ? Delete : Keys[i].ToString();
                i += deletes ? 1 : 0;
            }
        }
    }

    /// <summary>Whether a reading is what must come of the keys: nothing else is stored without a question.</summary>
    /// <param name="reading">What was understood.</param>
    public bool Allows(NumberReading reading) => Meant is { } meant
        ? (reading.Kind == NumberReadingKind.Understood && reading.Value == meant) || (reading.Kind == NumberReadingKind.Ask && reading.Choices.Contains(meant))
        : KeySequences.Said(reading) == Said;

    /// <inheritdoc />
    public override string ToString() => $"{Keys} = {Said ?? Meant?.ToString(System.Globalization.CultureInfo.InvariantCulture)}";
}
