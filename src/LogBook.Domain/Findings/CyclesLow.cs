using LogBook.Domain.Languages;

namespace LogBook.Domain.Findings;

/// <summary>Cycles below the target's band.</summary>
public sealed class CyclesLow : CyclesOffTarget
{
    /// <inheritdoc />
    public override string Kind => FindingKinds.CyclesLow;

    private protected override int Side => -1;

    private protected override IReadOnlyList<(string Cause, Said Words)> Causes { get; } =
    [
        Looks.Cause(FindingKinds.WaterLoss, "water leaves by another way", "el agua sale por otra vía", "a água sai por outro caminho"),
        Looks.Cause(FindingKinds.ProbeReadsOff, "the probe reads high", "la sonda lee de más", "a sonda lê a mais"),
        Looks.Cause(FindingKinds.MakeUpChanged, "the make-up changed and the set point is to be worked out anew", "cambió la reposición y hay que recalcular la consigna", "a reposição mudou e o ponto de ajuste deve ser recalculado"),
    ];

    private protected override IReadOnlyList<Said> Next { get; } = [Looks.ReadAgain, Looks.TestMakeUp, Looks.TimeBleed];
}
