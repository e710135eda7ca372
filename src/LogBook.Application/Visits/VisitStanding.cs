namespace LogBook.Application.Visits;

/// <summary>How far a visit has come.</summary>
/// <param name="Version">Version that stands on the server.</param>
/// <param name="Sha256">Hash of its canonical text.</param>
/// <param name="MailsWaiting">Summaries that no mail server has taken yet, those given up included.</param>
/// <param name="MailsAccepted">Summaries that a mail server took.</param>
/// <param name="Settled">Texts that came under the same version, by hash, and what a supervisor decided about them: the name of a ConflictChoice.</param>
public sealed record VisitStanding(int Version, string Sha256, int MailsWaiting, int MailsAccepted, IReadOnlyDictionary<string, string> Settled);
