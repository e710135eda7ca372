using LogBook.Domain.Sites;

namespace LogBook.Domain.Rounds.Planning;

/// <summary>What packing needs to know of one stop.</summary>
/// <param name="Site">Code of the site.</param>
/// <param name="EveryDays">Days between visits; null where none are agreed.</param>
/// <param name="Systems">Systems in use with what lies ahead of them.</param>
public sealed record PackStop(string Site, double? EveryDays, IReadOnlyList<(WaterSystem System, SystemAhead Ahead)> Systems);
