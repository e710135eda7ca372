using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;

namespace LogBook.Application.MoveIn;

/// <summary>What a heading seems to say. A guess is shown to be checked; what it leaves open is asked.</summary>
public static class HeadingGuess
{
    private static readonly (string Word, string Test)[] Tests =
    [
        ("free chlorine", TestCodes.FreeHalogen), ("free halogen", TestCodes.FreeHalogen), ("cloro libre", TestCodes.FreeHalogen), ("cloro livre", TestCodes.FreeHalogen),
        ("total chlorine", TestCodes.TotalHalogen), ("total halogen", TestCodes.TotalHalogen), ("cloro total", TestCodes.TotalHalogen),
        ("calcium hardness", TestCodes.Calcium), ("ca hardness", TestCodes.Calcium), ("dureza calcica", TestCodes.Calcium), ("dureza de calcio", TestCodes.Calcium), ("calcium", TestCodes.Calcium), ("calcio", TestCodes.Calcium),
        ("total hardness", TestCodes.TotalHardness), ("dureza total", TestCodes.TotalHardness), ("hardness", TestCodes.TotalHardness), ("dureza", TestCodes.TotalHardness),
        ("p-alkalinity", TestCodes.PAlkalinity), ("p-alk", TestCodes.PAlkalinity), ("m-alk", TestCodes.Alkalinity), ("alkalinity", TestCodes.Alkalinity), ("alcalinidad", TestCodes.Alkalinity), ("alcalinidade", TestCodes.Alkalinity), ("alk", TestCodes.Alkalinity),
        ("dip slide", TestCodes.DipSlide), ("dip slides", TestCodes.DipSlide), ("dipslide", TestCodes.DipSlide), ("lamina de cultivo", TestCodes.DipSlide), ("lamina de cultura", TestCodes.DipSlide),
        ("colony count", TestCodes.ColonyCount), ("plate count", TestCodes.ColonyCount), ("legionella", TestCodes.Legionella),
        ("conductivity", TestCodes.Conductivity), ("conductividad", TestCodes.Conductivity), ("condutividade", TestCodes.Conductivity), ("conduct", TestCodes.Conductivity), ("cond", TestCodes.Conductivity),
        ("temperature", TestCodes.Temperature), ("temperatura", TestCodes.Temperature), ("temp", TestCodes.Temperature),
        ("chloride", TestCodes.Chloride), ("chlorides", TestCodes.Chloride), ("cloruro", TestCodes.Chloride), ("cloruros", TestCodes.Chloride), ("cloreto", TestCodes.Chloride), ("cloretos", TestCodes.Chloride),
        ("silica", TestCodes.Silica), ("silice", TestCodes.Silica), ("sulphate", TestCodes.Sulphate), ("sulfate", TestCodes.Sulphate), ("sulfato", TestCodes.Sulphate),
        ("inhibitor", TestCodes.Inhibitor), ("inhibidor", TestCodes.Inhibitor), ("inibidor", TestCodes.Inhibitor), ("phosphonate", TestCodes.Phosphonate), ("orthophosphate", TestCodes.Orthophosphate),
        ("molybdate", TestCodes.Molybdate), ("azole", TestCodes.Azole), ("orp", TestCodes.Orp), ("redox", TestCodes.Orp), ("iron", TestCodes.Iron), ("hierro", TestCodes.Iron), ("ferro", TestCodes.Iron),
        ("copper", TestCodes.Copper), ("cobre", TestCodes.Copper), ("turbidity", TestCodes.Turbidity), ("turbidez", TestCodes.Turbidity), ("tds", TestCodes.Tds), ("ph", TestCodes.Ph),
    ];

    // The names by which LogBook itself calls the tests, the longest first: "free halogen" before "halogen".
    private static readonly (string Word, string Test)[] Names =
    [
        .. TestCatalogue.All.SelectMany(test => new[] { test.Name.En, test.Name.Es, test.Name.Pt }.Select(name => (Headings.Words(name).Trim(), test.Code))).OrderByDescending(name => name.Item1.Length),
    ];

