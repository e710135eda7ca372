namespace LogBook.Application.Notices;

/// <summary>What a person of the firm wants to be told by e-mail without looking.</summary>
/// <param name="AtOnce">Each finding that cannot wait, when it opens.</param>
/// <param name="Digest">One message each morning with what is new, open and due.</param>
/// <param name="OwnSites">Both only for the sites of the person's own round.</param>
public sealed record NoticeChoice(bool AtOnce, bool Digest, bool OwnSites);
