using System.Text.Encodings.Web;
using System.Text.Json;

namespace LogBook.Application.Demo;

/// <summary>Answers and scores as JSON that a person can read; the same bytes each time.</summary>
public static class DemoAnswersFile
{
    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web)
    {
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>Name of the answer file that belongs beside a firm's file: "firm.json" has "firm.answers.json".</summary>
    /// <param name="firm">Path of the document or database.</param>
    /// <returns>Path of the answers.</returns>
    public static string Beside(string firm) => Path.ChangeExtension(firm, ".answers.json");

    /// <summary>The answers of a firm.</summary>
    /// <param name="answers">What must be found in it.</param>
    /// <param name="seed">Its seed.</param>
    /// <returns>JSON, ending with a line feed.</returns>
    public static string Write(DemoAnswers answers, ulong seed) => JsonSerializer.Serialize(new { Seed = seed, Answers = answers.Lines }, Options) + "\n";

    /// <summary>A score.</summary>
    /// <typeparam name="T">Type of the score.</typeparam>
    /// <param name="score">Report, or reports.</param>
    /// <returns>JSON without a last line feed.</returns>
    public static string Write<T>(T score) => JsonSerializer.Serialize(score, Options);
}
