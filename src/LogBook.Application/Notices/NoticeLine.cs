namespace LogBook.Application.Notices;

/// <summary>One line of a notice.</summary>
/// <param name="Words">What it says.</param>
/// <param name="Link">Where it is looked up; null where the installation's address is not known.</param>
internal sealed record NoticeLine(string Words, string? Link = null)
{
    /// <summary>As plain text, on one line.</summary>
    public string Plain => Link is null ? OneLine : $"{OneLine} ({Link})";

    /// <summary>As HTML.</summary>
    public string Markup => Link is null ? NoticeMail.Encoded(OneLine) : $"<a href=\"{NoticeMail.Encoded(Link)}\">{NoticeMail.Encoded(OneLine)}</a>";

    private string OneLine => string.Join(' ', Words.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
