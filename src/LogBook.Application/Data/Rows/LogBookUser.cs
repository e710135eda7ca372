using LogBook.Domain.Languages;
using Microsoft.AspNetCore.Identity;

namespace LogBook.Application.Data;

/// <summary>An account.</summary>
public sealed class LogBookUser : IdentityUser<int>
{
    /// <summary>Code of the person in the set-up.</summary>
    public string? PersonCode { get; set; }

    public Language Language { get; set; }

    /// <summary>For accounts of a customer and their staff: the customer whose records are seen.</summary>
    public int? CustomerId { get; set; }

    /// <summary>Wants an e-mail when a finding opens that cannot wait.</summary>
    public bool NoticeAtOnce { get; set; }

    /// <summary>Wants an e-mail each morning with what the day brings.</summary>
    public bool NoticeDigest { get; set; }

    /// <summary>Both only for the sites of the person's own round.</summary>
    public bool NoticeOwnSites { get; set; }

    /// <summary>Since when the account may not be used.</summary>
    public DateTime? DisabledAt { get; set; }
}
