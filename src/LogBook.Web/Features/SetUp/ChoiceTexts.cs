using LogBook.Domain.Languages;
using LogBook.Domain.Settings;

namespace LogBook.Web.Features.SetUp;

/// <summary>Words for the closed lists of the set-up, by their codes in the exchange format.</summary>
public static class ChoiceTexts
{
    public static readonly IReadOnlyDictionary<string, Text> SystemKinds = new Dictionary<string, Text>
    {
        ["open-recirculating"] = new("Cooling tower or evaporative condenser", "Torre de refrigeración o condensador evaporativo", "Torre de resfriamento ou condensador evaporativo"),
        ["closed-loop"] = new("Closed loop", "Circuito cerrado", "Circuito fechado"),
        ["boiler"] = new("Boiler", "Caldera", "Caldeira"),
        ["softener"] = new("Softener", "Descalcificador", "Abrandador"),
        ["other"] = new("Other", "Otro", "Outro"),
    };

    public static readonly IReadOnlyDictionary<string, Text> Metals = new Dictionary<string, Text>
    {
        ["steel"] = new("Steel", "Acero", "Aço"),
        ["copper"] = new("Copper", "Cobre", "Cobre"),
        ["galvanised"] = new("Galvanised steel", "Acero galvanizado", "Aço galvanizado"),
        ["stainless"] = new("Stainless steel", "Acero inoxidable", "Aço inoxidável"),
        ["aluminium"] = new("Aluminium", "Aluminio", "Alumínio"),
        ["plastic"] = new("Plastic", "Plástico", "Plástico"),
    };

    public static readonly IReadOnlyDictionary<string, Text> Probes = new Dictionary<string, Text>
    {
        ["conductivity"] = new("Conductivity", "Conductividad", "Condutividade"),
        ["pH"] = new("pH", "pH", "pH"),
        ["orp"] = new("ORP", "ORP", "ORP"),
    };

    public static readonly IReadOnlyDictionary<string, Text> Drives = new Dictionary<string, Text>
    {
        ["bleed"] = new("Bleed valve", "Válvula de purga", "Válvula de purga"),
        ["feed"] = new("Feed pump or feeder", "Bomba dosificadora o dosificador", "Bomba dosadora ou dosador"),
        ["alarm"] = new("Alarm", "Alarma", "Alarme"),
    };

    public static readonly IReadOnlyDictionary<string, Text> Measures = new Dictionary<string, Text>
    {
        ["make-up"] = new("Make-up water", "Agua de reposición", "Água de reposição"),
        ["bleed"] = new("Bleed", "Purga", "Purga"),
        ["softened"] = new("Softened water", "Agua descalcificada", "Água abrandada"),
        ["backwash"] = new("Backwash", "Contralavado", "Retrolavagem"),
        ["other"] = new("Other line", "Otra línea", "Outra linha"),
    };

    public static readonly IReadOnlyDictionary<string, Text> Shapes = new Dictionary<string, Text>
    {
        ["vertical-cylinder"] = new("Upright cylinder", "Cilindro vertical", "Cilindro em pé"),
        ["horizontal-cylinder"] = new("Lying cylinder", "Cilindro horizontal", "Cilindro deitado"),
        ["rectangular"] = new("Rectangular", "Rectangular", "Retangular"),
        ["by-weight"] = new("By weight", "Por peso", "Por peso"),
        ["table"] = new("By a table of levels", "Por tabla de niveles", "Por tabela de níveis"),
    };

    public static readonly IReadOnlyDictionary<string, Text> Days = SettingChoices.Days;

    public static readonly IReadOnlyDictionary<string, Text> ProductKinds = new Dictionary<string, Text>
    {
        ["inhibitor"] = new("Inhibitor", "Inhibidor", "Inibidor"),
        ["biocide"] = new("Biocide", "Biocida", "Biocida"),
        ["dispersant"] = new("Dispersant", "Dispersante", "Dispersante"),
        ["acid"] = new("Acid", "Ácido", "Ácido"),
        ["antifoam"] = new("Antifoam", "Antiespumante", "Antiespumante"),
        ["other"] = new("Other", "Otro", "Outro"),
    };

