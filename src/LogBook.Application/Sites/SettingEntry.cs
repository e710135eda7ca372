using LogBook.Domain.Assessments;

namespace LogBook.Application.Sites;

/// <summary>A threshold or default uncertainty as it stands for the firm or for one system.</summary>
/// <param name="Setting">The setting.</param>
/// <param name="Usual">Value without an own one here: the default, or for a system the firm's own.</param>
/// <param name="IsUsualOfFirm">Whether <paramref name="Usual"/> is a value that the firm has set.</param>
/// <param name="Own">Own value here, or null.</param>
/// <param name="Version">Version for the next save; 0 when there never was an own value.</param>
public sealed record SettingEntry(EngineSetting Setting, double Usual, bool IsUsualOfFirm, OwnSetting? Own, int Version);
