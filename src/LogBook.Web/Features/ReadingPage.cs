using LogBook.Application.Data;
using LogBook.Web.Account;
using Microsoft.AspNetCore.Components;

namespace LogBook.Web.Features;

/// <summary>
/// A page that shows one reading of the database: being loaded, not there (or not for this person), or ready. What cannot be read at all
/// goes to the error boundary, which keeps the frame.
/// </summary>
/// <typeparam name="T">What is read.</typeparam>
public abstract class ReadingPage<T> : ComponentBase, IDisposable
    where T : class
{
    private readonly CancellationTokenSource _leaving = new();
    private int _turn;

    /// <summary>What was read; null while loading and where there is nothing.</summary>
    protected T? Model { get; private set; }

    /// <summary>Who looks; null until known.</summary>
    protected Viewer? Viewer { get; private set; }

    /// <summary>Whether the first reading is under way.</summary>
    protected bool IsLoading { get; private set; } = true;

    [Inject]
    private ViewerProvider Viewers { get; set; } = default!;

    /// <summary>Gives addresses and goes to them.</summary>
    [Inject]
    protected NavigationManager Navigation { get; set; } = default!;

    /// <summary>Reads; null for what is not there.</summary>
    protected abstract Task<T?> ReadAsync(Viewer viewer, CancellationToken cancellationToken);

    /// <inheritdoc />
    protected override Task OnParametersSetAsync() => ReloadAsync();

    /// <summary>Reads again, after an act on the page.</summary>
    protected async Task ReloadAsync()
    {
        // The address may change while a reading is under way: only the last one asked for is shown.
        var turn = ++_turn;
        try
        {
            // Asked anew each time: the account may have been shut out since.
            var viewer = await Viewers.GetAsync(_leaving.Token);
            var model = await ReadAsync(viewer, _leaving.Token);
            if (turn == _turn)
            {
                Viewer = viewer;
                Model = model;
                IsLoading = false;
            }
        }
        catch (OperationCanceledException) when (_leaving.IsCancellationRequested)
        {
            // The person has left the page; nobody waits for the answer.
        }
    }

    /// <summary>Changes one part of the address, back to the first page of a list.</summary>
    protected void Ask(string name, object? value)
    {
        var text = value?.ToString();
        Navigation.NavigateTo(Navigation.GetUriWithQueryParameters(new Dictionary<string, object?>(StringComparer.Ordinal)
        {
            ["page"] = null,
            [name] = string.IsNullOrEmpty(text) ? null : text,
        }));
    }

    /// <inheritdoc />
    public void Dispose()
    {
        Dispose(true);
        GC.SuppressFinalize(this);
    }

    /// <summary>Stops readings under way.</summary>
    protected virtual void Dispose(bool disposing)
    {
        if (disposing)
        {
            _leaving.Cancel();
            _leaving.Dispose();
        }
    }
}
