using LogBook.Domain.Languages;

namespace LogBook.Domain.Findings;

/// <summary>Cycles above the target's band.</summary>
public sealed class CyclesHigh : CyclesOffTarget
{
    /// <inheritdoc />
    public override string Kind => FindingKinds.CyclesHigh;

    private protected override int Side => 1;

    private protected override IReadOnlyList<(string Cause, Said Words)> Causes { get; } =
    [
        Looks.Cause(FindingKinds.ProbeReadsOff, "the probe reads low", "la sonda lee de menos", "a sonda lê a menos"),
        Looks.Cause(FindingKinds.BleedNotFlowing, "the bleed does not flow", "la purga no fluye", "a purga não flui"),
        Looks.Cause(FindingKinds.MakeUpChanged, "the make-up changed and the set point is to be worked out anew", "cambió la reposición y hay que recalcular la consigna", "a reposição mudou e o ponto de ajuste deve ser recalculado"),
    ];

    private protected override IReadOnlyList<Said> Next { get; } = [Looks.ReadAgain, Looks.TestMakeUp, Looks.TimeBleed];
}
