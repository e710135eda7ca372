using System.Text.Json.Nodes;

namespace LogBook.Web.Features.SetUp.Forms;

/// <summary>A field as it came from the record.</summary>
/// <param name="Text">How it was shown.</param>
/// <param name="Unit">In which unit.</param>
/// <param name="Value">What stood in the record.</param>
/// <param name="Entered">What stood beside it as entered.</param>
internal sealed record FormOrigin(string Text, string Unit, JsonNode Value, JsonNode? Entered);
