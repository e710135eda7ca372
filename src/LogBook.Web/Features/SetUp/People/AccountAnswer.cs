namespace LogBook.Web.Features.SetUp.People;

/// <summary>What became of a change to an account.</summary>
/// <param name="Problems">What is to be corrected; empty when it is done.</param>
/// <param name="Id">Key of the account.</param>
/// <param name="Token">Secret part of a one-time link, where one was asked for.</param>
public sealed record AccountAnswer(IReadOnlyList<string> Problems, int? Id = null, string? Token = null)
{
    /// <summary>Whether it is done.</summary>
    public bool IsDone => Problems.Count == 0;
}
