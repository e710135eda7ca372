using System.Globalization;
using System.Text;
using System.Text.Json;
using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Exchange.Shapes;

/// <summary>Compares JSON with the shape table and notes everything that differs, each with its path.</summary>
internal sealed class ShapeCheck(Language language)
{
    private readonly List<object> _path = [];
    private readonly List<Issue> _issues = [];

    /// <summary>What was found so far.</summary>
    public IReadOnlyList<Issue> Issues => _issues;

    /// <summary>Whether the JSON must be tidied before records are made of it: nulls, or whole numbers written as 1.0 or 1e1.</summary>
    public bool NeedsTidying { get; private set; }

    /// <summary>Checks one object.</summary>
    public void Check(JsonElement element, Shape shape)
    {
        if (element.ValueKind != JsonValueKind.Object)
        {
            Add("wrong-kind", ExchangeTexts.Expected, Leaf(), Shown(element), ExchangeTexts.AnObject);
            return;
        }

        var seen = new Dictionary<string, JsonElement>(StringComparer.Ordinal);
        foreach (var member in element.EnumerateObject())
        {
            var name = NameOf(member);
            _path.Add(name);
            if (!seen.TryAdd(name, member.Value))
            {
                Add("duplicate-key", ExchangeTexts.Twice, name);
            }
            else if (shape.Find(name) is not { } field)
            {
                Add("unknown-field", ExchangeTexts.Unknown, name, string.Join(", ", shape.Fields.Select(f => f.Name)));
            }
            else
            {
                CheckValue(member.Value, field, name);
            }

            _path.RemoveAt(_path.Count - 1);
        }

        CheckPresence(seen, shape);
    }

    /// <summary>Whether something stands in a field; null and, for flags, false do not count.</summary>
    private static bool Stands(Dictionary<string, JsonElement> seen, string name, bool flagMustBeTrue) =>
        seen.TryGetValue(name, out var value) && value.ValueKind != JsonValueKind.Null && !(flagMustBeTrue && value.ValueKind == JsonValueKind.False);

    private static string NameOf(JsonProperty member)
    {
        try
        {
            return member.Name;
        }
        catch (InvalidOperationException)
        {
            // Half of a surrogate pair in an escape: JSON allows it, no text does.
            return "\uFFFD";
        }
    }

    private void CheckPresence(Dictionary<string, JsonElement> seen, Shape shape)
    {
        foreach (var field in shape.Fields)
        {
            if (field.IsRequired && !Stands(seen, field.Name, false))
            {
                AddAt(field.Name, "required", ExchangeTexts.Missing, field.Name, Expectation(field));
            }
        }

        foreach (var demand in shape.Demands)
        {
            if (!seen.TryGetValue(demand.Choice, out var choice) || choice.ValueKind != JsonValueKind.String || !choice.ValueEquals(demand.Value))
            {
                continue;
            }

            foreach (var name in demand.Fields)
            {
                var isEmptyList = seen.TryGetValue(name, out var value) && value.ValueKind == JsonValueKind.Array && value.GetArrayLength() == 0;
                if (!Stands(seen, name, false) || isEmptyList)
                {
                    object expected = isEmptyList || shape.Find(name)!.Kind == FieldKind.List ? ExchangeTexts.NonEmptyList : Expectation(shape.Find(name)!);
                    AddAt(name, "required", ExchangeTexts.MissingFor, name, demand.Choice, demand.Value, expected);
                }
            }
        }

        foreach (var (name, needs) in shape.Needs)
        {
            var other = needs.Split('|');
            if (Stands(seen, name, true) && !other.Any(o => Stands(seen, o, true)))
            {
                AddAt(other[0], "required", ExchangeTexts.MissingBeside, other[0], name, Expectation(shape.Find(other[0])!));
            }
        }

        foreach (var (name, other) in shape.Exclusive)
        {
            if (Stands(seen, name, true) && Stands(seen, other, true))
            {
                AddAt(other, "excluded", ExchangeTexts.Excluded, other, name);
            }
        }

        // A field that should bring its pair is told above; here only where nothing stands at all.
        if (shape.OneOf.Count > 0 && !shape.OneOf.Any(set => set.All(n => Stands(seen, n, true)))
            && !shape.Needs.Any(n => Stands(seen, n.Name, true)))
        {
            Add("required", ExchangeTexts.MissingOneOf, string.Join(", ", shape.OneOf.Select(set => string.Join(" + ", set))));
        }
    }

