using LogBook.Domain.Languages;

namespace LogBook.Application.Data;

/// <summary>A message to send, written in the same transaction as what it is about.</summary>
public sealed class OutboxRow : ICustomerOwned, IVersioned
{
    public int Id { get; set; }

    public int CustomerId { get; set; }

    public int VisitRowId { get; set; }

    public int VisitVersion { get; set; }

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
