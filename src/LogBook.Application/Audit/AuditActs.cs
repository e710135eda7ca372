namespace LogBook.Application.Audit;

/// <summary>Words for what was done, as they stand in the audit trail.</summary>
public static class AuditActs
{
    public const string Received = "received";
    public const string Amended = "amended";
    public const string Conflict = "conflict";
    public const string Settled = "settled";
    public const string Reviewed = "reviewed";
    public const string Voided = "voided";
    public const string Restored = "restored";
    public const string Moved = "moved";
    public const string Added = "added";
    public const string Changed = "changed";
    public const string Retired = "retired";
    public const string Reset = "reset";
    public const string Answered = "answered";
    public const string Imported = "imported";
    public const string Discarded = "discarded";
    public const string SignedIn = "signed-in";
    public const string BackedUp = "backed-up";
    public const string MailTriedAgain = "mail-tried-again";
}
