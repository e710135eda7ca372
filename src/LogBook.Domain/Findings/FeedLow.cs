using LogBook.Domain.Languages;

namespace LogBook.Domain.Findings;

/// <summary>Less product used than expected.</summary>
public sealed class FeedLow : FeedOff
{
    /// <inheritdoc />
    public override string Kind => FindingKinds.FeedLow;

    private protected override int Side => -1;

    private protected override IReadOnlyList<(string Cause, Said Words)> Causes { get; } =
    [
        Looks.Cause(FindingKinds.PumpOutput, "the pump gives less or lost its prime", "la bomba da menos o perdió el cebado", "a bomba rende menos ou perdeu a escorva"),
        Looks.Cause(FindingKinds.SettingsChanged, "the feed setting is too low for this water", "el ajuste de dosificación es bajo para esta agua", "o ajuste da dosagem é baixo para esta água"),
        Looks.Cause(FindingKinds.MeterStopped, "the meter that paces it lost counts", "el contador que la gobierna perdió cuentas", "o hidrômetro que a comanda perdeu contagens"),
    ];

    private protected override IReadOnlyList<Said> Next { get; } = [Looks.PumpRuns, Looks.LevelAgain, Looks.LabelFirst];
}
