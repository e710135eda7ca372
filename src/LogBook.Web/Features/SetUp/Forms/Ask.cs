using LogBook.Domain.Languages;
using LogBook.Domain.Quantities;

namespace LogBook.Web.Features.SetUp.Forms;

/// <summary>Short ways to write down the fields of a form.</summary>
internal static class Ask
{
    public static readonly IReadOnlyList<string> Volumes = [UnitCodes.Litre, UnitCodes.CubicMetre, UnitCodes.UsGallon, UnitCodes.ImperialGallon];
    public static readonly IReadOnlyList<string> Lengths = [UnitCodes.Centimetre, UnitCodes.Inch];
    public static readonly IReadOnlyList<string> Flows = [UnitCodes.LitresPerHour, UnitCodes.UsGallonsPerMinute];
    public static readonly IReadOnlyList<string> Masses = [UnitCodes.Kilogram, UnitCodes.Pound];
    public static readonly IReadOnlyList<string> Powers = [UnitCodes.Kilowatt, UnitCodes.TonOfRefrigeration];
    public static readonly IReadOnlyList<string> Conductivities = [UnitCodes.MicrosiemensPerCm, UnitCodes.MillisiemensPerCm];

    public static readonly FormField Code = Text("code", new("Code", "Código", "Código")) with { IsRequired = true, IsFixed = true, Hint = FormTexts.CodeHint };

    // Parts of a system are renamed rarely, but their codes may be corrected: nothing outside the system's own history names them.
    public static readonly FormField PartCode = Text("code", new("Code", "Código", "Código")) with { IsRequired = true };

    public static readonly FormField Name = Text("name", new("Name", "Nombre", "Nome")) with { IsRequired = true };

    public static readonly FormField PartFrom = Day("from", new("In place since, when renewed", "Instalado desde, si se renovó", "Instalado desde, se renovado"));

    public static FormField Text(string name, Text label) => new(name, FormKind.Text, label);

    public static FormField LongText(string name, Text label) => new(name, FormKind.LongText, label);

    public static FormField Day(string name, Text label) => new(name, FormKind.Date, label);

    public static FormField Flag(string name, Text label) => new(name, FormKind.Flag, label);

    public static FormField Number(string name, Text label, string unit = "") => new(name, FormKind.Number, label) { Unit = unit };

    public static FormField Number(string name, Text label, IReadOnlyList<string> units) => new(name, FormKind.Number, label) { Units = units };

    public static FormField Whole(string name, Text label, string unit = "") => new(name, FormKind.Whole, label) { Unit = unit };

    public static FormField Choice(string name, Text label, IReadOnlyDictionary<string, Text> words) => new(name, FormKind.Choice, label) { Options = From(words) };

    public static FormField Choice(string name, Text label, Func<FormScope, FormGroup, IEnumerable<FormOption>> options) => new(name, FormKind.Choice, label) { Options = options };

    public static FormField Picks(string name, Text label, Func<FormScope, FormGroup, IEnumerable<FormOption>> options) => new(name, FormKind.Picks, label) { Options = options };

    public static FormField Words(string name, Text label) => new(name, FormKind.Words, label) { Hint = FormTexts.ApartByCommas };

    public static FormField Group(string name, Text label, params IReadOnlyList<FormField> fields) => new(name, FormKind.Group, label) { Fields = fields };

    public static FormField Rows(string name, Text label, Text row, params IReadOnlyList<FormField> fields) => new(name, FormKind.Rows, label) { RowName = row, Fields = fields };

    public static FormField Needed(this FormField field) => field with { IsRequired = true };

    public static FormField When(this FormField field, Func<FormGroup, bool> applies) => field with { Applies = (_, group) => applies(group) };

    public static Func<FormScope, FormGroup, IEnumerable<FormOption>> From(IReadOnlyDictionary<string, Text> words) =>
        (scope, _) => words.Select(pair => new FormOption(pair.Key, pair.Value.In(scope.Language)));

    /// <summary>Units of a list.</summary>
    public static IEnumerable<FormOption> Units(IEnumerable<string> codes, Language language) =>
        codes.Select(code => new FormOption(code, Shown.Unit(code, language) is { Length: > 0 } shown ? shown : code));
}