    public static readonly IReadOnlyDictionary<string, Text> InstrumentKinds = new Dictionary<string, Text>
    {
        ["conductivity-meter"] = new("Conductivity meter", "Conductímetro", "Condutivímetro"),
        ["ph-meter"] = new("pH meter", "pH-metro", "pHmetro"),
        ["photometer"] = new("Photometer", "Fotómetro", "Fotômetro"),
        ["thermometer"] = new("Thermometer", "Termómetro", "Termômetro"),
        ["other"] = new("Other", "Otro", "Outro"),
    };

    public static readonly IReadOnlyDictionary<string, Text> Severities = new Dictionary<string, Text>
    {
        ["act"] = new("Act now", "Actuar ya", "Agir já"),
        ["plan"] = new("Plan", "Planificar", "Planejar"),
        ["watch"] = new("Watch", "Vigilar", "Observar"),
    };

    public static readonly IReadOnlyDictionary<string, Text> Units = new Dictionary<string, Text>
    {
        ["metric"] = new("Metric", "Métricas", "Métricas"),
        ["us"] = new("US", "EE. UU.", "EUA"),
        ["imperial"] = new("Imperial", "Imperiales", "Imperiais"),
    };

    public static readonly IReadOnlyDictionary<string, Text> Languages = new Dictionary<string, Text>
    {
        ["en"] = new("English", "Inglés", "Inglês"),
        ["es"] = new("Spanish", "Español", "Espanhol"),
        ["pt"] = new("Portuguese", "Portugués", "Português"),
    };

    public static readonly IReadOnlyDictionary<string, Text> BleedActs = SettingChoices.BleedActs;

    public static readonly IReadOnlyDictionary<string, Text> Modes = SettingChoices.Modes;

    public static readonly IReadOnlyDictionary<string, Text> Directions = SettingChoices.Directions;

    public static readonly IReadOnlyDictionary<string, Text> Meanwhile = SettingChoices.Meanwhile;

    public static readonly IReadOnlyDictionary<string, Text> SamplePoints = new Dictionary<string, Text>
    {
        ["make-up"] = new("Make-up water", "Agua de reposición", "Água de reposição"),
        ["tower"] = new("Recirculating water", "Agua de recirculación", "Água de recirculação"),
        ["bleed"] = new("Bleed", "Purga", "Purga"),
        ["softened"] = new("Behind the softener", "Tras el descalcificador", "Após o abrandador"),
        ["raw"] = new("Before the softener", "Antes del descalcificador", "Antes do abrandador"),
    };

    public static readonly IReadOnlyDictionary<string, Text> Roles = new Dictionary<string, Text>
    {
        ["technician"] = new("Technician", "Técnico", "Técnico"),
        ["supervisor"] = new("Supervisor", "Supervisor", "Supervisor"),
        ["administrator"] = new("Administrator", "Administrador", "Administrador"),
        ["site-staff"] = new("Site staff", "Personal del sitio", "Pessoal do local"),
        ["customer"] = new("Customer", "Cliente", "Cliente"),
    };

    public static readonly IReadOnlyDictionary<string, Text> NeverWith = new Dictionary<string, Text>
    {
        ["acid"] = new("Any acid", "Cualquier ácido", "Qualquer ácido"),
        ["biocide:oxidising"] = new("Any oxidising biocide", "Cualquier biocida oxidante", "Qualquer biocida oxidante"),
        ["biocide:non-oxidising"] = new("Any non-oxidising biocide", "Cualquier biocida no oxidante", "Qualquer biocida não oxidante"),
    };

    public static readonly IReadOnlyDictionary<string, Text> Events = new Dictionary<string, Text>
    {
        ["drained"] = new("Drained", "Vaciado", "Drenado"),
        ["refilled"] = new("Refilled", "Llenado de nuevo", "Reabastecido"),
        ["cleaned"] = new("Cleaned", "Limpiado", "Limpo"),
        ["disinfected"] = new("Disinfected", "Desinfectado", "Desinfetado"),
        ["stopped"] = new("Stopped", "Parado", "Parado"),
        ["started"] = new("Started", "Puesto en marcha", "Posto em marcha"),
    };

    /// <summary>The words of a code; the code itself where it has none.</summary>
    public static string Of(IReadOnlyDictionary<string, Text> list, string? code, Language language) =>
        code is not null && list.TryGetValue(code, out var text) ? text.In(language) : code ?? "";
}
