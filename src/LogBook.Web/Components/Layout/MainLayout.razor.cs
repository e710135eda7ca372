using System.Security.Claims;
using LogBook.Domain.Sites;
using LogBook.Web.Components.Parts;
using LogBook.Web.Features.Help;
using LogBook.Web.Security;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.AspNetCore.Components.Routing;

namespace LogBook.Web.Components.Layout;

/// <summary>The frame around every page of a person who is signed in.</summary>
public sealed partial class MainLayout : IDisposable
{
    private PageErrorBoundary? _boundary;
    private string _here = "";

    [Inject]
    private NavigationManager Navigation { get; set; } = default!;

    private string HelpPath => HelpPages.PathFor(Navigation.ToBaseRelativePath(Navigation.Uri));

    /// <inheritdoc />
    public void Dispose() => Navigation.LocationChanged -= OnLocationChanged;

    /// <inheritdoc />
    protected override void OnInitialized()
    {
        _here = HereWithoutAnchor();
        Navigation.LocationChanged += OnLocationChanged;
    }

    private static PersonRole RoleOf(AuthenticationState state) =>
        RoleNames.Parse(state.User.FindFirstValue(ClaimTypes.Role)) ?? PersonRole.SiteStaff;

    // The page that broke is left: the next one gets a fresh start.
    private void OnLocationChanged(object? sender, LocationChangedEventArgs change)
    {
        _here = HereWithoutAnchor();
        _boundary?.Recover();
        _ = InvokeAsync(StateHasChanged);
    }

    private string HereWithoutAnchor() => Navigation.ToBaseRelativePath(Navigation.Uri).Split('#')[0];
}
