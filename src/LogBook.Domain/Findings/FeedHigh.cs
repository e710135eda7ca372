using LogBook.Domain.Languages;

namespace LogBook.Domain.Findings;

/// <summary>More product used than expected.</summary>
public sealed class FeedHigh : FeedOff
{
    /// <inheritdoc />
    public override string Kind => FindingKinds.FeedHigh;

    private protected override int Side => 1;

    private protected override IReadOnlyList<(string Cause, Said Words)> Causes { get; } =
    [
        Looks.Cause(FindingKinds.SettingsChanged, "the feed setting or the stroke is too high", "el ajuste o la carrera de la bomba es alto", "o ajuste ou o curso da bomba é alto"),
        Looks.Cause(FindingKinds.SwitchNotAutomatic, "the pump ran forced on", "la bomba marchó forzada", "a bomba funcionou forçada"),
        Looks.Cause(FindingKinds.StockUnexplained, "product left the drum by another way", "el producto salió del bidón por otra vía", "o produto saiu da bombona por outro caminho"),
    ];

    private protected override IReadOnlyList<Said> Next { get; } =
    [
        Looks.LevelAgain,
        Looks.Say("Look for a leak at the drum and its line.", "Busque una fuga en el bidón y su línea.", "Procure um vazamento na bombona e na sua linha."),
        Looks.LabelFirst,
    ];
}
