using LogBook.Application.Data;

namespace LogBook.Application.Audit;

/// <summary>Checks that the records are what they were.</summary>
public sealed class Verifier
{
    /// <summary>Integrity of the file, references, audit chain, hashes of the documents, readings and stored results against rebuilt ones.</summary>
    public Task<Verification> VerifyAsync(Viewer viewer, CancellationToken cancellationToken = default) => throw new NotSupportedException("Comes with the next change.");
}
