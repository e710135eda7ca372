using LogBook.Domain.Estimates;

namespace LogBook.Domain.Languages;

/// <summary>A wording with the values for its places: put into a language only when somebody reads it.</summary>
/// <param name="Wording">The wording.</param>
/// <param name="Values">
/// Values for the places: a <see cref="Text"/> or another <see cref="Said"/> is put in the same language, an
/// <see cref="Estimate"/>, an <see cref="Amount"/>, a number or a day is rounded and worded by <see cref="Shown"/>.
/// </param>
public sealed record Said(Text Wording, params IReadOnlyList<object?> Values)
{
    /// <summary>The finished sentence in one language.</summary>
    /// <param name="language">Language asked for.</param>
    /// <returns>The sentence.</returns>
    public string In(Language language) => Values.Count == 0
        ? Wording.In(language)
        : Wording.In(language, [.. Values.Select(value => InLanguage(value, language))]);

    private static object? InLanguage(object? value, Language language) => value switch
    {
        Said said => said.In(language),
        Estimate estimate => Shown.Estimated(estimate, language),
        Amount amount => Shown.PlainWithUnit(amount.Value, amount.Unit, language),
        Count count => Shown.Entered(count.Value, language),
        double number => Shown.Plain(number, language),
        DateOnly day => Shown.Day(day, language),
        _ => value,
    };
}
