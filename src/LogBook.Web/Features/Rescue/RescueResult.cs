using LogBook.Domain.Languages;
using LogBook.Web.Components.Parts;

namespace LogBook.Web.Features.Rescue;

/// <summary>What became of a visit or draft of a rescue file.</summary>
/// <param name="Kind">Its state by shape and colour.</param>
/// <param name="Says">In words.</param>
/// <param name="Details">What is to be corrected, or what stands as a receipt.</param>
/// <param name="Link">Where it is now, if anywhere.</param>
public sealed record RescueResult(StateKind Kind, Text Says, IReadOnlyList<string> Details, string? Link = null);
