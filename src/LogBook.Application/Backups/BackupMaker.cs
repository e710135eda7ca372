using LogBook.Application.Data;

namespace LogBook.Application.Backups;

/// <summary>Makes and restores backups.</summary>
public sealed class BackupMaker
{
    /// <summary>Writes a consistent copy while work goes on.</summary>
    /// <returns>Path of the backup.</returns>
    public Task<string> BackupAsync(Viewer viewer, string folder, CancellationToken cancellationToken = default) => throw new NotSupportedException("Comes with the next change.");

    /// <summary>Puts a backup in the place of the database, which is kept beside it. Nothing else may have it open.</summary>
    public Task RestoreAsync(Viewer viewer, string backup, CancellationToken cancellationToken = default) => throw new NotSupportedException("Comes with the next change.");
}
