using LogBook.Domain.Exchange;

namespace LogBook.Application.Demo;

/// <summary>A generated firm.</summary>
/// <param name="Document">Set-up and visits in the exchange format.</param>
/// <param name="Answers">What must be found in it.</param>
/// <param name="Truths">What was true at each visit.</param>
public sealed record DemoFirmResult(ExchangeDocument Document, DemoAnswers Answers, IReadOnlyList<DemoTruth> Truths);