    private static readonly string[] MakeUp = ["make-up", "makeup", "make up", "mains", "reposicion", "reposicao", "aporte"];
    private static readonly string[] Tower = ["tower", "recirculating", "basin", "circulating", "torre", "recirculacion", "recirculada"];
    private static readonly string[] Days = ["date", "day", "fecha", "data", "dia", "visited", "visit date"];
    private static readonly string[] Times = ["time", "hora", "arrived", "arrival"];
    private static readonly string[] Sites = ["site", "sitio", "local", "location", "building", "instalacion"];
    private static readonly string[] Systems = ["system", "sistema", "tower no", "plant"];
    private static readonly string[] People = ["technician", "engineer", "tecnico", "visited by", "initials", "tech", "operator", "by"];
    private static readonly string[] Notes = ["note", "notes", "remark", "remarks", "comment", "comments", "notas", "observaciones", "observacoes", "comentarios"];
    private static readonly string[] Drums = ["drum", "tank", "level", "stock", "bidon", "bombona", "nivel", "deposito"];
    private static readonly string[] Deliveries = ["delivered", "delivery", "added", "entregado", "entrega", "entregue", "top-up"];
    private static readonly string[] Meters = ["meter", "dial", "register", "contador", "hidrometro", "water meter"];
    private static readonly string[] Totals = ["totaliser", "totalizer", "controller total", "totalizador"];
    private static readonly string[] Hours = ["run hours", "hours run", "running hours", "horas de marcha", "horas", "hours"];

    /// <summary>Guesses.</summary>
    /// <param name="heading">Heading as it stands.</param>
    /// <param name="systems">Systems that the file may be about: their drums, meters and outputs.</param>
    /// <param name="productOf">Name and kind of a product by code.</param>
    public static ColumnMeaning Of(string heading, IReadOnlyList<WaterSystem> systems, Func<string, Product?> productOf)
    {
        ArgumentNullException.ThrowIfNull(systems);
        var words = Headings.Words(heading);
        bool Has(IEnumerable<string> any) => any.Any(word => words.Contains(" " + word + " ", StringComparison.Ordinal));
        var units = UnitWords.InHeading(heading);
        var unit = units.Count == 1 ? units[0] : null;
        if (Has(Deliveries) && Drum(words, systems, productOf) is { } filled)
        {
            return new ColumnMeaning { Kind = ColumnKind.DrumAdded, Code = filled, Unit = unit };
        }

        if (Has(Drums) && !Has(["temp", "temperature"]))
        {
            return new ColumnMeaning { Kind = ColumnKind.DrumLevel, Code = Drum(words, systems, productOf), Unit = unit };
        }

        if (Has(Totals) || Has(Meters))
        {
            return new ColumnMeaning { Kind = Has(Totals) ? ColumnKind.Total : ColumnKind.Dial, Code = Meter(words, systems), Unit = unit };
        }

        if (Names.Concat(Tests).FirstOrDefault(known => words.Contains(" " + known.Word + " ", StringComparison.Ordinal)).Test is { } test)
        {
            if (HasOtherBasis(words, test))
            {
                return new ColumnMeaning();
            }

            var own = TestCatalogue.Find(test)!;
            return new ColumnMeaning
            {
                Kind = ColumnKind.Test,
                Code = test,
                At = Has(MakeUp) ? SamplePoints.MakeUp : Has(Tower) ? SamplePoints.Tower : null,
                Unit = unit is not null && own.Units.Contains(unit) ? unit : units.Count == 0 && own.Units.Count == 1 ? own.Units[0] : null,
            };
        }

        if (Has(Hours))
        {
            return new ColumnMeaning { Kind = ColumnKind.Hours, Code = Output(words, systems), Unit = "h" };
        }

        var kind = Has(People) ? ColumnKind.Technician : Has(Days) ? ColumnKind.Day : Has(Times) ? ColumnKind.Time : Has(Notes) ? ColumnKind.Note : Has(Sites) ? ColumnKind.Site : Has(Systems) ? ColumnKind.System : ColumnKind.Unknown;
        return new ColumnMeaning { Kind = kind };
    }

