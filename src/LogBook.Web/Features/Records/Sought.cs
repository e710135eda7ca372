namespace LogBook.Web.Features.Records;

/// <summary>The row of a record that a finding leads to: its visit, on the part that the finding is about.</summary>
/// <param name="Part">Code of the probe, meter or pump.</param>
/// <param name="Visit">The visit.</param>
/// <param name="Place">Place of the row in its table, latest first, from 0.</param>
public sealed record Sought(string Part, Guid Visit, int Place)
{
    /// <summary>Anchor of the row.</summary>
    public const string Anchor = "sought";

    /// <summary>Instead of a probe: the feeds that follow a display.</summary>
    public const string Displays = "by-display";

    /// <summary>The row; null where the address asks for none, or for one that is not there.</summary>
    /// <param name="visit">Visit as it stands in the address.</param>
    /// <param name="part">Part as it stands in the address; any when null. Case does not count.</param>
    /// <param name="records">Parts with their visits, latest first.</param>
    public static Sought? Of(string? visit, string? part, IEnumerable<(string Part, IEnumerable<Guid> Visits)> records)
    {
        if (!Guid.TryParse(visit, out var id))
        {
            return null;
        }

        foreach (var (code, visits) in records.Where(record => part is null || record.Part.Equals(part, StringComparison.OrdinalIgnoreCase)))
        {
            if (visits.ToList().IndexOf(id) is >= 0 and var place)
            {
                return new Sought(code, id, place);
            }
        }

        return null;
    }

    /// <summary>Whether a row is the one.</summary>
    public bool Is(string part, Guid visit) => Visit == visit && Part.Equals(part, StringComparison.OrdinalIgnoreCase);
}