    private void CheckValue(JsonElement value, Field field, string name)
    {
        if (value.ValueKind == JsonValueKind.Null)
        {
            NeedsTidying = true;
            return;
        }

        switch (field.Kind)
        {
            case FieldKind.Number or FieldKind.Integer:
                CheckNumber(value, field, name);
                break;
            case FieldKind.Flag:
                if (value.ValueKind is not (JsonValueKind.True or JsonValueKind.False))
                {
                    WrongKind(value, field, name);
                }

                break;
            case FieldKind.Setting:
                CheckSetting(value, field, name);
                break;
            case FieldKind.Object:
                Check(value, field.Shape!);
                break;
            case FieldKind.List:
                CheckList(value, field, name);
                break;
            default:
                CheckText(value, field, name);
                break;
        }
    }

    private void CheckNumber(JsonElement value, Field field, string name)
    {
        if (value.ValueKind != JsonValueKind.Number)
        {
            WrongKind(value, field, name);
            return;
        }

        if (!value.TryGetDouble(out var number) || !double.IsFinite(number))
        {
            Add("not-finite", ExchangeTexts.Expected, name, Shown(value), Expectation(field));
            return;
        }

        if (field.Kind == FieldKind.Integer)
        {
            if (number != Math.Truncate(number) || Math.Abs(number) > int.MaxValue)
            {
                WrongKind(value, field, name);
                return;
            }

            NeedsTidying |= !value.TryGetInt32(out _);
        }

        if (number < field.Min || (field.IsAbove && number == field.Min) || number > field.Max)
        {
            Add(number < 0 && field.Min == 0 ? "negative" : "out-of-range", ExchangeTexts.Expected, name, Shown(value), Expectation(field));
        }
    }

    private void CheckSetting(JsonElement value, Field field, string name)
    {
        if (value.ValueKind == JsonValueKind.Number)
        {
            if (!value.TryGetDouble(out var number) || !double.IsFinite(number))
            {
                Add("not-finite", ExchangeTexts.Expected, name, Shown(value), Expectation(field));
            }
        }
        else if (value.ValueKind is not (JsonValueKind.True or JsonValueKind.False))
        {
            CheckText(value, field, name);
        }
    }

    private void CheckList(JsonElement value, Field field, string name)
    {
        if (value.ValueKind != JsonValueKind.Array)
        {
            WrongKind(value, field, name);
            return;
        }

        var count = value.GetArrayLength();
        if (count < field.Count.Min || count > field.Count.Max)
        {
            Add("wrong-count", ExchangeTexts.Expected, name, Shown(value), Expectation(field));
        }

        var index = 0;
        foreach (var item in value.EnumerateArray())
        {
            _path.Add(index);
            index++;
            if (item.ValueKind == JsonValueKind.Null)
            {
                WrongKind(item, field.Item!, Leaf());
            }
            else
            {
                CheckValue(item, field.Item!, Leaf());
            }

            _path.RemoveAt(_path.Count - 1);
        }
    }

