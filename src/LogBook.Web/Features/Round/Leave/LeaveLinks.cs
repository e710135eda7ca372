namespace LogBook.Web.Features.Round.Leave;

/// <summary>Addresses of leave, closed days and patches.</summary>
public static class LeaveLinks
{
    public const string Leave = "/round/leave";

    public const string Patch = "/round/patch";

    /// <summary>The sites of a technician, to be handed over; of nobody when null.</summary>
    public static string PatchOf(string? person) => $"{Patch}?from={Uri.EscapeDataString(person ?? "")}";
}
