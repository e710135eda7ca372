using LogBook.Domain.Estimates;
using LogBook.Domain.Findings;
using LogBook.Domain.History;

namespace LogBook.Domain.Assessments;

/// <summary>What the records of a system mean: a pure function of its history and a moment.</summary>
/// <remarks>
/// The history is replayed in the order in which things became known (departure, result, amendment), and day by day for what
/// time alone can open, so that the first day of a finding is the first day on which the records allowed it. The same documents
/// give the same assessment in whatever order they arrived.
/// </remarks>
public static class Assessment
{
    /// <summary>Version of the rules; stored results of another version are rebuilt.</summary>
    public const string EngineVersion = "10";

    /// <summary>Assesses a system with the thresholds of the installation.</summary>
    /// <param name="history">Set-up and visits; what became known after <paramref name="asOf"/> is not looked at.</param>
    /// <param name="asOf">Moment it is made for, UTC.</param>
    /// <returns>Findings in every state and figures by visit.</returns>
    public static SystemAssessment Of(SystemHistory history, DateTime asOf) => Of(history, asOf, history.Firm.Engine.Thresholds);

    /// <summary>Assesses a system.</summary>
    /// <param name="history">Set-up and visits; what became known after <paramref name="asOf"/> is not looked at.</param>
    /// <param name="asOf">Moment it is made for, UTC.</param>
    /// <param name="thresholds">Thresholds of the installation, the system or the product.</param>
    /// <returns>Findings in every state and figures by visit.</returns>
    public static SystemAssessment Of(SystemHistory history, DateTime asOf, FindingThresholds thresholds) => Of(history, asOf, AssessmentInputs.None, thresholds);

    /// <summary>Assesses a system with what is known beside its own records.</summary>
    /// <param name="history">Set-up and visits; what became known after <paramref name="asOf"/> is not looked at.</param>
    /// <param name="asOf">Moment it is made for, UTC.</param>
    /// <param name="inputs">Shifts of meters and lots, answers of people, delivery of summaries.</param>
    /// <param name="thresholds">Thresholds to use; those of the installation and the system when null.</param>
    /// <returns>Findings in every state and figures by visit.</returns>
    public static SystemAssessment Of(SystemHistory history, DateTime asOf, AssessmentInputs inputs, FindingThresholds? thresholds = null) =>
        new Replay(history, thresholds ?? history.Firm.Engine.Thresholds, inputs.Shifts).Until(history, asOf, inputs);
}
