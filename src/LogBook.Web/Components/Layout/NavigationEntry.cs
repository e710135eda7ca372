using LogBook.Domain.Languages;
using LogBook.Domain.Sites;

namespace LogBook.Web.Components.Layout;

/// <summary>A section of the frame.</summary>
/// <param name="Path">Address it leads to.</param>
/// <param name="Name">Its name.</param>
/// <param name="IsExact">Current only at the very address, not below it.</param>
/// <param name="Roles">Who has it.</param>
public sealed record NavigationEntry(string Path, Text Name, bool IsExact, IReadOnlyList<PersonRole> Roles);
