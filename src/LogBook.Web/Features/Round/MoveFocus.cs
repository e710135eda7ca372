namespace LogBook.Web.Features.Round;

/// <summary>Which button takes the focus after a stop was moved.</summary>
public sealed class MoveFocus
{
    private (string Site, int Steps)? _wanted;

    /// <summary>A stop was moved.</summary>
    /// <param name="site">Its site.</param>
    /// <param name="steps">By how many places, back when negative.</param>
    /// <param name="place">Where it is now, from 0; negative when it is gone.</param>
    /// <param name="count">How many stops the list has.</param>
    public void Moved(string site, int steps, int place, int count)
    {
        // At either end its own button rests; the other one takes the focus.
        var rests = (steps < 0 && place == 0) || (steps > 0 && place == count - 1);
        _wanted = place < 0 || count < 2 ? null : (site, rests ? -steps : steps);
    }

    /// <summary>Which button of a stop takes the focus, told once.</summary>
    /// <param name="site">The stop's site.</param>
    /// <returns>Its steps, or null when the focus stays where it is.</returns>
    public int? Take(string site)
    {
        if (_wanted is not { } wanted || wanted.Site != site)
        {
            return null;
        }

        _wanted = null;
        return wanted.Steps;
    }
}
