using LogBook.Domain.Languages;

namespace LogBook.Domain.Findings;

/// <summary>Residual above its range.</summary>
public sealed class ResidualHigh : ResidualOff
{
    /// <inheritdoc />
    public override string Kind => FindingKinds.ResidualHigh;

    private protected override int Side => 1;

    private protected override IReadOnlyList<(string Cause, Said Words)> Causes { get; } =
    [
        Looks.Cause(FindingKinds.FeedHigh, "too much product is fed", "se dosifica demasiado producto", "dosa-se produto demais"),
        Looks.Cause(FindingKinds.LotShift, "the reagent lot reads high", "el lote de reactivo lee de más", "o lote de reagente lê a mais"),
        Looks.Cause("reading", "sampled just after a dose, or a reading slipped", "muestra justo tras una dosis, o lectura equivocada", "amostra logo após uma dose, ou leitura errada"),
    ];

    private protected override IReadOnlyList<Said> Next { get; } = [Looks.ReadAgain, Looks.LevelAgain, Looks.LabelFirst];
}
