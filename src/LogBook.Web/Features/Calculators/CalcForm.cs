using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;

namespace LogBook.Web.Features.Calculators;

/// <summary>The numbers of one calculation.</summary>
/// <param name="name">First part of the ids.</param>
/// <param name="fields">Fields in the order of the page.</param>
public sealed class CalcForm(string name, IReadOnlyList<CalcField> fields)
{
    public string Name { get; } = name;

    public IReadOnlyList<CalcField> Fields { get; } = fields;

    /// <summary>Fields with something wrong, with their messages.</summary>
    public IEnumerable<CalcField> Wrong => Fields.Where(one => one.Problem is not null);

    /// <summary>Id of a field.</summary>
    public string IdOf(CalcField field) => $"{Name}-{field.Key}";

    /// <summary>Reads all fields.</summary>
    /// <returns>Whether all are as expected.</returns>
    public bool Read(Language language)
    {
        var all = true;
        foreach (var field in Fields)
        {
            all &= field.Read(language);
        }

        return all;
    }

    /// <summary>Whether the form has the field.</summary>
    public bool Has(string key) => Fields.Any(field => field.Key == key);

    /// <summary>A field.</summary>
    public CalcField Field(string key) => Fields.First(field => field.Key == key);

    /// <summary>The number of a field; null where it is empty or not asked.</summary>
    public double? Value(string key) => Fields.FirstOrDefault(field => field.Key == key)?.Value;

    /// <summary>The number of a field with its uncertainty; null where it is empty or not asked.</summary>
    public Estimate? Estimate(string key) => Fields.FirstOrDefault(field => field.Key == key)?.Estimate;
}
