using System.Collections.Concurrent;
using LogBook.Application.Data;
using LogBook.Application.RecordPacks;

namespace LogBook.Web.Features.RecordPacks;

/// <summary>Makes record packs one after the other and keeps each for a short while, for the person who asked for it.</summary>
/// <remarks>One at a time: a pack of a large site takes seconds of a processor and tens of megabytes, and the visit form must not feel it.</remarks>
public sealed class RecordDesk(RecordPackReader reader, TimeProvider clock) : IDisposable
{
    private const int MostKept = 6;
    private static readonly TimeSpan KeptFor = TimeSpan.FromMinutes(15);

    private readonly SemaphoreSlim _turn = new(1, 1);
    private readonly ConcurrentDictionary<Guid, Kept> _kept = new();

    /// <summary>Makes a pack; null where there is no such site or the viewer may not take its records.</summary>
    /// <param name="viewer">Who asks.</param>
    /// <param name="site">Code of the site.</param>
    /// <param name="from">First day.</param>
    /// <param name="to">Last day.</param>
    /// <param name="progress">Told the share that is done; below 0 while another pack is being made.</param>
    /// <param name="cancellationToken">Stops, when the person leaves.</param>
    public async Task<RecordTicket?> MakeAsync(Viewer viewer, string site, DateOnly from, DateOnly to, IProgress<double> progress, CancellationToken cancellationToken)
    {
        if (!await _turn.WaitAsync(0, cancellationToken))
        {
            progress.Report(-1);
            await _turn.WaitAsync(cancellationToken);
        }

        try
        {
            progress.Report(0);
            if (await reader.ReadAsync(viewer, site, from, to, cancellationToken) is not { } pack)
            {
                return null;
            }

            var file = await Task.Run(() => RecordPackMaker.Make(pack, viewer.Language, progress, cancellationToken), cancellationToken);
            Tidy();
            var ticket = Guid.CreateVersion7();
            _kept[ticket] = new Kept(file, viewer.UserId, pack.Site.Code, clock.GetUtcNow());
            return new RecordTicket(ticket, file.Name, file.Visits, file.Results, file.Zip.Length);
        }
        finally
        {
            _turn.Release();
        }
    }

    /// <summary>The file of a ticket; null for whoever did not ask for it, for another site, and after a while.</summary>
    public RecordPackFile? Take(Viewer viewer, string site, Guid ticket)
    {
        Tidy();
        return _kept.TryGetValue(ticket, out var kept) && kept.UserId == viewer.UserId && kept.Site.Equals(site, StringComparison.OrdinalIgnoreCase) ? kept.File : null;
    }

    /// <inheritdoc />
    public void Dispose() => _turn.Dispose();

    private void Tidy()
    {
        var now = clock.GetUtcNow();
        var byAge = _kept.OrderByDescending(pair => pair.Value.At).ToList();
        foreach (var (ticket, _) in byAge.Where((pair, place) => place >= MostKept - 1 || now - pair.Value.At > KeptFor))
        {
            _kept.TryRemove(ticket, out _);
        }
    }

    private sealed record Kept(RecordPackFile File, int? UserId, string Site, DateTimeOffset At);
}
