using System.Text.Json.Nodes;
using LogBook.Application.Sites;
using LogBook.Domain.Assessments;
using LogBook.Domain.Languages;
using LogBook.Web.Features.SetUp.Forms;

namespace LogBook.Web.Features.SetUp.Thresholds;

/// <summary>Form of one threshold or uncertainty.</summary>
internal static class ThresholdForm
{
    public const string Value = "value";
    public const string Why = "why";

    public static IReadOnlyList<FormField> FieldsOf(EngineSetting setting)
    {
        string Label(Language language) => ThresholdTexts.ValueIn.In(language, Shown.Unit(setting.Unit, language));
        var label = Shown.Unit(setting.Unit, Language.English).Length == 0 ? ThresholdTexts.Own : new Text(Label(Language.English), Label(Language.Spanish), Label(Language.Portuguese));
        return
        [
            (setting.IsWhole ? Ask.Whole(Value, label) : Ask.Number(Value, label)).Needed(),
            Ask.LongText(Why, ThresholdTexts.Reason).Needed() with { Hint = ThresholdTexts.ReasonHint },
        ];
    }

    public static JsonObject Json(OwnSetting? own) => own is null ? [] : new JsonObject { [Value] = own.Value, [Why] = own.Why };
}
