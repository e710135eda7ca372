using LogBook.Domain.Languages;
using LogBook.Entry.Drafts;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;

namespace LogBook.Entry.State;

/// <summary>A part of the form. It is shown anew when something it has read is another, not when anything of the form changed.</summary>
/// <remarks>
/// A tablet interprets this code: a form that shows all its fields anew after each of them lets the next tap wait. What a part reads
/// from <see cref="FormState"/> while it is built is noted (<see cref="FormReads"/>). What a part shows must therefore come from there,
/// from its parameters as values, or from its own fields, which only its own events change. Acts and contents that are handed to it are
/// taken as the same as long as they come from the same place of the code.
/// </remarks>
public abstract class EntryComponent : IComponent, IHandleEvent, IDisposable
{
    private readonly RenderFragment _content;
    private readonly GivenParameters _given = new();
    private RenderHandle _handle;
    private bool _hasJoined;
    private bool _isQueued;

    /// <summary>Prepares the part.</summary>
    protected EntryComponent() => _content = Build;

    /// <summary>What the parts share.</summary>
    [CascadingParameter]
    public FormState State { get; set; } = default!;

    /// <summary>What it read when it was last shown.</summary>
    internal FormReads Reads { get; } = new();

    /// <summary>Whether it was taken away.</summary>
    internal bool IsGone { get; private set; }

    /// <summary>Whether an act of its own shows it at once; parts that hold nothing but what the draft holds need not.</summary>
    protected virtual bool ShowsAfterActs => true;

    /// <inheritdoc />
    public void Attach(RenderHandle renderHandle) => _handle = renderHandle;

    /// <inheritdoc />
    public Task SetParametersAsync(ParameterView parameters)
    {
        var areNew = _given.Take(parameters);
        parameters.SetParameterProperties(this);
        if (!_hasJoined)
        {
            _hasJoined = true;
            State.Join(this);
        }

        var work = OnParametersSetAsync();
        if (areNew)
        {
            Show();
        }

        return work.IsCompletedSuccessfully ? Task.CompletedTask : ShowAfterAsync(work);
    }

    /// <inheritdoc />
    public Task HandleEventAsync(EventCallbackWorkItem item, object? arg)
    {
        var work = item.InvokeAsync(arg);
        if (ShowsAfterActs)
        {
            Show();
        }

        return work.IsCompletedSuccessfully ? Task.CompletedTask : ShowAfterAsync(work);
    }

    /// <inheritdoc />
    public void Dispose()
    {
        Dispose(true);
        GC.SuppressFinalize(this);
    }

    /// <summary>Shows it anew.</summary>
    internal void Show()
    {
        if (!_isQueued && !IsGone)
        {
            _isQueued = true;
            _handle.Render(_content);
        }
    }

    /// <summary>Shows it anew because time has passed; may be called from anywhere.</summary>
    protected void ShowSoon()
    {
        if (!IsGone)
        {
            _ = _handle.Dispatcher.InvokeAsync(Show);
        }
    }

    /// <summary>Leaves the form.</summary>
    /// <param name="disposing">Whether it is asked to.</param>
    protected virtual void Dispose(bool disposing)
    {
        IsGone = true;
        if (_hasJoined)
        {
            State.Leave(this);
        }
    }

    /// <summary>Its elements.</summary>
    /// <param name="builder">Takes them.</param>
    protected virtual void BuildRenderTree(RenderTreeBuilder builder)
    {
    }

    /// <summary>Work that its parameters ask for.</summary>
    /// <returns>The work.</returns>
    protected virtual Task OnParametersSetAsync() => Task.CompletedTask;

    /// <summary>A wording in the form's language.</summary>
    /// <param name="text">The wording.</param>
    /// <param name="values">Values for its places.</param>
    /// <returns>The finished text.</returns>
    protected string T(Text text, params object?[] values) => State.T(text, values);

    /// <summary>Identifier of a field on the page.</summary>
    /// <param name="key">Key of the field.</param>
    /// <returns>The identifier.</returns>
    protected static string Id(string key) => DraftKey.ElementId(key);

    private void Build(RenderTreeBuilder builder)
    {
        _isQueued = false;
        Reads.Clear();
        var before = State.Note(Reads);
        try
        {
            BuildRenderTree(builder);
        }
        finally
        {
            State.Note(before);
        }
    }

    private async Task ShowAfterAsync(Task work)
    {
        await work;
        Show();
    }
}
