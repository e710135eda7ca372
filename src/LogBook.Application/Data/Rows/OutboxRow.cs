using LogBook.Domain.Languages;

namespace LogBook.Application.Data;

/// <summary>A message to send, written in the same transaction as what it is about.</summary>
public sealed class OutboxRow : ICustomerMayOwn, IVersioned
{
    public int Id { get; set; }

    /// <summary>Null for a message to the firm's own people.</summary>
    public int? CustomerId { get; set; }

    /// <summary>The visit of a summary; null for other kinds.</summary>
    public int? VisitRowId { get; set; }

    public int VisitVersion { get; set; }

    /// <summary>What a message that is not about a visit tells of: one message of a kind goes to one person about it, however often it is asked for.</summary>
    public string? About { get; set; }

    /// <summary>What kind of message: see <see cref="OutboxKinds"/>.</summary>
    public string Kind { get; set; } = "";

    /// <summary>Message-ID without angle brackets, fixed here so that a repeat can be told from a new message.</summary>
    public string MessageId { get; set; } = "";

    public string Recipient { get; set; } = "";

    public string RecipientName { get; set; } = "";

    public Language Language { get; set; }

    public DateTime CreatedAt { get; set; }

    /// <summary>Not before this moment; moved on after each failed try.</summary>
    public DateTime DueAt { get; set; }

    public int Attempts { get; set; }

    /// <summary>When the mail server took it.</summary>
    public DateTime? AcceptedAt { get; set; }

    /// <summary>When trying was given up; a person decides.</summary>
    public DateTime? GivenUpAt { get; set; }

    public string? LastError { get; set; }

    public string? ServerSaid { get; set; }

    /// <summary>Filled when it is first rendered; a repeat sends the same.</summary>
    public string? Subject { get; set; }

    public string? HtmlBody { get; set; }

    public string? TextBody { get; set; }

    public int Version { get; set; } = 1;
}
