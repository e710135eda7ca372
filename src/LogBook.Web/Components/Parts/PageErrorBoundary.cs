using System.Diagnostics;
using LogBook.Web.Account;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;
using Microsoft.AspNetCore.Components.Web;

namespace LogBook.Web.Components.Parts;

/// <summary>Keeps the frame when a page breaks: notes the fault once under a reference that the person can read out.</summary>
public sealed class PageErrorBoundary : ErrorBoundaryBase
{
    private string _reference = "";

    [Inject]
    private ILogger<PageErrorBoundary> Logger { get; set; } = default!;

    [Inject]
    private Wording Wording { get; set; } = default!;

    /// <inheritdoc />
    protected override Task OnErrorAsync(Exception exception)
    {
        if (exception is SignedOutException)
        {
            return Task.CompletedTask;
        }

        _reference = (Activity.Current?.TraceId.ToString() ?? Guid.CreateVersion7().ToString("N"))[..12];
        Logger.LogError(exception, "A page broke; reference {Reference}", _reference);
        return Task.CompletedTask;
    }

    /// <inheritdoc />
    protected override void BuildRenderTree(RenderTreeBuilder builder)
    {
        if (CurrentException is null)
        {
            builder.AddContent(0, ChildContent);
            return;
        }

        if (CurrentException is SignedOutException)
        {
            builder.OpenComponent<NotYours>(13);
            builder.CloseComponent();
            return;
        }

        builder.OpenElement(1, "div");
        builder.AddAttribute(2, "class", "broken");
        builder.AddAttribute(3, "role", "alert");
        builder.OpenElement(4, "h1");
        builder.AddContent(5, Wording[FrameTexts.SomethingBroke]);
        builder.CloseElement();
        builder.OpenElement(6, "p");
        builder.AddContent(7, Wording[FrameTexts.SomethingBrokeMore, _reference]);
        builder.CloseElement();
        builder.OpenElement(8, "p");
        builder.OpenElement(9, "a");
        builder.AddAttribute(10, "href", "");
        builder.AddAttribute(11, "data-reload", true);
        builder.AddContent(12, Wording[FrameTexts.LoadAgain]);
        builder.CloseElement();
        builder.CloseElement();
        builder.CloseElement();
    }
}
