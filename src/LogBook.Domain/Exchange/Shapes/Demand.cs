namespace LogBook.Domain.Exchange.Shapes;

/// <summary>Fields that are required when a choice has a value.</summary>
/// <param name="Choice">Name of the field with the choice.</param>
/// <param name="Value">Its value.</param>
/// <param name="Fields">Names of the fields that are then required; a list must not be empty.</param>
internal sealed record Demand(string Choice, string Value, IReadOnlyList<string> Fields);
