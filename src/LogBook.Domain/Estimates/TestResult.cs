using LogBook.Domain.Visits;

namespace LogBook.Domain.Estimates;

/// <summary>A test result in the test's own unit and basis, with its uncertainty.</summary>
/// <param name="Value">The estimate: µS/cm for conductivity, mg/L in the fixed basis for ions and residuals, colonies per mL, else as entered.</param>
/// <param name="Reading">The reading as entered.</param>
/// <param name="TakenAt">When the sample was taken, UTC; the arrival where that was not entered.</param>
public sealed record TestResult(Estimate Value, Reading Reading, DateTime TakenAt)
{
    /// <summary>Whether the true value is only known to lie below ("&lt;") or above ("&gt;").</summary>
    public bool IsCensored => Reading.Qualifier is not null;
}
