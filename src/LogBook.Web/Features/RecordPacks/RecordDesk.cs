using System.Collections.Concurrent;
using LogBook.Application.Data;
using LogBook.Application.RecordPacks;

namespace LogBook.Web.Features.RecordPacks;

/// <summary>Makes record packs one after the other and keeps each for a short while, for the person who asked for it.</summary>
/// <remarks>
/// One at a time: a pack of a large site takes seconds of a processor and tens of megabytes, and the visit form must not feel it. With its
/// pictures it can be larger than the memory, so the files lie in a folder of the system's for temporary files that only the server reads.
/// </remarks>
public sealed class RecordDesk(RecordPackReader reader, RecordPackMaker maker, TimeProvider clock) : IDisposable
{
    private const int MostKept = 6;
    private const int BufferBytes = 64 * 1024;
    private static readonly TimeSpan KeptFor = TimeSpan.FromMinutes(15);

    private readonly SemaphoreSlim _turn = new(1, 1);
    private readonly ConcurrentDictionary<Guid, Kept> _kept = new();
    private readonly Lazy<DirectoryInfo> _folder = new(() => Directory.CreateTempSubdirectory("logbook-records-"));

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

            Tidy();
            var ticket = Guid.CreateVersion7();
            var (file, bytes) = await Task.Run(() => WriteAsync(pack, viewer, PathOf(ticket), progress, cancellationToken), cancellationToken);
            _kept[ticket] = new Kept(file.Name, viewer.UserId, pack.Site.Code, clock.GetUtcNow());
            return new RecordTicket(ticket, file, bytes);
        }
        finally
        {
            _turn.Release();
        }
    }

    /// <summary>The file of a ticket, open for reading; null for whoever did not ask for it, for another site, and after a while.</summary>
    public (string Name, Stream Content)? Take(Viewer viewer, string site, Guid ticket)
    {
        Tidy();
        if (!_kept.TryGetValue(ticket, out var kept) || kept.UserId != viewer.UserId || !kept.Site.Equals(site, StringComparison.OrdinalIgnoreCase))
        {
            return null;
        }

        // Who is still reading when its time is over reads on to the end.
        return (kept.Name, new FileStream(PathOf(ticket), FileMode.Open, FileAccess.Read, FileShare.Read | FileShare.Delete, BufferBytes, FileOptions.Asynchronous));
    }

    /// <inheritdoc />
    public void Dispose()
    {
        _turn.Dispose();
        if (_folder.IsValueCreated)
        {
            _folder.Value.Delete(recursive: true);
        }
    }

    private async Task<(RecordPackFile File, long Bytes)> WriteAsync(RecordPack pack, Viewer viewer, string path, IProgress<double> progress, CancellationToken cancellationToken)
    {
        try
        {
            await using var stream = new FileStream(path, FileMode.CreateNew, FileAccess.Write, FileShare.None, BufferBytes, FileOptions.Asynchronous);
            var file = await maker.WriteAsync(pack, viewer.Language, stream, progress, cancellationToken);
            return (file, stream.Length);
        }
        catch
        {
            File.Delete(path);
            throw;
        }
    }

    private string PathOf(Guid ticket) => Path.Combine(_folder.Value.FullName, $"{ticket:N}.zip");

    private void Tidy()
    {
        var now = clock.GetUtcNow();
        var byAge = _kept.OrderByDescending(pair => pair.Value.At).ToList();
        foreach (var (ticket, _) in byAge.Where((pair, place) => place >= MostKept - 1 || now - pair.Value.At > KeptFor))
        {
            _kept.TryRemove(ticket, out _);
            File.Delete(PathOf(ticket));
        }
    }

    private sealed record Kept(string Name, int? UserId, string Site, DateTimeOffset At);
}
