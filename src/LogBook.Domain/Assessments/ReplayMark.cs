using LogBook.Domain.Estimates;
using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Rounds;

namespace LogBook.Domain.Assessments;

/// <summary>Where a replay stood before a step, so that it can go back there when what came after has changed.</summary>
/// <param name="Done">Steps that were done.</param>
/// <param name="Facts">Facts of the visits known.</param>
/// <param name="Visits">What those stood for: facts take in late counts and stay the same object.</param>
/// <param name="FactClues">Clues of those visits.</param>
/// <param name="Clues">How many clue steps there were.</param>
/// <param name="Ledger">The findings.</param>
/// <param name="LastVerdicts">What the rules said of the latest visit.</param>
/// <param name="LastDay">Last day that was judged.</param>
internal sealed record ReplayMark(
    int Done,
    VisitFacts[] Facts,
    SystemVisit[] Visits,
    VisitClues[] FactClues,
    int Clues,
    FindingLedger Ledger,
    List<(string Kind, Verdict Verdict)> LastVerdicts,
    DateOnly? LastDay);
