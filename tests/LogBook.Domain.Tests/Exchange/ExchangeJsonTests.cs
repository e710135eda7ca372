using System.Text.Json.Serialization.Metadata;
using LogBook.Domain.Exchange;

namespace LogBook.Domain.Tests.Exchange;

public sealed class ExchangeJsonTests
{
    [Fact]
    public void PartsFirst_HoldsEveryRecordOfADocument_BehindWhatItIsMadeOf()
    {
        HashSet<Type> before = [];
        foreach (var part in ExchangeJson.PartsFirst)
        {
            Assert.DoesNotContain(MadeOf(part), other => other != part && !before.Contains(other));
            Assert.True(before.Add(part), $"{part} is there twice.");
        }

        Assert.Contains(typeof(ExchangeDocument), before);
    }

    private static IEnumerable<Type> MadeOf(Type part) =>
        Info(part).Properties.Select(property => Row(property.PropertyType)).Where(type => type.Assembly == typeof(ExchangeJson).Assembly && !type.IsEnum).Distinct();

    private static Type Row(Type type)
    {
        var row = Info(type).ElementType ?? type;
        return Nullable.GetUnderlyingType(row) ?? row;
    }

    private static JsonTypeInfo Info(Type type) => ExchangeJson.Default.GetTypeInfo(type) ?? throw new InvalidOperationException($"{type} is in no document.");
}
