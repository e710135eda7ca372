using LogBook.Domain.Languages;

namespace LogBook.Domain.Findings;

/// <summary>Residual below its range.</summary>
public sealed class ResidualLow : ResidualOff
{
    /// <inheritdoc />
    public override string Kind => FindingKinds.ResidualLow;

    private protected override int Side => -1;

    private protected override IReadOnlyList<(string Cause, Said Words)> Causes { get; } =
    [
        Looks.Cause(FindingKinds.FeedLow, "too little product is fed", "se dosifica poco producto", "dosa-se pouco produto"),
        Looks.Cause(FindingKinds.WaterLoss, "more water leaves than the feed follows", "sale más agua de la que sigue la dosificación", "sai mais água do que a dosagem acompanha"),
        Looks.Cause("reading", "the reagent or the reading", "el reactivo o la lectura", "o reagente ou a leitura"),
    ];

    private protected override IReadOnlyList<Said> Next { get; } = [Looks.ReadAgain, Looks.PumpRuns, Looks.LabelFirst];
}