    private void CheckText(JsonElement value, Field field, string name)
    {
        if (value.ValueKind != JsonValueKind.String)
        {
            WrongKind(value, field, name);
            return;
        }

        if (!TryGetText(value, out var text))
        {
            Add("wrong-text", ExchangeTexts.Expected, name, Shown(value), Expectation(field));
            return;
        }

        if (field.IsRequired && string.IsNullOrWhiteSpace(text))
        {
            Add("required", ExchangeTexts.Missing, name, Expectation(field));
            return;
        }

        var (isRight, code) = field.Kind switch
        {
            FieldKind.Choice => (field.Choices.Contains(text, StringComparer.Ordinal), field.IsUnit ? "unknown-unit" : "unknown-value"),
            FieldKind.Date => (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _), "wrong-date"),
            FieldKind.Moment => (Moment.TryParse(text, out _), "wrong-time"),
            FieldKind.ClockTime => (ClockTimes.IsClockTime(text), "wrong-time"),
            FieldKind.MonthDay => (ClockTimes.IsMonthDay(text), "wrong-date"),
            FieldKind.Identity => (Guid.TryParseExact(text, "D", out _), "wrong-identity"),
            FieldKind.Mail => (IsMail(text), "wrong-mail"),
            _ => (true, ""),
        };
        if (!isRight)
        {
            Add(code, ExchangeTexts.Expected, name, Shown(value), Expectation(field));
        }
    }

    private static bool TryGetText(JsonElement value, out string text)
    {
        try
        {
            text = value.GetString()!;
            return true;
        }
        catch (InvalidOperationException)
        {
            // Half of a surrogate pair in an escape.
            text = "";
            return false;
        }
    }

    private static bool IsMail(string text)
    {
        var at = text.IndexOf('@', StringComparison.Ordinal);
        return at > 0 && at == text.LastIndexOf('@') && at < text.Length - 1 && !text.Any(c => char.IsWhiteSpace(c) || char.IsControl(c));
    }

    private void WrongKind(JsonElement value, Field field, string name) =>
        Add("wrong-kind", ExchangeTexts.Expected, name, Shown(value), Expectation(field));

    private static string Shown(JsonElement value)
    {
        var text = value.GetRawText();
        return text.Length <= 60 ? text : text[..57] + "...";
    }

    private string Expectation(Field field) => field.Kind switch
    {
        FieldKind.Number => (field.Min, field.Max, field.IsAbove) switch
        {
            ({ } min, { } max, _) => ExchangeTexts.NumberFromTo.In(language, Shown(min), Shown(max)),
            ({ } min, _, true) => ExchangeTexts.NumberAbove.In(language, Shown(min)),
            ({ } min, _, _) => ExchangeTexts.NumberFrom.In(language, Shown(min)),
            _ => ExchangeTexts.ANumber.In(language),
        },
        FieldKind.Integer => (field.Min, field.Max) switch
        {
            ({ } min, { } max) => ExchangeTexts.WholeFromTo.In(language, Shown(min), Shown(max)),
            ({ } min, _) => ExchangeTexts.WholeFrom.In(language, Shown(min)),
            _ => ExchangeTexts.AWhole.In(language),
        },
        FieldKind.Flag => ExchangeTexts.AFlag.In(language),
        FieldKind.Date => ExchangeTexts.ADate.In(language),
        FieldKind.Moment => ExchangeTexts.AMoment.In(language),
        FieldKind.ClockTime => ExchangeTexts.AClockTime.In(language),
        FieldKind.MonthDay => ExchangeTexts.AMonthDay.In(language),
        FieldKind.Identity => ExchangeTexts.AnIdentity.In(language),
        FieldKind.Mail => ExchangeTexts.AMail.In(language),
        FieldKind.Choice when field.Choices.Count == 1 => field.Choices[0],
        FieldKind.Choice => (field.IsUnit ? ExchangeTexts.AUnit : ExchangeTexts.OneOf).In(language, string.Join(", ", field.Choices)),
        FieldKind.Setting => ExchangeTexts.ASetting.In(language),
        FieldKind.Object => ExchangeTexts.AnObject.In(language),
        FieldKind.List when field.Count.Max is { } max && max == field.Count.Min => ExchangeTexts.ListOf.In(language, max),
        FieldKind.List when field.Count.Max is { } max => ExchangeTexts.ListUpTo.In(language, max),
        FieldKind.List => ExchangeTexts.AList.In(language),
        _ => ExchangeTexts.AText.In(language),
    };

    /// <summary>Numbers in messages about a document are written as in the document.</summary>
    private static string Shown(double number) => CanonicalJson.Number(number);

    private string Leaf() => _path.Count == 0 ? "document" : PathText(_path[^1]);

    private static string PathText(object segment) => segment is int index ? string.Create(CultureInfo.InvariantCulture, $"[{index}]") : (string)segment;

    private void AddAt(string name, string code, Text text, params object?[] values)
    {
        _path.Add(name);
        Add(code, text, values);
        _path.RemoveAt(_path.Count - 1);
    }

    private void Add(string code, Text text, params object?[] values) => _issues.Add(new Issue(Path(), code, text.In(language, values)));

    private string Path()
    {
        var path = new StringBuilder();
        foreach (var segment in _path)
        {
            if (segment is string && path.Length > 0)
            {
                path.Append('.');
            }

            path.Append(PathText(segment));
        }

        return path.ToString();
    }
}
