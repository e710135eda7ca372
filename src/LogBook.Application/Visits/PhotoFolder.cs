namespace LogBook.Application.Visits;

/// <summary>Where pictures are kept.</summary>
/// <param name="Path">Folder; made when the first picture comes.</param>
public sealed record PhotoFolder(string Path);
