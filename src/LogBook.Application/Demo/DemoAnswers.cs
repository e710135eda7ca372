namespace LogBook.Application.Demo;

/// <summary>Answers of the demo firm, for tests of the engine; the engine never sees them.</summary>
/// <param name="Lines">One line for each story and site.</param>
public sealed record DemoAnswers(IReadOnlyList<DemoAnswer> Lines);
