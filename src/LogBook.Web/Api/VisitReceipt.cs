using LogBook.Domain.Outcomes;

namespace LogBook.Web.Api;

/// <summary>Says that a visit is on the server. A sender may let go of its copy when the hash is that of its own document.</summary>
public sealed record VisitReceipt(Guid Visit, int Version, string Sha256, bool AlreadyKnown, IReadOnlyList<Issue> Warnings);
