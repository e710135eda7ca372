using System.Text.Json.Nodes;
using LogBook.Application.Data;
using LogBook.Application.Sites;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;

namespace LogBook.Web.Features.SetUp;

/// <summary>What a list says of a record beside its code and name.</summary>
internal static class EntryWords
{
    /// <summary>The words.</summary>
    public static string Of(SetUpEntry entry, Language language)
    {
        var json = JsonNode.Parse(entry.Document)!.AsObject();
        string? Member(string name) => json[name]?.GetValue<string>();
        int Count(string name) => (json[name] as JsonArray)?.Count ?? 0;
        return entry.Kind switch
        {
            SetUpKind.Customer => $"{new Text("Contacts", "Contactos", "Contatos").In(language)}: {Count("contacts")}",
            SetUpKind.Site => $"{Member("customer")} · {Member("timeZone")}",
            SetUpKind.System => $"{ChoiceTexts.Of(ChoiceTexts.SystemKinds, Member("kind"), language)} ·",
            SetUpKind.Person => ChoiceTexts.Of(ChoiceTexts.Roles, Member("role"), language),
            SetUpKind.Product => ChoiceTexts.Of(ChoiceTexts.ProductKinds, Member("kind"), language),
            SetUpKind.Instrument => ChoiceTexts.Of(ChoiceTexts.InstrumentKinds, Member("kind"), language),
            SetUpKind.Lot => TestCatalogue.Find(Member("test"))?.Name.In(language) ?? Member("test") ?? "",
            SetUpKind.Rule => $"{Shown.Day(entry.From!.Value, language)} – {(Member("to") is { } to ? Shown.Day(DateOnly.Parse(to, System.Globalization.CultureInfo.InvariantCulture), language) : "")}",
            _ => Shown.Unit(Member("unit") ?? "", language),
        };
    }
}
