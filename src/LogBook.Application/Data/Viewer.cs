using LogBook.Domain.Languages;
using LogBook.Domain.Sites;

namespace LogBook.Application.Data;

/// <summary>Who asks. First argument of every public query and command; nothing is read or written without one.</summary>
/// <param name="UserId">Account, or null for the program itself.</param>
/// <param name="Who">Name as it stands in the audit trail.</param>
/// <param name="PersonCode">Code of the person in the set-up, when the account belongs to one.</param>
/// <param name="Role">What the viewer may do.</param>
/// <param name="CustomerIds">Customers whose records are seen; null for all customers of the firm.</param>
/// <param name="Language">Language that is spoken to the viewer.</param>
public sealed record Viewer(int? UserId, string Who, string? PersonCode, PersonRole Role, IReadOnlyList<int>? CustomerIds, Language Language)
{
    /// <summary>The program itself: imports from the command line, start-up, the mail queue.</summary>
    public static Viewer System(string who) => new(null, who, null, PersonRole.Administrator, null, Language.English);

    /// <summary>Works for the firm, as opposed to a customer or their staff.</summary>
    public bool IsOfFirm => Role is PersonRole.Technician or PersonRole.Supervisor or PersonRole.Administrator;

    /// <summary>May hand in visits.</summary>
    public bool MayEnterVisits => IsOfFirm;

    /// <summary>May review, void and move visits and answer findings.</summary>
    public bool MayReview => Role is PersonRole.Supervisor or PersonRole.Administrator;

    /// <summary>May change the set-up.</summary>
    public bool MayKeepSetUp => Role is PersonRole.Supervisor or PersonRole.Administrator;

    /// <summary>Whether records of a customer are seen.</summary>
    public bool Sees(int customerId) => CustomerIds is null || CustomerIds.Contains(customerId);
}
