namespace LogBook.Application.Audit;

/// <summary>Statements by which the database itself refuses to change or delete audit rows; run by the migrations.</summary>
public static class AuditTriggers
{
    /// <summary>For SQLite.</summary>
    public static IReadOnlyList<string> Sqlite { get; } =
    [
        """
        CREATE TRIGGER "AuditTrail_NoUpdate" BEFORE UPDATE ON "AuditTrail"
        BEGIN SELECT RAISE(ABORT, 'The audit trail is never changed.'); END;
        """,
        """
        CREATE TRIGGER "AuditTrail_NoDelete" BEFORE DELETE ON "AuditTrail"
        BEGIN SELECT RAISE(ABORT, 'The audit trail is never deleted.'); END;
        """,
    ];

    /// <summary>For PostgreSQL.</summary>
    public static IReadOnlyList<string> PostgreSql { get; } =
    [
        """
        CREATE FUNCTION logbook_refuse_audit_change() RETURNS trigger LANGUAGE plpgsql AS $$
        BEGIN RAISE EXCEPTION 'The audit trail is never changed or deleted.'; END; $$;
        """,
        """
        CREATE TRIGGER audit_trail_no_change BEFORE UPDATE OR DELETE ON "AuditTrail"
        FOR EACH ROW EXECUTE FUNCTION logbook_refuse_audit_change();
        """,
        """
        CREATE TRIGGER audit_trail_no_truncate BEFORE TRUNCATE ON "AuditTrail"
        FOR EACH STATEMENT EXECUTE FUNCTION logbook_refuse_audit_change();
        """,
    ];
}