    // "Calcium as Ca" and bromine are other numbers than calcium as CaCO3 and halogen as Cl2: a person says what the column is.
    private static bool HasOtherBasis(string words, string test)
    {
        bool Has(string word) => words.Contains(" " + word + " ", StringComparison.Ordinal);
        return test switch
        {
            TestCodes.FreeHalogen or TestCodes.TotalHalogen => Has("bromine") || Has("bromo") || Has("br") || Has("br2"),
            TestCodes.Calcium or TestCodes.TotalHardness => Has("as ca") || Has("como ca") || Has("as ca2+") || Has("como ca2+") || (Has("ca") && !Has("ca hardness") && !Has("caco3")),
            _ => false,
        };
    }

    private static string? Drum(string words, IReadOnlyList<WaterSystem> systems, Func<string, Product?> productOf)
    {
        var all = systems.SelectMany(system => system.Drums).ToList();
        var drums = all.DistinctBy(drum => (drum.Code.ToUpperInvariant(), drum.Product.ToUpperInvariant())).ToList();
        return One(all.Select(drum => (drum.Code, drum.Product)), Only(drums.Where(drum => Named(words, drum.Code) || Named(words, drum.Product) || (productOf(drum.Product) is { } product && Named(words, product.Name))).Select(drum => drum.Code))
            ?? Only(drums.Where(drum => productOf(drum.Product) is { } product && (Headings.Words(product.Name).Split(' ', StringSplitOptions.RemoveEmptyEntries) is [var first, ..] && words.Contains(" " + first + " ", StringComparison.Ordinal))).Select(drum => drum.Code))
            ?? Only(drums.Select(drum => drum.Code)));
    }

    private static string? Meter(string words, IReadOnlyList<WaterSystem> systems)
    {
        var meters = systems.SelectMany(system => system.Meters).ToList();
        var isMakeUp = MakeUp.Any(word => words.Contains(" " + word + " ", StringComparison.Ordinal));
        var isBleed = words.Contains(" bleed ", StringComparison.Ordinal) || words.Contains(" purga ", StringComparison.Ordinal);
        return One(meters.Select(meter => (meter.Code, $"{meter.Measures}")), Only(meters.Where(meter => Named(words, meter.Code)).Select(meter => meter.Code))
            ?? Only(meters.Where(meter => (isMakeUp && meter.Measures == MeterMeasures.MakeUp) || (isBleed && meter.Measures == MeterMeasures.Bleed)).Select(meter => meter.Code))
            ?? Only(meters.Select(meter => meter.Code)));
    }

    private static string? Output(string words, IReadOnlyList<WaterSystem> systems)
    {
        var outputs = systems.SelectMany(system => system.Outputs).ToList();
        return One(outputs.Select(output => (output.Code, $"{output.Drives}")), Only(outputs.Where(output => Named(words, output.Code)).Select(output => output.Code))
            ?? Only(outputs.Where(output => output.Drives == OutputDrives.Bleed && (words.Contains(" bleed ", StringComparison.Ordinal) || words.Contains(" purga ", StringComparison.Ordinal))).Select(output => output.Code)));
    }

    private static bool Named(string words, string name) => words.Contains(Headings.Words(name), StringComparison.Ordinal);

    // A code that is one thing at one site and another thing at the next is no guess for a column that may be about both.
    private static string? One(IEnumerable<(string Code, string Means)> known, string? code) =>
        code is not null && known.Where(one => one.Code.Equals(code, StringComparison.OrdinalIgnoreCase)).Select(one => one.Means).Distinct(StringComparer.OrdinalIgnoreCase).Take(2).Count() == 1 ? code : null;

    private static string? Only(IEnumerable<string> codes)
    {
        var all = codes.Distinct(StringComparer.OrdinalIgnoreCase).Take(2).ToList();
        return all.Count == 1 ? all[0] : null;
    }
}
