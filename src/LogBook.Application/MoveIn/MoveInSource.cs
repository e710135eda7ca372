using LogBook.Domain.History;
using LogBook.Domain.Languages;

namespace LogBook.Application.MoveIn;

/// <summary>What a file is read with.</summary>
/// <param name="FileName">Its name, told in the notes of visits that carry words which were no values.</param>
/// <param name="Sheets">Its sheets.</param>
/// <param name="Mapping">What headings mean, as said so far.</param>
/// <param name="Answers">Answers by identity of the question, or of its column.</param>
/// <param name="Firm">Set-up.</param>
/// <param name="Language">Language of the reader.</param>
public sealed record MoveInSource(string FileName, IReadOnlyList<MoveInSheet> Sheets, MoveInMapping Mapping, IReadOnlyDictionary<string, string> Answers, FirmSetUp Firm, Language Language);
