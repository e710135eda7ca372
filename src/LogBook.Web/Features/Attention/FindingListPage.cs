using LogBook.Application.Data;
using LogBook.Application.Reviews;
using LogBook.Domain.Findings;
using Microsoft.AspNetCore.Components;

namespace LogBook.Web.Features.Attention;

/// <summary>A page that lists findings by the filters in its address.</summary>
public abstract class FindingListPage : ReadingPage<AttentionList>
{
    /// <summary>Whether only what is about instruments, lots and records is listed.</summary>
    protected virtual bool IsSecondLook => false;

    /// <summary>What the address asks for.</summary>
    protected AttentionFilter Filter => new(
        Given(Kind),
        Given(SiteCode),
        Enum.TryParse<Severity>(SeverityName, ignoreCase: true, out var severity) ? severity : null,
        Given(Person),
        Enum.TryParse<FindingState>(StateName, ignoreCase: true, out var state) ? state : null,
        Math.Max(1, PageNumber ?? 1),
        IsSecondLook,
        Given(Owner));

    /// <summary>Whether the address leaves anything out.</summary>
    protected bool IsFiltered => Filter with { Page = 1 } != new AttentionFilter(SecondLook: IsSecondLook);

    [Inject]
    private AttentionQuery Attention { get; set; } = default!;

    [SupplyParameterFromQuery(Name = "severity")]
    private string? SeverityName { get; set; }

    [SupplyParameterFromQuery(Name = "kind")]
    private string? Kind { get; set; }

    [SupplyParameterFromQuery(Name = "site")]
    private string? SiteCode { get; set; }

    [SupplyParameterFromQuery(Name = "person")]
    private string? Person { get; set; }

    [SupplyParameterFromQuery(Name = "owner")]
    private string? Owner { get; set; }

    [SupplyParameterFromQuery(Name = "state")]
    private string? StateName { get; set; }

    [SupplyParameterFromQuery(Name = "page")]
    private int? PageNumber { get; set; }

    /// <inheritdoc />
    protected override Task<AttentionList?> ReadAsync(Viewer viewer, CancellationToken cancellationToken) => Attention.ListAsync(viewer, Filter, cancellationToken);

    /// <summary>Changes one filter.</summary>
    protected void Ask((string Name, object? Value) part) => Ask(part.Name, part.Value);

    private static string? Given(string? text) => string.IsNullOrEmpty(text) ? null : text;
}
